import { type ReadonlySignal, signal } from '@preact/signals';
import type { StageView } from '../../shared/wire/views.ts';

/** A guest writes as long as the keyboard is open; nobody waits longer than this for the screen to move [F5]. */
export const grace = { withoutKey: 20_000, atMost: 60_000 } as const;

export interface WritingLock {
  /** What the screen shows. */
  readonly shown: ReadonlySignal<StageView | null>;
  /** Where the room is, while the screen stays behind for somebody who writes; null when both are level. */
  readonly ahead: ReadonlySignal<StageView | null>;
  readonly writing: ReadonlySignal<boolean>;
  follow(stage: StageView | null): void;
  enterField(): void;
  key(): void;
  leaveField(): void;
  /** The guest asked to be taken to where the room is. */
  goOn(): void;
  close(): void;
}

export interface WritingLockOptions {
  /** Ms on a clock that is never stepped. */
  readonly now: () => number;
  readonly after: (ms: number, run: () => void) => () => void;
}

/**
 * Locks the screen to the room's cue, but for somebody who is typing: their keyboard is never taken away by a change
 * of cue. The screen moves when they ask for it, when they leave the field, 20 s after the last key, or after 60 s.
 */
export function createWritingLock({ now, after }: WritingLockOptions): WritingLock {
  const shown = signal<StageView | null>(null);
  const ahead = signal<StageView | null>(null);
  const writing = signal(false);
  let parted = 0;
  let lastKey = 0;
  let cancel: () => void = () => undefined;

  const move = (): void => {
    cancel();
    const stage = ahead.peek();
    if (stage === null) return;
    ahead.value = null;
    shown.value = stage;
  };

  const wait = (): void => {
    cancel();
    const moveAt = Math.min(Math.max(parted, lastKey) + grace.withoutKey, parted + grace.atMost);
    cancel = after(Math.max(0, moveAt - now()), move);
  };

  return {
    shown,
    ahead,
    writing,
    follow(stage) {
      const before = shown.peek();
      const level = stage === null || (before !== null && place(before) === place(stage));
      // Without a screen before, somebody may be writing too: into notes that were opened without the room.
      if (!writing.peek() || level) {
        cancel();
        ahead.value = null;
        shown.value = stage;
        return;
      }
      if (ahead.peek() === null) parted = now();
      ahead.value = stage;
      wait();
    },
    enterField() {
      writing.value = true;
      lastKey = now();
    },
    key() {
      lastKey = now();
      if (ahead.peek() !== null) wait();
    },
    leaveField() {
      writing.value = false;
      move();
    },
    goOn: move,
    close: () => cancel(),
  };
}

const place = (stage: StageView): string => (stage.status === 'finished' ? 'finished' : stage.cue.id);
