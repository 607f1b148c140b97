import type { CueId } from '../ids.ts';
import { type EpochMs, epochMs, type Seconds, seconds } from '../units.ts';
import type { Cue } from './cue.ts';
import { isPaced, type Work, workOf } from './cue-traits.ts';

/**
 * When each coming cue will start and when the evening ends, as a range.
 *
 * Method: what a room takes for a cue is its planned time times exp(μ + ε). ε ~ N(0, σ²) differs from cue to cue; μ is
 * the room's habit for that kind of work (senses, writing, talk, rest), with the prior N(μ₀, τ²) that earlier evenings
 * left and the posterior of the conjugate normal model after each cue of this evening. The sum of what remains has its
 * mean and variance in closed form, cues of one kind being correlated through their common μ; its range is that of the
 * log-normal with the same mean and variance (Fenton and Wilkinson's approximation, from memory).
 */

/** Normal belief about μ of one kind of work, on the logarithmic scale. */
export interface Habit {
  readonly mean: number;
  readonly variance: number;
}
export type Habits = Readonly<Record<Work, Habit>>;

/** Spread of single cues around a room's habit, and of habits around the plan: own estimates, no source. */
export const cueVariance = 0.3 ** 2;
const habitVariance = 0.25 ** 2;
const untaught: Habit = { mean: 0, variance: habitVariance };

/** What is believed before any evening was seen: that the plan is right, give or take a quarter. */
export const noHabits: Habits = {
  senses: untaught,
  writing: untaught,
  talk: untaught,
  rest: untaught,
  ceremony: untaught,
};

/** One cue as it was planned and as it was. */
export interface Lived {
  readonly work: Work;
  readonly planned: Seconds;
  readonly took: Seconds;
}

/** A cue that was passed through in a few seconds was skipped, and one of four times its plan was an interruption. */
const believable = ({ planned, took }: Lived): boolean =>
  planned > 0 && took >= planned / 4 && took <= planned * 4;

/** The habits after what was lived, by the conjugate normal model. */
export function learn(habits: Habits, lived: readonly Lived[]): Habits {
  const one = (work: Work): Habit => {
    const logs = lived
      .filter((each) => each.work === work && believable(each))
      .map((each) => Math.log(each.took / each.planned));
    const prior = habits[work];
    const precision = 1 / prior.variance + logs.length / cueVariance;
    const pulled = prior.mean / prior.variance + logs.reduce((sum, log) => sum + log, 0) / cueVariance;
    return { mean: pulled / precision, variance: 1 / precision };
  };
  return {
    senses: one('senses'),
    writing: one('writing'),
    talk: one('talk'),
    rest: one('rest'),
    ceremony: one('ceremony'),
  };
}

/** The habits that an evening leaves for the next one: what was learned, with the doubt of another room added. */
export function carriedOver(habits: Habits): Habits {
  const one = ({ mean, variance }: Habit): Habit => ({
    mean,
    variance: Math.min(habitVariance, variance + habitVariance / 2),
  });
  return {
    senses: one(habits.senses),
    writing: one(habits.writing),
    talk: one(habits.talk),
    rest: one(habits.rest),
    ceremony: one(habits.ceremony),
  };
}

/** Expected seconds for one planned second of this kind of work: the mean of the log-normal. */
export const paceFrom =
  (habits: Habits) =>
  (cue: Cue): number =>
    expectedRatio(habits[workOf(cue)]);

const expectedRatio = ({ mean, variance }: Habit): number => Math.exp(mean + (variance + cueVariance) / 2);

export interface ForecastTime {
  /** Nine in ten evenings are later than this. */
  readonly early: EpochMs;
  readonly likely: EpochMs;
  /** Nine in ten evenings are earlier than this. */
  readonly late: EpochMs;
}

export interface Forecast {
  readonly starts: readonly { readonly cue: CueId; readonly at: ForecastTime }[];
  readonly end: ForecastTime;
}

/** Quantile of the standard normal at 0.9. */
const z90 = 1.2815515655446004;

/**
 * @param from when the first of `remaining` starts as things stand: the end of the current cue, or now if that is past
 * @param remaining the cues still to come, without the current one
 */
export function forecast(from: EpochMs, remaining: readonly Cue[], habits: Habits): Forecast {
  const sums: Record<Work, { total: number; squares: number }> = {
    senses: { total: 0, squares: 0 },
    writing: { total: 0, squares: 0 },
    talk: { total: 0, squares: 0 },
    rest: { total: 0, squares: 0 },
    ceremony: { total: 0, squares: 0 },
  };
  const starts = remaining.map((cue) => {
    const at = timeAfter(from, sums, habits);
    const mean = cue.ideal * expectedRatio(habits[workOf(cue)]);
    const sum = sums[workOf(cue)];
    sum.total += mean;
    sum.squares += mean * mean;
    return { cue: cue.id, at };
  });
  return { starts, end: timeAfter(from, sums, habits) };
}

function timeAfter(
  from: EpochMs,
  sums: Readonly<Record<Work, { total: number; squares: number }>>,
  habits: Habits,
): ForecastTime {
  let mean = 0;
  let variance = 0;
  for (const [work, { total, squares }] of Object.entries(sums) as [
    Work,
    { total: number; squares: number },
  ][]) {
    const shared = Math.exp(habits[work].variance) - 1;
    const whole = Math.exp(habits[work].variance + cueVariance) - 1;
    mean += total;
    variance += (total * total - squares) * shared + squares * whole;
  }
  if (mean === 0) return { early: from, likely: from, late: from };
  const spread = Math.sqrt(Math.log(1 + variance / mean ** 2));
  const median = mean / Math.sqrt(1 + variance / mean ** 2);
  const at = (z: number) => epochMs(Math.round(from + median * Math.exp(z * spread) * 1000));
  return { early: at(-z90), likely: at(0), late: at(z90) };
}

/** What was lived of a running order so far, from when each cue was entered. The current cue is not over yet. */
export function livedSoFar(
  cues: readonly Cue[],
  timeline: readonly { readonly cue: CueId; readonly at: EpochMs; readonly planned: Seconds }[],
): Lived[] {
  const byId = new Map(cues.map((cue) => [cue.id, cue]));
  return timeline.slice(0, -1).flatMap((entry, index) => {
    const cue = byId.get(entry.cue);
    const next = timeline[index + 1];
    if (cue === undefined || next === undefined || !isPaced(cue)) return [];
    return [{ work: workOf(cue), planned: entry.planned, took: seconds((next.at - entry.at) / 1000) }];
  });
}
