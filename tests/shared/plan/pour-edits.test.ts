import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flightsOf, type Plan } from '../../../core/tasting.ts';
import { putInOrder } from '../../../host/plan/figures/order.ts';
import { withCodes } from '../../../host/plan/pours/codes.ts';
import {
  addBreak,
  insertPour,
  moveBreak,
  moveTo,
  orderBy,
  placeOf,
  removeBreak,
  removePour,
  sizesOf,
} from '../../../host/plan/pours/pour-edits.ts';
import { planOf } from '../../support/plans.ts';
import { seededRandom } from '../../support/seeded-random.ts';

const idsOf = (plan: Plan) => plan.pours.map(({ id }) => String(id));

describe('the lineup by hand', () => {
  it('is as before when a pour that was taken out is put back', () => {
    const shape = fc.record({
      sizes: fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 4 }),
      at: fc.nat(),
    });
    fc.assert(
      fc.property(shape, ({ sizes, at }) => {
        const count = sizes.reduce((sum, size) => sum + size, 0);
        const plan = planOf(count, { flightSizes: sizes });
        const pour = plan.pours[at % count];
        if (pour === undefined) throw new Error('there is no such pour');
        const without = removePour(plan, pour.id);
        expect(sizesOf(without).every((size) => size > 0)).toBe(true);
        const again = insertPour(without, pour, placeOf(plan, pour.id));
        expect(idsOf(again)).toEqual(idsOf(plan));
        expect(sizesOf(again)).toEqual(sizes);
      }),
    );
  });

  it('keeps its cuts when pours move', () => {
    const plan = planOf(5, { flightSizes: [2, 3] });
    const moved = moveTo(plan, 'ash', 4);
    expect(idsOf(moved)).toEqual(['birch', 'cedar', 'dogwood', 'elm', 'ash']);
    expect(sizesOf(moved)).toEqual([2, 3]);
    expect(idsOf(orderBy(moved, idsOf(plan)))).toEqual(idsOf(plan));
  });

  it('moves, adds and takes out breaks, and leaves no flight empty', () => {
    const plan = planOf(4, { flightSizes: [1, 3] });
    expect(sizesOf(moveBreak(plan, 0, 1))).toEqual([2, 2]);
    expect(moveBreak(plan, 0, -1)).toBe(plan);
    expect(sizesOf(removeBreak(plan, 0))).toEqual([4]);
    expect(sizesOf(addBreak(plan))).toEqual([1, 2, 1]);
    expect(addBreak(planOf(1))).toEqual(planOf(1));
    expect(removeBreak(plan, 1)).toBe(plan);
  });

  it('is put in order within the flights that stand', () => {
    const plan = planOf(6, { flightSizes: [2, 4] });
    const mixed = orderBy(plan, ['fir', 'ash', 'elm', 'cedar', 'birch', 'dogwood']);
    const ordered = putInOrder(mixed);
    expect(idsOf(ordered)).toEqual(idsOf(plan));
    expect(flightsOf(ordered).map(({ pours }) => pours.length)).toEqual([2, 4]);
  });
});

describe('blind codes', () => {
  it('are drawn for new pours only, and go with pours that go', () => {
    const random = seededRandom(7);
    const blind = withCodes(planOf(3, { blind: true }), random);
    expect(new Set(Object.values(blind.codes)).size).toBe(3);
    const more = withCodes({ ...blind, pours: planOf(4).pours }, random);
    expect(more.codes).toMatchObject(blind.codes);
    expect(Object.keys(more.codes)).toHaveLength(4);
    expect(Object.keys(withCodes(removePour(more, 'ash'), random).codes)).toEqual([
      'birch',
      'cedar',
      'dogwood',
    ]);
    expect(withCodes(more, random)).toBe(more);
  });
});
