import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { photoId } from '../../../core/ids.ts';
import { flightsOf, type Plan } from '../../../core/tasting.ts';
import { withCodes } from '../../../host/plan/drawn-codes.ts';
import { putInOrder } from '../../../host/plan/figures/order.ts';
import {
  addBreak,
  allOf,
  drinksAsBefore,
  insertPour,
  moveBreak,
  moveTo,
  orderBy,
  photosIn,
  placeOf,
  removeBreak,
  removePour,
  sizesOf,
  withFact,
  withMark,
  withPhoto,
} from '../../../host/plan/pour-edits.ts';
import { planOf } from '../../support/plans.ts';
import { seededRandom } from '../../support/seeded-random.ts';

const idsOf = (plan: Plan) => plan.pours.map(({ id }) => String(id));

it('makes all pours of one drink at once, and gives each its own back', () => {
  const one = planOf(3);
  const mixed: Plan = {
    ...one,
    pours: one.pours.map((pour, at) => (at === 1 ? { ...pour, drink: 'beer' } : pour)),
  };
  const wine = allOf(mixed, 'wine');
  expect(wine.pours.map(({ drink }) => drink)).toEqual(['wine', 'wine', 'wine']);
  expect(wine.drink).toBe('wine');
  expect(drinksAsBefore(wine, mixed)).toEqual(mixed);
  // What was changed in between stays.
  const gone = removePour(wine, 'ash');
  expect(drinksAsBefore(gone, mixed).pours.map(({ drink }) => drink)).toEqual(['beer', 'spirit']);
});

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

describe('what tasting ahead tells of a pour', () => {
  const plan = planOf(3);
  const ashOf = (of: Plan) => of.pours.find(({ id }) => id === 'ash');

  it('changes one fact of one pour, and nothing where it is so already', () => {
    const told = withFact(plan, 'ash', 'hostNote', 'pear and chalk');
    expect(ashOf(told)).toEqual({ ...ashOf(plan), hostNote: 'pear and chalk' });
    expect(told.pours.slice(1)).toEqual(plan.pours.slice(1));
    expect(withFact(told, 'ash', 'hostNote', 'pear and chalk')).toBe(told);
    expect(withFact(told, 'ash', 'hostNote', undefined)).toEqual(plan);
    expect(withFact(plan, 'nobody', 'abv', 50)).toBe(plan);
  });

  it('keeps the other mark, and leaves no trace of a mark that is taken away', () => {
    const one = withMark(plan, 'ash', 'pungency', 0);
    const both = withMark(one, 'ash', 'dryness', 7.5);
    expect(ashOf(both)?.marks).toEqual({ pungency: 0, dryness: 7.5 });
    expect(ashOf(withMark(both, 'ash', 'pungency', undefined))?.marks).toEqual({ dryness: 7.5 });
    expect(withMark(one, 'ash', 'pungency', undefined)).toEqual(plan);
  });

  it('has a photo of each side, and knows which photos are in use', () => {
    const front = photoId('front-of-ash');
    const shown = withPhoto(withPhoto(plan, 'ash', 'front', front), 'birch', 'back', front);
    expect([...photosIn(shown)]).toEqual([front]);
    const removed = withPhoto(shown, 'ash', 'front', undefined);
    expect(ashOf(removed)).toEqual(ashOf(plan));
    expect(photosIn(removed).has(front)).toBe(true);
  });
});
