import { compile } from '../../../core/running-order/compile.ts';
import { type Work, workOf } from '../../../core/running-order/cue-traits.ts';
import { fitInto } from '../../../core/running-order/repace.ts';
import type { Plan } from '../../../core/tasting.ts';

export interface Fitted {
  readonly plan: Plan;
  readonly status: 'fits' | 'too-long';
  /** Seconds that each kind of work gives up; only those that do. */
  readonly cut: readonly { readonly work: Work; readonly seconds: number }[];
  /** Seconds by which even the shortest evening is too long. */
  readonly over: number;
}

/**
 * The plan with its steps shortened so that the whole evening, from the opening of the doors, takes no more than
 * `available` seconds. What cares for people (spit, water, breaks) keeps its floor [C2].
 */
export function finishWithin(plan: Plan, available: number): Fitted {
  const cues = compile(plan);
  const fit = fitInto(cues, available);
  const lengths = new Map(fit.lengths.map(({ cue, seconds }) => [cue, seconds]));
  const cut = new Map<Work, number>();
  const edits = { ...plan.cueEdits };
  for (const cue of cues) {
    const seconds = lengths.get(cue.id);
    if (seconds === undefined) continue;
    cut.set(workOf(cue), (cut.get(workOf(cue)) ?? 0) + cue.ideal - seconds);
    edits[cue.id] = { ...edits[cue.id], seconds };
  }
  return {
    plan: { ...plan, cueEdits: edits },
    status: fit.status,
    cut: [...cut].map(([work, seconds]) => ({ work, seconds })),
    over: fit.over,
  };
}
