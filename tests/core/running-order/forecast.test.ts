import { describe, expect, it } from 'vitest';
import { cueId } from '../../../core/ids.ts';
import { compile } from '../../../core/running-order/compile.ts';
import type { Cue } from '../../../core/running-order/cue.ts';
import { workOf } from '../../../core/running-order/cue-traits.ts';
import {
  carriedOver,
  cueVariance,
  forecast,
  type Habit,
  type Habits,
  learn,
  livedSoFar,
  noHabits,
  paceFrom,
} from '../../../core/running-order/forecast.ts';
import { epochMs, seconds } from '../../../core/units.ts';
import { planOf } from '../../support/plans.ts';

const evening = compile(planOf(6));
const from = epochMs(1_800_000_000_000);
const minutesTo = (at: number) => (at - from) / 60_000;
const all = (habit: Habit): Habits => ({
  senses: habit,
  writing: habit,
  talk: habit,
  rest: habit,
  ceremony: habit,
});

/** Marsaglia and Bray's polar method over a small linear congruential generator (Numerical Recipes' constants). */
function normals(seed: number): () => number {
  let state = seed >>> 0;
  const uniform = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  return () => {
    for (;;) {
      const [u, v] = [2 * uniform() - 1, 2 * uniform() - 1];
      const s = u * u + v * v;
      if (s > 0 && s < 1) return u * Math.sqrt((-2 * Math.log(s)) / s);
    }
  };
}

describe('a forecast', () => {
  it('starts the first of what remains at once and keeps the order of the cues', () => {
    const { starts, end } = forecast(from, evening, noHabits);
    expect(starts[0]?.at).toEqual({ early: from, likely: from, late: from });
    expect(starts).toHaveLength(evening.length);
    for (let index = 1; index < starts.length; index += 1) {
      const [before, after] = [starts[index - 1]?.at, starts[index]?.at];
      expect(after?.likely).toBeGreaterThan(before?.likely ?? Number.POSITIVE_INFINITY);
    }
    expect(end.early).toBeLessThan(end.likely);
    expect(end.likely).toBeLessThan(end.late);
    expect(forecast(from, [], noHabits).end).toEqual({ early: from, likely: from, late: from });
  });

  it('has the closed-form median and quantiles of a log-normal for a single cue', () => {
    // For X = d·exp(N(m, s²)) the quantile is d·exp(m + z·s), z(0.9) = 1.28155 (standard normal table).
    const [cue] = evening.filter((each) => each.kind === 'break');
    if (cue === undefined) throw new Error('no break');
    const habit = { mean: 0.2, variance: 0.04 };
    const { end } = forecast(from, [cue], all(habit));
    const spread = Math.sqrt(habit.variance + cueVariance);
    const at = (z: number) => (cue.ideal * Math.exp(0.2 + z * spread)) / 60;
    expect(minutesTo(end.likely)).toBeCloseTo(at(0), 3);
    expect(minutesTo(end.late)).toBeCloseTo(at(1.28155), 3);
    expect(minutesTo(end.early)).toBeCloseTo(at(-1.28155), 3);
  });

  it('covers eight in ten simulated evenings', () => {
    const { end } = forecast(from, evening, noHabits);
    const normal = normals(20_261_125);
    const runs = 4000;
    let within = 0;
    let below = 0;
    for (let run = 0; run < runs; run += 1) {
      const habit = new Map<string, number>();
      let total = 0;
      for (const cue of evening) {
        const work = workOf(cue);
        const prior = noHabits[work];
        if (!habit.has(work)) habit.set(work, prior.mean + Math.sqrt(prior.variance) * normal());
        total += cue.ideal * Math.exp((habit.get(work) ?? 0) + Math.sqrt(cueVariance) * normal());
      }
      const ended = from + total * 1000;
      if (ended >= end.early && ended <= end.late) within += 1;
      if (ended < end.likely) below += 1;
    }
    // Four standard errors of a proportion over 4,000 runs are 2.5 and 3.2 points.
    expect(within / runs).toBeGreaterThan(0.775);
    expect(within / runs).toBeLessThan(0.825);
    expect(below / runs).toBeGreaterThan(0.46);
    expect(below / runs).toBeLessThan(0.54);
  });
});

describe('learning a room', () => {
  const writing = (took: number, planned = 60) => ({
    work: 'writing' as const,
    planned: seconds(planned),
    took: seconds(took),
  });

  it('is the conjugate normal model, worked by hand', () => {
    // Prior N(0, 0.0625), spread 0.09, one log ratio of ln 1.2: precision 16 + 11.111, mean 11.111 · 0.18232 / 27.111.
    const { mean, variance } = learn(noHabits, [writing(72)]).writing;
    expect(variance).toBeCloseTo(1 / 27.1111, 5);
    expect(mean).toBeCloseTo(0.07472, 4);
  });

  it('comes to believe a room that takes 1.2 times as long to write, and says nothing of its noses', () => {
    const habits = learn(
      noHabits,
      Array.from({ length: 200 }, () => writing(72)),
    );
    expect(Math.exp(habits.writing.mean)).toBeCloseTo(1.2, 2);
    expect(habits.senses).toEqual(noHabits.senses);
    const write = evening.find((cue) => cue.kind === 'step' && cue.step === 'write');
    if (write === undefined) throw new Error('nothing to write');
    expect(paceFrom(habits)(write)).toBeGreaterThan(1.2);
    expect(paceFrom(habits)(write)).toBeLessThan(1.27);
  });

  it('narrows the range with every cue, and doubts again the next evening', () => {
    const few = learn(noHabits, [writing(60)]);
    const many = learn(
      noHabits,
      Array.from({ length: 30 }, () => writing(60)),
    );
    expect(many.writing.variance).toBeLessThan(few.writing.variance);
    const next = carriedOver(many);
    expect(next.writing.mean).toBe(many.writing.mean);
    expect(next.writing.variance).toBeGreaterThan(many.writing.variance);
    expect(next.writing.variance).toBeLessThanOrEqual(noHabits.writing.variance);
  });

  it('does not take a skipped cue or an interruption for a habit', () => {
    expect(learn(noHabits, [writing(2), writing(3600), writing(60, 0)])).toEqual(noHabits);
  });

  it('reads what was lived from when each cue was entered, without the gathering and the cue in hand', () => {
    const at = (cue: Cue | undefined, after: number) => ({
      cue: cue?.id ?? cueId('nothing'),
      at: epochMs(from + after * 1000),
      planned: cue?.ideal ?? seconds(0),
    });
    const lived = livedSoFar(evening, [
      at(evening[0], 0),
      at(evening[1], 900),
      at(evening[2], 1000),
      at(evening[3], 1100),
    ]);
    expect(lived).toEqual([
      { work: 'ceremony', planned: 180, took: 100 },
      { work: 'ceremony', planned: 90, took: 100 },
    ]);
  });
});
