import type { CueId } from '../ids.ts';
import { between, type EpochMs, seconds } from '../units.ts';
import type { Cue } from './cue.ts';
import { type Work, workOf } from './cue-traits.ts';
import { expectedSeconds, type Forecast, forecast, type Habits, secondsEach } from './forecast.ts';
import { type Fit, fitInto, type Lengths, type Pace } from './repace.ts';
import type { Tempo } from './tempo.ts';

/** What the server that decides and a host's device that previews both know, enough to look ahead. */
export interface Ahead {
  /** Now, or the opening of the doors. */
  readonly from: EpochMs;
  /** What is left of the current cue, as a cue of that length; null where there is none: before the doors are open, or on a dropped pour. */
  readonly current: Cue | null;
  /** The cues still to come, without the current one. */
  readonly remaining: readonly Cue[];
  /** Lengths before the running order was fitted to an end, of the cues that were changed by it. */
  readonly unfitted: Lengths;
  /** What earlier evenings and this one so far say of the room. */
  readonly habits: Habits;
  readonly tempo: Tempo;
}

/** The current cue by what is left of it: nothing when it is over its time, and of its floor only what is still to pass. */
export const leftOf = (cue: Cue, left: number, passed: number): Cue => ({
  ...cue,
  ideal: seconds(Math.max(0, left / 1000)),
  floor: seconds(Math.max(0, cue.floor - passed / 1000)),
});

/** When what comes will start, and the end. */
export function forecastAhead({
  from,
  current,
  remaining,
  habits,
  tempo,
}: Omit<Ahead, 'unfitted'>): Forecast {
  if (current === null) return forecast(from, remaining, habits, tempo);
  const { starts, end } = forecast(from, [current, ...remaining], habits, tempo);
  return { starts: starts.slice(1), end };
}

export interface FitAhead extends Fit {
  /** New lengths of the cues whose length is another one now. */
  readonly changes: Lengths;
  /** What undoing gives back: the lengths before any fitting. */
  readonly was: Lengths;
}

/** So often a fitting is tried again with what the forecast found to be still too long. */
const tries = 6;

/**
 * Fits what remains to a wanted end, so that the forecast's likely end is not past it. It starts from the lengths before
 * any earlier fitting, so that a later end, or a pour dropped in the meantime, gives time back.
 * @throws RangeError for an end that is no moment
 */
export function fitAhead(ahead: Ahead, endsAt: EpochMs): FitAhead {
  if (!Number.isFinite(endsAt)) throw new RangeError(`An evening is fitted to a moment, not to ${endsAt}.`);
  const { from, current, remaining, unfitted } = ahead;
  const before = byCue(unfitted);
  const whole = remaining.map((cue) => ({ ...cue, ideal: before.get(cue.id) ?? cue.ideal }));
  const after = new Map(whole.map((cue, index) => [cue.id, whole[index + 1]]));
  const pace = (cue: Cue) => secondsEach(cue, after.get(cue.id), ahead);
  const expected = (cue: Cue) => expectedSeconds(cue, after.get(cue.id), ahead);
  // What does not shrink with its length: floors that the room waits for, and the cue in hand.
  const fixed = whole.reduce((sum, cue) => sum + expected(cue) - cue.ideal * pace(cue), 0);
  const now = current === null ? 0 : expectedSeconds(current, whole[0], ahead);
  const available = between(from, endsAt) / 1000 - now - fixed;
  let more = 0;
  let fit = fitInto(whole, available, pace);
  let late = lateness(ahead, whole, fit, endsAt);
  for (let time = 1; time < tries && late > 0 && fit.status === 'fits'; time += 1) {
    more += late;
    fit = fitInto(whole, available - more, pace);
    late = lateness(ahead, whole, fit, endsAt);
  }
  const fitted = byCue(fit.lengths);
  const lengthOf = (cue: Cue) => fitted.get(cue.id) ?? cue.ideal;
  const coming = new Set(whole.map(({ id }) => id));
  return {
    ...fit,
    status: late > 0 ? 'too-long' : 'fits',
    over: seconds(Math.max(0, late)),
    changes: whole.flatMap((cue, index) =>
      lengthOf(cue) === remaining[index]?.ideal ? [] : [{ cue: cue.id, seconds: lengthOf(cue) }],
    ),
    was: [
      ...unfitted.filter(({ cue }) => !coming.has(cue)),
      ...whole.flatMap((cue) => (fitted.has(cue.id) ? [{ cue: cue.id, seconds: cue.ideal }] : [])),
    ],
  };
}

/** Seconds by which the likely end of what was fitted is past the wanted one. */
function lateness(ahead: Ahead, whole: readonly Cue[], { lengths }: Fit, endsAt: EpochMs): number {
  const fitted = byCue(lengths);
  const remaining = whole.map((cue) => ({ ...cue, ideal: fitted.get(cue.id) ?? cue.ideal }));
  return (forecastAhead({ ...ahead, remaining }).end.likely - endsAt) / 1000;
}

/** Expected seconds for one planned second of what is still to come. */
export function paceOf({ remaining, habits, tempo }: Pick<Ahead, 'remaining' | 'habits' | 'tempo'>): Pace {
  const after = new Map(remaining.map((cue, index) => [cue.id, remaining[index + 1]]));
  return (cue) => secondsEach(cue, after.get(cue.id), { habits, tempo });
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
