import type { HostUnderWay } from '../../../core/session/views/host.ts';
import type { EpochMs } from '../../../core/units.ts';
import { useTick } from '../../../shared/ui/use-tick.ts';
import { words } from '../../language.ts';

/** The words of a step that comes by itself are there so long before it that they can be said in time, in ms. */
const sayAhead = 5000;

interface SayLineProps {
  readonly view: Pick<HostUnderWay, 'clock' | 'endsBy'>;
  readonly now: () => EpochMs;
  readonly said: string;
  /** What is said for the next cue. */
  readonly next: string | null;
}

/** What to say aloud, and shortly before the clock moves the room what to say then, with a quiet sign at its edge. */
export function SayLine({ view, now, said, next }: SayLineProps) {
  const running = view.clock.kind === 'running' && view.endsBy === 'clock';
  const endsAt = view.clock.kind === 'running' ? view.clock.endsAt : 0;
  const time = useTick(now, { running, anchor: endsAt });
  const comes = next !== null && saysNext(view, time);
  return (
    <>
      <p class="now-label">{comes ? words.room.sayNext : words.room.say}</p>
      <blockquote class={comes ? 'say say-next' : 'say'}>{comes ? next : said}</blockquote>
    </>
  );
}

export const saysNext = ({ clock, endsBy }: SayLineProps['view'], now: number): boolean =>
  endsBy === 'clock' && clock.kind === 'running' && clock.endsAt - now <= sayAhead;
