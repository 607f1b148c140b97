import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pourId } from '../../../core/ids.ts';
import { drawTrial } from '../../../core/planning/serving/trials.ts';
import { compile } from '../../../core/running-order/compile.ts';
import { forecastAhead } from '../../../core/running-order/fit-ahead.ts';
import { noHabits } from '../../../core/running-order/forecast.ts';
import { tempoOfPlan } from '../../../core/running-order/tempo.ts';
import { limits, type Plan, planSchema } from '../../../core/tasting.ts';
import { epochMs } from '../../../core/units.ts';
import { courseOf, lengthOf, shownTimes } from '../../../host/plan/figures/course.ts';
import { finishWithin } from '../../../host/plan/figures/finish-by.ts';
import { orderOf } from '../../../host/plan/figures/order.ts';
import { shoppingFor } from '../../../host/plan/figures/shopping.ts';
import { strengthOf, withSmallerPours } from '../../../host/plan/figures/strength.ts';
import { drinksOf, parts, summaryOf } from '../../../host/plan/part-summaries.ts';
import { demoEvening } from '../../../shared/demo/evening.ts';
import { planWords } from '../../../shared/language/en/plan.ts';
import { planOf } from '../../support/plans.ts';
import { seededRandom } from '../../support/seeded-random.ts';

const abvOnly = (plan: Plan, pourMl: number, abv: number): Plan => ({
  ...plan,
  pours: plan.pours.map((pour) => ({ ...pour, pourMl, abv })),
});

describe('the numbers of a plan', () => {
  it('are there for any number of guests and pours', () => {
    for (const pours of [0, 1, limits.pours]) {
      for (const guests of [0, limits.guests]) {
        const plan = planOf(pours, { guests, remoteGuests: guests });
        for (const part of parts) expect(summaryOf(part, plan).text).not.toBe('');
        expect(orderOf(plan).now.steps).toHaveLength(pours);
      }
    }
  });

  it('say loudly that nine full pours of whisky are too much, and the offer is below the line', () => {
    // NIAAA: a US standard drink is 14 g of ethanol; 1.5 US fl oz (44.36 mL) of 40 % vol are one.
    const plan = abvOnly(planOf(9, { level: 'devotees', lawOf: 'US' }), 44.36, 40);
    const { evening, counted } = strengthOf(plan);
    expect(evening.total.drinks).toBeCloseTo(9, 0);
    if (evening.caution.level !== 'loud') throw new Error('It was not said loudly.');
    const { offer, line } = evening.caution;
    const smaller = strengthOf(withSmallerPours(plan, counted, offer.volumes));
    expect(smaller.evening.total.mass).toBeLessThanOrEqual(line.ethanol);
    expect(smaller.evening.caution.level).not.toBe('loud');
    expect(summaryOf('strength', plan).loud).toBe(true);
  });

  it('[C3] of the demo, and of any plan of pours without sizes, are below the lowest line for one day', () => {
    const plain = (plan: Plan): Plan => ({
      ...plan,
      pours: plan.pours.map(({ pourMl: _, ...pour }) => pour),
    });
    for (const plan of [
      planSchema.parse(demoEvening),
      ...[1, 3, 6, 9].map((count) => plain(planOf(count))),
    ]) {
      expect(strengthOf(plan).evening.caution.level).toBe('quiet');
    }
    expect(strengthOf(abvOnly(planOf(9), 20, 43)).evening.caution.level).not.toBe('quiet');
  });

  it('[C3] count the three glasses of an odd-one-out as the guest meets them who is poured the most', () => {
    const plan = abvOnly(planOf(3, { guests: 10, remoteGuests: 1 }), 20, 40);
    const [ash, birch, cedar] = plan.pours;
    if (ash === undefined || birch === undefined || cedar === undefined) throw new Error('There are three.');
    const strong = { ...plan, pours: [ash, { ...birch, abv: 60 }, cedar] };
    const choice = { id: pourId('odd'), flight: 0, a: ash.id, b: birch.id };
    const tested = { ...strong, trials: [drawTrial(strong, choice, seededRandom(1))] };
    const more = strengthOf(tested).evening.total.mass - strengthOf(strong).evening.total.mass;
    // Ethanol has 0.78924 g/mL at 20 °C (OIML R 22): two glasses of 60 % vol and one of 40 % vol, 20 mL each.
    expect(more).toBeCloseTo(0.78924 * 20 * (0.6 + 0.6 + 0.4), 2);
    const [before, after] = [shoppingFor(strong, false), shoppingFor(tested, false)];
    const needed = (of: typeof before) =>
      of.bottles.map(({ order }) => (order.kind === 'bottles' ? order.poursNeeded : 0));
    expect(needed(before)).toEqual([15, 15, 15]);
    // Two more for each of the eleven, and the reserve of that.
    expect(needed(after)).toEqual([39, 39, 15]);
    expect(after.supplies.tastingGlasses).toBeGreaterThanOrEqual(before.supplies.tastingGlasses + 33);
    expect([before.kit.total, after.kit.total]).toEqual([3, 7]);
    expect(after.vialsOf.map(({ id }) => id)).toEqual([
      'ash',
      'birch',
      'cedar',
      'ash',
      'ash',
      'birch',
      'birch',
    ]);
  });

  it('leave out pours whose strength is not known, and name them', () => {
    const plan = planOf(3);
    const [first, ...others] = plan.pours;
    if (first === undefined) throw new Error('there is no pour');
    const { abv: _, ...bare } = first;
    const figures = strengthOf({ ...plan, pours: [bare, ...others] });
    expect(figures.unknown.map(({ id }) => id)).toEqual(['ash']);
    expect(figures.counted).toHaveLength(2);
  });

  it('count bottles for everybody and the host, never short', () => {
    fc.assert(
      fc.property(fc.nat(limits.guests), fc.nat(limits.guests), (guests, remoteGuests) => {
        const { bottles, supplies, kit } = shoppingFor(planOf(2, { guests, remoteGuests }), false);
        for (const { order } of bottles) {
          if (order.kind !== 'bottles') throw new Error('a bottle holds no pour');
          expect(order.bottles * order.fullPoursPerBottle).toBeGreaterThanOrEqual(guests + remoteGuests + 2);
        }
        expect(supplies.tastingGlasses).toBeGreaterThanOrEqual((guests + 1) * 2);
        // Who is at home drinks from their own glasses.
        expect(supplies).toEqual(shoppingFor(planOf(2, { guests }), false).supplies);
        expect(kit.total).toBe(remoteGuests * 2);
      }),
    );
  });

  it('believes what earlier evenings said, and the pace with which this one begins', () => {
    const plan = planOf(6);
    const slow = { mean: Math.log(1.4), variance: 0.01 };
    const habits = { senses: slow, writing: slow, talk: slow, rest: slow, ceremony: slow };
    const within = lengthOf(courseOf(plan));
    const usual = finishWithin(plan, within);
    const slower = finishWithin(plan, within, { habits, byHand: { by: 'host' } });
    const cutOf = ({ cut }: typeof usual) => cut.reduce((sum, { seconds }) => sum + seconds, 0);
    expect(cutOf(slower)).toBeGreaterThan(cutOf(usual));
    const begun = { ...plan, pacing: { by: 'steps' } } as const;
    const fitted = finishWithin(plan, within, { habits, byHand: { by: 'steps' } });
    expect(fitted.cut).toEqual(finishWithin(begun, within, { habits, byHand: { by: 'steps' } }).cut);
    expect(fitted.cut).not.toEqual(slower.cut);
  });
});

it('counts one standard drink as one, and any other number of them as several', () => {
  const { standards, oneStandard } = planWords.figures.strength;
  for (const standard of ['US', 'GB', 'WHO'] as const) {
    expect(drinksOf(1, standard)).toContain(oneStandard[standard]);
    expect(drinksOf(1.02, standard)).toContain(oneStandard[standard]);
    for (const several of [0, 0.9, 1.1, 2])
      expect(drinksOf(several, standard)).toContain(standards[standard]);
    expect(oneStandard[standard]).not.toBe(standards[standard]);
  }
});

it('names the priced pour that is larger than its bottle, for no number of bottles can be paid for it', () => {
  const plan = planOf(3, { guests: 4 });
  const [ash, ...others] = plan.pours;
  if (ash === undefined) throw new Error('There are three.');
  const priced = { ...plan, pours: [{ ...ash, priceMinor: 900, bottleMl: 50, pourMl: 60 }, ...others] };
  expect(shoppingFor(priced, false).uncounted.map(({ id }) => id)).toEqual(['ash']);
  const small = { ...plan, pours: [{ ...ash, priceMinor: 900, bottleMl: 50, pourMl: 20 }, ...others] };
  expect(shoppingFor(small, false).uncounted).toEqual([]);
});

describe('the course of the evening', () => {
  it('shows minutes that add up to the whole as it is shown', () => {
    const fields = { discussion: fc.constantFrom('each-pour', 'each-flight', 'at-the-end') } as const;
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9 }), fc.record(fields), (pours, choices) => {
        const course = courseOf(planOf(pours, choices));
        const minutes = (seconds: number) => Math.round(seconds / 60);
        const shown = course.map(shownTimes);
        const sum = shown.reduce((all, { length }) => all + length / 60, 0);
        expect(sum).toBe(minutes(lengthOf(course)));
        let at = 0;
        for (const { start, length } of shown) {
          expect(start).toBe(at);
          at += length;
        }
        // No line is off by more than rounding at its two ends can make it.
        for (const [index, { length }] of shown.entries())
          expect(Math.abs(length - (course[index]?.seconds ?? 0))).toBeLessThanOrEqual(60);
      }),
    );
  });

  it('has all the time of the running order, stretch after stretch', () => {
    const plan = planOf(7, { flightSizes: [4, 3], ranking: 'each-flight', blind: true });
    const course = courseOf(plan);
    const whole = compile(plan).reduce((sum, cue) => sum + cue.ideal, 0);
    expect(lengthOf(course)).toBe(whole);
    expect(course.flatMap(({ cues }) => cues).map(({ id }) => id)).toEqual(compile(plan).map(({ id }) => id));
    let at = 0;
    for (const stretch of course) {
      expect(stretch.startSeconds).toBe(at);
      at += stretch.seconds;
    }
  });

  it.each([Number.NaN, -1, Number.POSITIVE_INFINITY])('refuses to end within %s seconds', (available) => {
    expect(() => finishWithin(planOf(6), available)).toThrow(/number of seconds/);
  });

  it('[C2] ends in time where it can, and takes nothing from spit, water and breaks below their floors', () => {
    const plan = planOf(6);
    const now = lengthOf(courseOf(plan));
    fc.assert(
      fc.property(fc.integer({ min: 0, max: now + 600 }), (available) => {
        const fitted = finishWithin(plan, available);
        const length = lengthOf(courseOf(fitted.plan));
        // What the head of the conducting page then shows as the likely end, from the first second.
        const remaining = compile(fitted.plan);
        const tempo = tempoOfPlan(plan);
        const doors = { from: epochMs(0), current: null, remaining, habits: noHabits, tempo };
        const likely = forecastAhead(doors).end.likely / 1000;
        if (fitted.status === 'fits') expect(likely).toBeLessThanOrEqual(available);
        else expect(likely - available).toBeCloseTo(fitted.over, 6);
        expect(now - length).toBe(fitted.cut.reduce((sum, { seconds }) => sum + seconds, 0));
        const floors = new Map(compile(plan).map(({ id, floor }) => [id, floor]));
        for (const cue of compile(fitted.plan))
          expect(cue.ideal).toBeGreaterThanOrEqual(floors.get(cue.id) ?? 0);
      }),
    );
  });
});
