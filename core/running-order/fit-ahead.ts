import type { CueId } from '../ids.ts';
import { between, type EpochMs } from '../units.ts';
import type { Cue } from './cue.ts';
import { type Work, workOf } from './cue-traits.ts';
import { type Habits, paceFrom } from './forecast.ts';
import { type Fit, fitInto, type Lengths } from './repace.ts';

/** What the server that decides and a host's device that previews both know, enough to look ahead. */
export interface Ahead {
  /** When the current cue ends as things stand: never in the past. */
  readonly from: EpochMs;
  /** The cues still to come, without the current one. */
  readonly remaining: readonly Cue[];
  /** Lengths before the running order was fitted to an end, of the cues that were changed by it. */
  readonly unfitted: Lengths;
  /** What earlier evenings and this one so far say of the room. */
  readonly habits: Habits;
}

export interface FitAhead extends Fit {
  /** New lengths of the cues whose length is another one now. */
  readonly changes: Lengths;
  /** What undoing gives back: the lengths before any fitting. */
  readonly was: Lengths;
}

/**
 * Fits what remains to a wanted end. It starts from the lengths before any earlier fitting, so that a later end, or a
 * pour dropped in the meantime, gives time back.
 */
export function fitAhead({ from, remaining, unfitted, habits }: Ahead, endsAt: EpochMs): FitAhead {
  const before = byCue(unfitted);
  const whole = remaining.map((cue) => ({ ...cue, ideal: before.get(cue.id) ?? cue.ideal }));
  const fit = fitInto(whole, between(from, endsAt) / 1000, paceFrom(habits));
  const fitted = byCue(fit.lengths);
  const lengthOf = (cue: Cue) => fitted.get(cue.id) ?? cue.ideal;
  const ahead = new Set(whole.map(({ id }) => id));
  return {
    ...fit,
    changes: whole.flatMap((cue, index) =>
      lengthOf(cue) === remaining[index]?.ideal ? [] : [{ cue: cue.id, seconds: lengthOf(cue) }],
    ),
    was: [
      ...unfitted.filter(({ cue }) => !ahead.has(cue)),
      ...whole.flatMap((cue) => (fitted.has(cue.id) ? [{ cue: cue.id, seconds: cue.ideal }] : [])),
    ],
  };
}

const byCue = (lengths: Lengths): ReadonlyMap<CueId, Lengths[number]['seconds']> =>
  new Map(lengths.map(({ cue, seconds }) => [cue, seconds]));

/** Planned seconds that each kind of work gives up by a fit, against the lengths before any fitting. */
export function givenUp({ remaining, unfitted }: Ahead, fit: Fit): readonly (readonly [Work, number])[] {
  const before = byCue(unfitted);
  const after = byCue(fit.lengths);
  const cut = new Map<Work, number>();
  for (const cue of remaining) {
    const length = after.get(cue.id);
    if (length === undefined) continue;
    const work = workOf(cue);
    cut.set(work, (cut.get(work) ?? 0) + (before.get(cue.id) ?? cue.ideal) - length);
  }
  return [...cut];
}
