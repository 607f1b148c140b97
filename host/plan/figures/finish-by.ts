import { compile } from '../../../core/running-order/compile.ts';
import { type Work, workOf } from '../../../core/running-order/cue-traits.ts';
import { fitAhead } from '../../../core/running-order/fit-ahead.ts';
import { noHabits } from '../../../core/running-order/forecast.ts';
import { tempoOfPlan } from '../../../core/running-order/tempo.ts';
import type { Plan } from '../../../core/tasting.ts';
import { epochMs } from '../../../core/units.ts';
import type { Opening } from '../../../shared/wire/http.ts';

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
 * `available` seconds by the forecast that the host's head then shows. What cares for people (spit, water, breaks) keeps
 * its floor [C2].
 * @param opening what earlier evenings say of this one; without it the plan is believed as it is
 * @throws RangeError for what is no number of seconds
 */
export function finishWithin(
  plan: Plan,
  available: number,
  { habits, byHand }: Opening = { habits: noHabits, byHand: plan.pacing },
): Fitted {
  if (!(available >= 0 && available < Number.POSITIVE_INFINITY))
    throw new RangeError(`An evening is fitted into a number of seconds, 0 or more, not into ${available}.`);
  const cues = compile(plan);
  const begun = plan.pacing.by === 'host' ? { ...plan, pacing: byHand } : plan;
  const doors = { from: epochMs(0), current: null, remaining: cues, unfitted: [] };
  const fit = fitAhead({ ...doors, habits, tempo: tempoOfPlan(begun) }, epochMs(available * 1000));
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
