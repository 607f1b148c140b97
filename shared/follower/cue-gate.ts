import { type ReadonlySignal, signal } from '@preact/signals-core';
import type { EpochMs } from '../../core/units.ts';

/**
 * Lets a new cue onto the screen at the moment the server has set for everybody [F4], and never lets an older view
 * back in [F2]. A view of the cue that already shows (more time, a reminder) goes through at once.
 */
export interface CueGate<View> {
  readonly shown: ReadonlySignal<View | null>;
  /** The view that waits for its moment, if one does. */
  coming(): View | null;
  receive(view: View): void;
  /** The next view is let in whatever its version: the server knows less than it did [F7]. */
  rewind(): void;
  close(): void;
}

/** Which cue a view is of, and when it takes effect; null for a view that waits for nothing, such as the end. */
export type Turn = { readonly cue: string; readonly at: EpochMs } | null;

export interface GateOptions {
  readonly now: () => EpochMs;
  readonly after: (ms: number, run: () => void) => () => void;
}

/** A lead longer than this is a clock gone wrong, not a plan: show what is known. */
const longestLead = 2000;

export function createCueGate<View extends { readonly version: number }>(
  turnOf: (view: View) => Turn,
  { now, after }: GateOptions,
  onShow: () => void = () => undefined,
): CueGate<View> {
  const shown = signal<View | null>(null);
  let coming: View | null = null;
  let cancel: () => void = () => undefined;
  /** Of the newest view that was let in. */
  let newest = 0;

  const show = (view: View): void => {
    cancel();
    coming = null;
    shown.value = view;
    onShow();
  };
  const waitFor = (view: View): number => {
    const was = shown.peek();
    const [from, to] = [was && turnOf(was), turnOf(view)];
    const turns = from !== null && to !== null && (from.cue !== to.cue || from.at !== to.at);
    return turns ? to.at - now() : 0;
  };

  return {
    shown,
    coming: () => coming,
    receive(view) {
      if (view.version < newest) return;
      newest = view.version;
      const wait = waitFor(view);
      if (!(wait > 0) || wait > longestLead) return show(view);
      coming = view;
      cancel();
      cancel = after(wait, () => show(view));
    },
    rewind() {
      newest = 0;
    },
    close: () => cancel(),
  };
}
