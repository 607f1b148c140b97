import type { ReadonlySignal } from '@preact/signals-core';
import type { StageView } from '../../core/session/views/stage.ts';
import { type StageChange, withStageChange } from '../wire/stage-change.ts';
import { createCueGate, type GateOptions } from './cue-gate.ts';

/** The stage as a follower's screen shows it: a new cue at the moment set for everybody [F4]. */
export interface StageGate {
  readonly stage: ReadonlySignal<StageView | null>;
  receive(view: StageView): void;
  /** What is new since the view that came last. */
  change(change: StageChange): void;
  rewind(): void;
  close(): void;
}

export function createStageGate(options: GateOptions): StageGate {
  const gate = createCueGate<StageView>(
    (view) => (view.status === 'under-way' ? { cue: view.cue.id, at: view.takesEffectAt } : null),
    options,
  );
  return {
    ...gate,
    stage: gate.shown,
    change(change) {
      const last = gate.coming() ?? gate.shown.peek();
      if (last !== null) gate.receive(withStageChange(last, change));
    },
  };
}
