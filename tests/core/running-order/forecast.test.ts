import { describe, expect, it } from 'vitest';
import { cueId } from '../../../core/ids.ts';
import { compile } from '../../../core/running-order/compile.ts';
import type { Cue } from '../../../core/running-order/cue.ts';
import {
  carriedOver,
  expectedSeconds,
  forecast,
  type Habit,
  type Habits,
  learn,
  livedSoFar,
  noHabits,
} from '../../../core/running-order/forecast.ts';
import { cueVariance, type Tempo } from '../../../core/running-order/tempo.ts';
import { epochMs, seconds } from '../../../core/units.ts';
import { planOf } from '../../support/plans.ts';

const evening = compile(planOf(6));
const from = epochMs(1_800_000_000_000);
const byHost: Tempo = { pacing: { by: 'host' }, level: 'regulars', guests: 8, awaited: 0 };
const minutesTo = (at: number) => (at - from) / 60_000;
const all = (habit: Habit): Habits => ({
  senses: habit,
  writing: habit,
  talk: habit,
  rest: habit,
  ceremony: habit,
});

describe('a forecast', () => {
  it('starts the first of what remains at once and keeps the order of the cues', () => {
    const { starts, end } = forecast(from, evening, noHabits, byHost);
    expect(starts[0]?.at).toEqual({ early: from, likely: from, late: from });
    expect(starts).toHaveLength(evening.length);
    for (let index = 1; index < starts.length; index += 1) {
      const [before, after] = [starts[index - 1]?.at, starts[index]?.at];
      expect(after?.likely).toBeGreaterThan(before?.likely ?? Number.POSITIVE_INFINITY);
    }
    expect(end.early).toBeLessThan(end.likely);
    expect(end.likely).toBeLessThan(end.late);
    expect(forecast(from, [], noHabits, byHost).end).toEqual({ early: from, likely: from, late: from });
  });

  it('has the closed-form median and quantiles of a log-normal for a single cue of a room that is known', () => {
    // For X = d·exp(N(m, s²)) the quantile is d·exp(m + z·s), z(0.9) = 1.28155 (standard normal table).
    const [cue] = evening.filter((each) => each.kind === 'break');
    if (cue === undefined) throw new Error('no break');
    const habit = { mean: 0.2, variance: 1e-9 };
    const { end } = forecast(from, [cue], all(habit), byHost);
    const spread = Math.sqrt(cueVariance);
    const at = (z: number) => (cue.ideal * Math.exp(0.2 + z * spread)) / 60;
    expect(minutesTo(end.likely)).toBeCloseTo(at(0), 3);
    expect(minutesTo(end.late)).toBeCloseTo(at(1.28155), 3);
    expect(minutesTo(end.early)).toBeCloseTo(at(-1.28155), 3);
  });
});

describe('learning a room', () => {
  const writing = (took: number, planned = 60) => ({
    work: 'writing' as const,
    planned: seconds(planned),
    took: seconds(took),
    shift: 0,
    variance: 0.09,
  });

  it('is the conjugate normal model, worked by hand', () => {
    // Prior N(0, 0.0625), spread 0.09, one log ratio of ln 1.2: precision 16 + 11.111, mean 11.111 · 0.18232 / 27.111.
    const { mean, variance } = learn(all({ mean: 0, variance: 0.0625 }), [writing(72)]).writing;
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
    const each = expectedSeconds(write, undefined, { habits, tempo: byHost }) / write.ideal;
    expect(each).toBeGreaterThan(1.2);
    expect(each).toBeLessThan(1.27);
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
      { work: 'ceremony', planned: 180, took: 100, shift: 0, variance: cueVariance },
      { work: 'ceremony', planned: 90, took: 100, shift: 0, variance: cueVariance },
    ]);
  });
});
