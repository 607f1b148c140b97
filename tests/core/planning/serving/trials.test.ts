import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pourId } from '../../../../core/ids.ts';
import { meaningOf } from '../../../../core/planning/serving/blind-codes.ts';
import { codesInUse, drawTrial, withTrials } from '../../../../core/planning/serving/trials.ts';
import { type Plan, planSchema } from '../../../../core/tasting.ts';
import { planOf } from '../../../support/plans.ts';
import { seededRandom } from '../../../support/seeded-random.ts';

const choice = { id: pourId('odd'), flight: 0, a: pourId('ash'), b: pourId('birch') };
const blind = planOf(6, { blind: true, guests: 8, codes: { ash: '417', birch: '952' } });
const withOne = (plan: Plan = blind): Plan => ({
  ...plan,
  trials: [drawTrial(plan, choice, seededRandom(1))],
});
const counts = (orders: readonly string[]) => {
  const each = new Map<string, number>();
  for (const order of orders) each.set(order, (each.get(order) ?? 0) + 1);
  return [...each.values()];
};

describe('an odd-one-out of a plan', () => {
  it('has four neutral codes that no other glass of the evening bears', () => {
    const plan = withOne();
    const codes = codesInUse(plan);
    expect(codes).toHaveLength(6);
    expect(new Set(codes).size).toBe(6);
    for (const code of codes.slice(2)) expect(meaningOf(code)).toBeUndefined();
    const second = drawTrial(plan, { ...choice, id: pourId('other') }, seededRandom(1));
    expect(new Set([...codes, ...second.codes.a, ...second.codes.b]).size).toBe(10);
  });

  it('has the six orders equally often, for the guests rounded up to whole sixes (ISO 4120, 7.1)', () => {
    const trial = withOne().trials[0];
    expect(trial?.orders).toHaveLength(12);
    expect(counts(trial?.orders ?? [])).toEqual([2, 2, 2, 2, 2, 2]);
    expect(planSchema.safeParse(withOne()).success).toBe(true);
  });

  it('keeps the orders that stand when more guests come, and stays as it is when nothing has changed', () => {
    const plan = withOne();
    expect(withTrials(plan, seededRandom(2))).toBe(plan);
    const more = withTrials({ ...plan, remoteGuests: 9 }, seededRandom(2));
    expect(more.trials[0]?.orders.slice(0, 12)).toEqual(plan.trials[0]?.orders);
    expect(counts(more.trials[0]?.orders ?? [])).toEqual([3, 3, 3, 3, 3, 3]);
  });

  it('goes with either of its pours, and follows the last flight', () => {
    const plan = withOne();
    const without = { ...plan, pours: plan.pours.filter(({ id }) => id !== 'birch') };
    expect(withTrials(without, seededRandom(2)).trials).toEqual([]);
    const late = { ...plan, trials: plan.trials.map((trial) => ({ ...trial, flight: 1 })) };
    expect(withTrials(late, seededRandom(2))).toBe(late);
    const short = withTrials({ ...late, pours: late.pours.slice(0, 3) }, seededRandom(2));
    expect(short.trials[0]?.flight).toBe(0);
  });

  it('can be kept whatever the number of guests', () => {
    fc.assert(
      fc.property(fc.nat(200), fc.nat(200), fc.nat(), (guests, remoteGuests, seed) => {
        const plan = withOne({ ...blind, guests, remoteGuests });
        expect(planSchema.safeParse(plan).success).toBe(true);
        const changed = withTrials({ ...plan, guests: remoteGuests, remoteGuests: 0 }, seededRandom(seed));
        expect(new Set(counts(changed.trials[0]?.orders ?? [])).size).toBe(1);
      }),
      { numRuns: 60 },
    );
  });
});
