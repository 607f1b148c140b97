import type { After } from '../../shared/follower/timer.ts';

/** A cue that has begun longer ago than this, in ms, was come back to: nobody closes their eyes at that moment. */
const fresh = 3000;

export interface ClosedEyes {
  /** The end of the cue as it stands now, in the server's time; null while the host holds the clock. */
  endsAt(moment: number | null): void;
  /** `moved`: the room has gone on, and the guest has not merely opened another page of their own. */
  leave(moved: boolean): void;
}

interface ClosedEyesParts {
  readonly startsAt: number;
  /** The server's time. */
  readonly now: () => number;
  readonly after: After;
  readonly chime: (moment: 'start' | 'end') => void;
}

/**
 * A step with closed eyes: a tone begins it, and one tone ends it, at its time or when the room leaves it before.
 * Every stray tone is heard by a whole silent room, so there is none for looking something up in the middle.
 */
export function closeEyes({ startsAt, now, after, chime }: ClosedEyesParts): ClosedEyes {
  let ended = false;
  let forget = (): void => undefined;
  if (now() - startsAt < fresh) chime('start');
  const end = (): void => {
    if (!ended) chime('end');
    ended = true;
  };
  return {
    endsAt(moment) {
      forget();
      const left = moment === null ? 0 : moment - now();
      if (left <= 0) return;
      // More time than was over: the eyes are closed again.
      ended = false;
      forget = after(left, end);
    },
    leave(moved) {
      forget();
      if (moved) end();
    },
  };
}
