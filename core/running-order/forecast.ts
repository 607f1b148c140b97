import type { CueId } from '../ids.ts';
import { type EpochMs, epochMs, type Seconds, seconds } from '../units.ts';
import type { Cue } from './cue.ts';
import { isPaced, type Work, workOf, works } from './cue-traits.ts';
import { type CueTime, cueTimeOf, cueVariance, normalBelow, type Tempo } from './tempo.ts';

/** Normal belief about μ of one kind of work, on the logarithmic scale. */
export interface Habit {
  readonly mean: number;
  readonly variance: number;
}
export type Habits = Readonly<Record<Work, Habit>>;

/** Spread of habits around the plan: own estimate, no source. */
const habitVariance = 0.22 ** 2;
/** Spread of whole evenings, whatever the kind of work: own estimate, no source. */
export const eveningVariance = 0.07 ** 2;
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
  /** What was expected of it beside the room's habit, as a logarithm: the slowest of many takes longer. */
  readonly shift: number;
  /** Spread around that, on the logarithmic scale. */
  readonly variance: number;
}

/** A cue that was passed through in a few seconds was skipped, and one of four times its plan was an interruption. */
const believable = ({ planned, took }: Lived): boolean =>
  planned > 0 && took >= planned / 4 && took <= planned * 4;

/** The habits after what was lived, by the conjugate normal model. */
export function learn(habits: Habits, lived: readonly Lived[]): Habits {
  const one = (work: Work): Habit => {
    const prior = habits[work];
    let precision = 1 / prior.variance;
    let pulled = prior.mean / prior.variance;
    for (const each of lived) {
      if (each.work !== work || !believable(each)) continue;
      precision += 1 / each.variance;
      pulled += (Math.log(each.took / each.planned) - each.shift) / each.variance;
    }
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
 * When each coming cue will start and when the evening ends, as a range.
 *
 * Method: what ends by its time takes exactly its length. Any other cue takes its length times exp(μ + δ + ε), and never
 * less than its floor where the room ends it. ε ~ N(0, σ²) differs from cue to cue; δ is the one guest at whose signal the
 * room goes on; μ is the room's habit for that kind of work, with the prior N(μ₀, τ²) that earlier evenings left and the
 * posterior of the conjugate normal model after each cue of this evening; until it has shown anything, a whole evening may be
 * slow as well. The sum has its mean and variance in closed
 * form, cues of one kind being correlated through their common μ; its range is that of the exact part plus a log-normal
 * with the mean and variance of the rest (Fenton and Wilkinson's approximation, from memory).
 * @param from when the first of `remaining` starts
 * @param remaining the cues still to come, the first of them what is left of the current one where it is asked for
 */
export function forecast(from: EpochMs, remaining: readonly Cue[], habits: Habits, tempo: Tempo): Forecast {
  const sums = Object.fromEntries(works.map((work) => [work, { moving: 0 }])) as Sums;
  const sum: Sum = { exact: 0, mean: 0, own: 0, kept: 0 };
  const starts = remaining.map((cue, index) => {
    const at = timeAfter(from, sum, sums, habits);
    const time = cueTimeOf(cue, remaining[index + 1], tempo);
    if (time.is === 'exact') sum.exact += cue.ideal;
    else {
      const work = workOf(cue);
      const { mean, square, moving } = momentsOf(cue.ideal, time, habits[work]);
      sum.mean += mean;
      // The part that the common habit moves is told apart: it does not average out.
      const shared = moving * moving * Math.expm1(habits[work].variance);
      sum.own += Math.max(0, square - mean * mean - shared);
      sums[work].moving += moving;
      sum.kept += moving * Math.sqrt(time.kept);
    }
    return { cue: cue.id, at };
  });
  return { starts, end: timeAfter(from, sum, sums, habits) };
}

interface Sum {
  exact: number;
  mean: number;
  /** Variance of what differs from cue to cue. */
  own: number;
  /** What a slow guest makes slower all evening. */
  kept: number;
}
type Sums = Readonly<Record<Work, { moving: number }>>;

/** Expected seconds of a cue as it stands; what a fitting reckons with. */
export const expectedSeconds = (
  cue: Cue,
  next: Cue | undefined,
  { habits, tempo }: { readonly habits: Habits; readonly tempo: Tempo },
): number => {
  const time = cueTimeOf(cue, next, tempo);
  return time.is === 'exact' ? cue.ideal : momentsOf(cue.ideal, time, habits[workOf(cue)]).mean;
};

/** Seconds by which a cue is expected to be longer for each second of its length. */
export const secondsEach: typeof expectedSeconds = (cue, next, { habits, tempo }) => {
  const time = cueTimeOf(cue, next, tempo);
  if (time.is === 'exact' || cue.ideal <= 0) return 1;
  return momentsOf(cue.ideal, time, habits[workOf(cue)]).moving / cue.ideal;
};

/** Mean, mean square and the part of the mean above the floor of max(least, ideal · exp(N(m, v))). */
function momentsOf(ideal: number, { least, shift, variance }: Drawn, habit: Habit) {
  const m = habit.mean + shift;
  const v = habit.variance + variance;
  const whole = ideal * Math.exp(m + v / 2);
  if (least <= 0 || ideal <= 0) {
    const floor = Math.max(0, least);
    return ideal <= 0
      ? { mean: floor, square: floor * floor, moving: 0 }
      : { mean: whole, square: whole * whole * Math.exp(v), moving: whole };
  }
  const s = Math.sqrt(v);
  const edge = Math.log(least / ideal);
  const below = normalBelow((edge - m) / s);
  const moving = whole * normalBelow((m + v - edge) / s);
  const above = whole * whole * Math.exp(v) * normalBelow((m + 2 * v - edge) / s);
  return { mean: moving + least * below, square: above + least * least * below, moving };
}
type Drawn = Extract<CueTime, { is: 'drawn' }>;

/** What the room has shown in any kind of work is known of the evening and its guests as well: 1 to begin with. */
export const doubtOf = (habits: Habits): number =>
  Math.min(1, ...works.map((work) => habits[work].variance / habitVariance));

function timeAfter(from: EpochMs, sum: Sum, sums: Sums, habits: Habits): ForecastTime {
  const { exact, mean, own } = sum;
  const start = from + exact * 1000;
  if (mean === 0) {
    const at = epochMs(Math.round(start));
    return { early: at, likely: at, late: at };
  }
  const ofWorks = works.map((work) => sums[work].moving ** 2 * Math.expm1(habits[work].variance));
  const doubt = doubtOf(habits);
  const shared = ofWorks.reduce((all, each) => all + each, doubt * sum.kept ** 2);
  const ratio = (1 + (own + shared) / mean ** 2) * Math.exp(doubt * eveningVariance);
  const spread = Math.sqrt(Math.log(ratio));
  const median = (mean * Math.exp((doubt * eveningVariance) / 2)) / Math.sqrt(ratio);
  const at = (z: number) => epochMs(Math.round(start + median * Math.exp(z * spread) * 1000));
  return { early: at(-z90), likely: at(0), late: at(z90) };
}

/** When which cue was entered, by whom, and with which length. */
export interface Entered {
  readonly cue: CueId;
  readonly at: EpochMs;
  readonly planned: Seconds;
  /** Absent in what was stored before it was kept. */
  readonly by?: 'host' | 'clock' | 'room';
}

/**
 * What was lived of a running order so far. The current cue is not over yet, and one that ended by its time tells nothing
 * of the room.
 */
export function livedSoFar(cues: readonly Cue[], timeline: readonly Entered[], tempo?: Tempo): Lived[] {
  const byId = new Map(cues.map((cue, index) => [cue.id, index]));
  return timeline.slice(0, -1).flatMap((entry, index) => {
    const place = byId.get(entry.cue) ?? -1;
    const cue = cues[place];
    const next = timeline[index + 1];
    if (cue === undefined || next === undefined || !isPaced(cue) || next.by === 'clock') return [];
    const took = seconds((next.at - entry.at) / 1000);
    const time = next.by === 'room' && tempo ? cueTimeOf(cue, cues[place + 1], tempo) : undefined;
    const { shift, variance } = time?.is === 'drawn' ? time : { shift: 0, variance: cueVariance };
    return [{ work: workOf(cue), planned: entry.planned, took, shift, variance }];
  });
}
