import { type ReadonlySignal, signal } from '@preact/signals-core';
import type { StageView } from '../../core/session/views/stage.ts';
import type { EpochMs } from '../../core/units.ts';

/**
 * Lets a new cue onto the screen at the moment the server has set for everybody [F4], and never lets an older view
 * back in [F2]. A view of the cue that already shows (more time, a reminder) goes through at once.
 */
export interface StageGate {
  readonly stage: ReadonlySignal<StageView | null>;
  receive(view: StageView): void;
  close(): void;
}

export interface StageGateOptions {
  readonly now: () => EpochMs;
  readonly after: (ms: number, run: () => void) => () => void;
}

/** A lead longer than this is a clock gone wrong, not a plan: show what is known. */
const longestLead = 2000;

export function createStageGate({ now, after }: StageGateOptions): StageGate {
  const stage = signal<StageView | null>(null);
  let coming: StageView | null = null;
  let cancel: () => void = () => undefined;

  const show = (view: StageView): void => {
    cancel();
    coming = null;
    stage.value = view;
  };

  return {
    stage,
    receive(view) {
      const newest = coming ?? stage.peek();
      if (newest !== null && view.version < newest.version) return;
      const wait = turnsCue(stage.peek(), view) ? view.takesEffectAt - now() : 0;
      if (!(wait > 0) || wait > longestLead) return show(view);
      coming = view;
      cancel();
      cancel = after(wait, () => show(view));
    },
    close: () => cancel(),
  };
}

function turnsCue(
  shown: StageView | null,
  view: StageView,
): view is Extract<StageView, { status: 'under-way' }> {
  if (view.status !== 'under-way' || shown?.status !== 'under-way') return false;
  return shown.cue.id !== view.cue.id || shown.takesEffectAt !== view.takesEffectAt;
}
