import { describe, expect, it } from 'vitest';
import { compile } from '../../../core/running-order/compile.ts';
import { workOf } from '../../../core/running-order/cue-traits.ts';
import { eveningVariance, forecast, noHabits } from '../../../core/running-order/forecast.ts';
import {
  drawLuck,
  normalsFrom,
  playEvening,
  quantile,
  type Rehearsed,
  rangeOf,
} from '../../../core/running-order/rehearsal.ts';
import {
  changed,
  type RehearsalReport,
  type RehearsalTask,
  rehearse,
} from '../../../core/running-order/rehearsal-report.ts';
import { cueVariance } from '../../../core/running-order/tempo.ts';
import type { Pacing, Plan } from '../../../core/tasting.ts';
import { epochMs } from '../../../core/units.ts';
import { planOf } from '../../support/plans.ts';
import { seededRandom } from '../../support/seeded-random.ts';

const cues = compile(planOf(6));
const whole = cues.reduce((sum, { ideal }) => sum + ideal, 0);
const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);
const room = (more: Partial<Rehearsed> = {}): Rehearsed => ({
  cues,
  habits: noHabits,
  pacing: { by: 'host' },
  level: 'regulars',
  guests: 8,
  awaited: 0,
  ...more,
});

function played(rehearsed: Rehearsed, evenings: number, seed = 20_311_125): number[][] {
  const normal = normalsFrom(seededRandom(seed));
  return Array.from({ length: evenings }, () => playEvening(rehearsed, drawLuck(rehearsed, normal)));
}

function reported(ask: RehearsalTask, seed = 7): RehearsalReport {
  const playing = rehearse(ask, seededRandom(seed));
  for (;;) {
    const step = playing.next();
    if (step.done === true) return step.value;
  }
}

describe('normal numbers', () => {
  it('have the moments and quantiles of the standard normal', () => {
    const normal = normalsFrom(seededRandom(3));
    const drawn = Array.from({ length: 40_000 }, normal).sort((a, b) => a - b);
    const mean = total(drawn) / drawn.length;
    const variance = total(drawn.map((x) => (x - mean) ** 2)) / drawn.length;
    // Four standard errors: 4/√40,000 for the mean and 4·√(2/40,000) for the variance.
    expect(Math.abs(mean)).toBeLessThan(0.02);
    expect(Math.abs(variance - 1)).toBeLessThan(0.0283);
    // Table of the standard normal: z(0.9) = 1.2816, z(0.975) = 1.9600.
    expect(quantile(drawn, 0.9)).toBeCloseTo(1.2816, 1);
    expect(quantile(drawn, 0.975)).toBeCloseTo(1.96, 1);
  });
});

describe('a quantile', () => {
  it('is linear between neighbours, worked by hand', () => {
    expect(quantile([1, 2, 3, 4], 0.5)).toBe(2.5);
    expect(quantile([10, 20, 30], 0.9)).toBeCloseTo(28, 9);
    expect([quantile([], 0.5), quantile([7], 0.1)]).toEqual([0, 7]);
  });
});

describe('rehearsed evenings', () => {
  it('paced by the host have the mean and the variance of the closed form', () => {
    const lengths = played(room(), 6000).map(total);
    const mean = total(lengths) / lengths.length;
    const variance = total(lengths.map((x) => (x - mean) ** 2)) / (lengths.length - 1);
    // For d·exp(N(0, τ² + σ²)): mean d·exp((τ² + σ²)/2); cues of one kind of work covary by their common habit, τ².
    const habit = noHabits.senses.variance;
    const expected = whole * Math.exp((habit + cueVariance) / 2);
    const byWork = new Map<string, { sum: number; squares: number }>();
    for (const cue of cues) {
      const before = byWork.get(workOf(cue)) ?? { sum: 0, squares: 0 };
      const own = cue.ideal * Math.exp((habit + cueVariance) / 2);
      byWork.set(workOf(cue), { sum: before.sum + own, squares: before.squares + own * own });
    }
    // A whole evening that is slow moves every cue alike.
    const ofEvening = eveningVariance * expected ** 2;
    const closed =
      ofEvening +
      total(
        [...byWork.values()].map(
          ({ sum, squares }) =>
            Math.expm1(habit) * (sum * sum - squares) + Math.expm1(habit + cueVariance) * squares,
        ),
      );
    const standardError = Math.sqrt(closed / lengths.length);
    expect(Math.abs(mean - expected)).toBeLessThan(4 * standardError);
    expect(variance / closed).toBeGreaterThan(0.9);
    expect(variance / closed).toBeLessThan(1.1);
  });

  it('paced by the host end within the range of the forecast', () => {
    const range = rangeOf(played(room(), 6000).map(total));
    const start = epochMs(0);
    const { end } = forecast(start, cues, noHabits, room());
    // The forecast's log-normal is an approximation of the sum: its quantiles are met to one in a hundred.
    for (const which of ['early', 'likely', 'late'] as const)
      expect(range[which] / (end[which] / 1000), which).toBeCloseTo(1, 1.7);
  });

  it('by the clock take their planned time, and differ at the gates only', () => {
    const evenings = played(room({ pacing: { by: 'clock' } }), 50);
    cues.forEach((cue, index) => {
      const taken = new Set(evenings.map((evening) => evening[index]));
      if (cue.gate) expect(taken.size).toBe(50);
      else expect([...taken]).toEqual([cue.ideal]);
    });
  });

  it('by a room of one have the log-normal of that guest, and never end before a floor', () => {
    const pacing: Pacing = { by: 'room', share: 1 };
    const evenings = played(room({ pacing, guests: 1 }), 4000);
    const at = cues.findIndex((cue) => cue.kind === 'step' && cue.step === 'write');
    const write = cues[at];
    if (write === undefined) throw new Error('There is something to write.');
    const logs = evenings.map((evening) => Math.log((evening[at] ?? 0) / write.ideal)).sort((a, b) => a - b);
    // ln of the time is N(0, τ² + σ² + δ²), δ = 0.25 for regulars; z(0.9) = 1.2816. Its 10 % quantile may lie at the floor.
    const spread = Math.sqrt(noHabits.writing.variance + cueVariance + 0.25 ** 2);
    expect(Math.abs(quantile(logs, 0.9) - 1.2816 * spread)).toBeLessThan(0.04);
    for (const evening of evenings.slice(0, 200))
      cues.forEach((cue, index) => {
        if (!cue.gate) expect(evening[index]).toBeGreaterThanOrEqual(cue.floor - 1e-9);
      });
  });

  it('by the room wait longer for more of it, for a fuller room and for newcomers', () => {
    const likely = (share: number, guests: number, level: Rehearsed['level'] = 'regulars') =>
      rangeOf(played(room({ pacing: { by: 'room', share }, guests, level }), 300).map(total)).likely;
    expect(likely(1, 12)).toBeGreaterThan(likely(0.75, 12));
    expect(likely(0.75, 12)).toBeGreaterThan(likely(0.5, 12));
    expect(likely(1, 40)).toBeGreaterThan(likely(1, 4));
    expect(likely(1, 12, 'newcomers')).toBeGreaterThan(likely(1, 12, 'devotees'));
  });

  it('have an end for nobody, for one guest and for two hundred', () => {
    for (const guests of [0, 1, 200]) {
      for (const [length] of played(room({ pacing: { by: 'room', share: 0.75 }, guests }), 3))
        expect(length).toBeGreaterThan(0);
    }
  });
});

describe('the report of a rehearsal', () => {
  const ask = (plan: Plan, more: Partial<RehearsalTask> = {}): RehearsalTask => ({
    plan,
    evenings: 400,
    wished: compile(plan).reduce((sum, { ideal }) => sum + ideal, 0),
    ...more,
  });

  it('counts the evenings as they are played', () => {
    const playing = rehearse(ask(planOf(1), { evenings: 5 }), seededRandom(1));
    expect([...playing]).toEqual([1, 2, 3, 4, 5]);
  });

  it('is the same for the same numbers', () => {
    const plan = planOf(3);
    expect(reported(ask(plan, { evenings: 30 }))).toEqual(reported(ask(plan, { evenings: 30 })));
  });

  it('ends each part when its last cue is planned to end, the break standing before its flight', () => {
    const plan = planOf(6, { ranking: 'at-the-end' });
    const { parts, planned } = reported(ask(plan, { evenings: 20 }));
    expect(parts.map(({ part, flight }) => [part, flight])).toEqual([
      ['opening', null],
      ['flight', 0],
      ['flight', 1],
      ['closing', null],
    ]);
    const order = compile(plan);
    const upTo = (id: string) => {
      const at = order.findIndex((cue) => cue.id === id);
      return order.slice(0, at + 1).reduce((sum, { ideal }) => sum + ideal, 0);
    };
    expect(parts.map((part) => part.planned)).toEqual([
      upTo('practice/spit'),
      upTo('flight-1/discussion'),
      upTo('flight-2/discussion'),
      planned,
    ]);
    for (const { ended } of parts) {
      expect(ended.early).toBeLessThan(ended.likely);
      expect(ended.likely).toBeLessThan(ended.late);
    }
  });

  it('gives the chance of a single part in closed form', () => {
    // The opening by the clock differs at its two gates only; the gathering is ten times as long as any other.
    const plan = planOf(1, { pacing: { by: 'clock' }, practice: false });
    const { parts } = reported(ask(plan, { evenings: 3000 }));
    // P(planned · exp(N(0, s²)) > planned) = 1/2, whatever s; four standard errors of a half are 3.7 points.
    expect(Math.abs((parts[0]?.behind ?? 0) - 0.5)).toBeLessThan(0.05);
  });

  it('knows the chance to be done in time: all of it late, none of it at once, half at the likely end', () => {
    const plan = planOf(3);
    const chance = (wished: number) => reported(ask(plan, { wished })).inTime;
    const { length } = reported(ask(plan));
    expect([chance(0), chance(1e6)]).toEqual([0, 1]);
    expect(chance(length.likely)).toBeCloseTo(0.5, 2);
    expect(chance(length.late)).toBeCloseTo(0.9, 2);
  });

  it('says what each change saves: the planned seconds times what a room takes for one', () => {
    const plan = planOf(6, { level: 'devotees' });
    const { advice, inTime } = reported(ask(plan));
    expect(advice.map(({ change }) => change)).toContain('closing-pass');
    expect(advice.map(({ saves }) => saves)).toEqual(
      advice.map(({ saves }) => saves).toSorted((a, b) => b - a),
    );
    const length = (each: Plan) => compile(each).reduce((sum, { ideal }) => sum + ideal, 0);
    for (const { change, saves, inTime: then } of advice) {
      const other = changed(plan, change);
      if (other === undefined) throw new Error('It can be changed.');
      const expected =
        (length(plan) - length(other)) * Math.exp((noHabits.senses.variance + cueVariance) / 2);
      expect(saves / expected, change).toBeGreaterThan(0.9);
      expect(saves / expected, change).toBeLessThan(1.1);
      expect(then).toBeGreaterThanOrEqual(inTime);
    }
  });

  it('advises nothing that the plan does not have, and never to drop the only pour', () => {
    const bare = planOf(1, { level: 'newcomers', practice: false, discussion: 'at-the-end' });
    for (const change of ['closing-pass', 'practice', 'last-pour'] as const)
      expect(changed(bare, change)).toBeUndefined();
    const short = planOf(3, { pace: { write: 0.5, discussion: 0.5 } });
    expect(changed(short, 'shorter-writing')).toBeUndefined();
    expect(changed(short, 'shorter-talk')).toBeUndefined();
  });
});
