import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FigureOutOfRange } from '../../../../core/planning/figures/figure-errors.ts';
import { costPerSeat } from '../../../../core/planning/shopping/cost.ts';
import { bottlesToBuy, poursPerBottle } from '../../../../core/planning/shopping/quantities.ts';
import { remoteKit } from '../../../../core/planning/shopping/remote-kit.ts';
import { tableSupplies, USUAL_RATES } from '../../../../core/planning/shopping/table-supplies.ts';
import { densityFromAbv } from '../../../../core/planning/strength/alcoholometry.ts';
import { afterDrops, afterWater, waterToReach } from '../../../../core/planning/strength/dilution.ts';
import { ethanolInPour } from '../../../../core/planning/strength/ethanol.ts';
import { eveningStrength } from '../../../../core/planning/strength/evening-strength.ts';
import { smallerPours } from '../../../../core/planning/strength/smaller-pours.ts';
import { drinksOfMass } from '../../../../core/planning/strength/standard-drinks.ts';
import { abvPercent as abv, grams, minorUnits, millilitres as ml } from '../../../../core/units.ts';

type Call = (a: number, b: number, c: number, d: number) => unknown;

/** Every sum of the folder, with figures that it must answer. */
const sums: Record<string, { readonly sum: Call; readonly sound: readonly number[] }> = {
  densityFromAbv: { sum: (a) => densityFromAbv(abv(a)), sound: [43] },
  ethanolInPour: { sum: (a, b) => ethanolInPour({ volume: ml(a), strength: abv(b) }), sound: [20, 46] },
  drinksOfMass: { sum: (a, b) => drinksOfMass(grams(a), grams(b)), sound: [14, 10] },
  afterWater: {
    sum: (a, b, c) => afterWater({ volume: ml(a), strength: abv(b) }, ml(c)),
    sound: [20, 60, 5],
  },
  afterDrops: {
    sum: (a, b, c) => afterDrops({ volume: ml(a), strength: abv(b) }, c),
    sound: [20, 60, 3],
  },
  waterToReach: {
    sum: (a, b, c) => waterToReach({ volume: ml(a), strength: abv(b) }, abv(c)),
    sound: [700, 63.5, 46],
  },
  poursPerBottle: { sum: (a, b) => poursPerBottle(ml(a), ml(b)), sound: [750, 44.36] },
  bottlesToBuy: {
    sum: (a, b, c, d) =>
      bottlesToBuy({ guests: a, poursPerGuest: 1, hostPours: 1, pour: ml(b), bottle: ml(c), reserve: d }),
    sound: [24, 20, 700, 0.1],
  },
  bottlesToBuyForPeople: {
    sum: (a, b, c) =>
      bottlesToBuy({ guests: a, poursPerGuest: b, hostPours: c, pour: ml(20), bottle: ml(700), reserve: 0 }),
    sound: [24, 1, 2],
  },
  remoteKit: { sum: (a, b, c) => remoteKit(a, [ml(b)], [ml(c)]), sound: [4, 15, 20] },
  tableSupplies: {
    sum: (a, b, c) => tableSupplies({ seats: a, pours: b, glassesAtOnce: c, lids: true, droppers: true }),
    sound: [12, 6, 6],
  },
  tableSupplyRates: {
    sum: (a, b, c, d) =>
      tableSupplies(
        { seats: 9, pours: 9, glassesAtOnce: 9, lids: true, droppers: true },
        { ...USUAL_RATES, waterPerSeat: ml(a), napkinsPerSeat: b, seatsPerDropper: c, glassesPerSpare: d },
      ),
    sound: [250, 2, 2, 12],
  },
  costPerSeat: {
    sum: (a, b, c) => costPerSeat('EUR', [{ price: minorUnits(a), count: b }], c),
    sound: [4999, 3, 12],
  },
  eveningStrength: {
    sum: (a, b, c, d) =>
      eveningStrength([{ volume: ml(a), strength: abv(b) }], 'US', { step: ml(c), smallest: ml(d) }),
    sound: [44, 46, 1, 5],
  },
  smallerPours: {
    sum: (a, b, c) => smallerPours([{ volume: ml(a), strength: abv(b) }], grams(c)),
    sound: [200, 46, 40],
  },
};

const awkward = fc.oneof(
  fc.constantFrom(Number.NaN, -1, -0, 0, 1, 5e-324, 0.1, 0.5, 20, 40, 46.5, 100, 146, 200, 700, 1e6, 1e308),
  fc.constantFrom(Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY),
  fc.double(),
  fc.double({ min: 0, max: 1000, noNaN: true }),
  fc.nat(300),
);

function numbersIn(answer: unknown): number[] {
  if (typeof answer === 'number') return [answer];
  if (typeof answer === 'object' && answer !== null) return Object.values(answer).flatMap(numbersIn);
  return [];
}

describe('figures without meaning', () => {
  it.each(Object.entries(sums))('%s gives finite figures or a sentence, never NaN', (_, { sum, sound }) => {
    const [a = 0, b = 0, c = 0, d = 0] = sound;
    expect(numbersIn(sum(a, b, c, d)).every(Number.isFinite)).toBe(true);
    const some = (figure: number) => fc.oneof({ weight: 2, arbitrary: fc.constant(figure) }, awkward);
    fc.assert(
      fc.property(some(a), some(b), some(c), some(d), (...figures) => {
        try {
          const numbers = numbersIn(sum(...figures));
          expect(numbers.filter((number) => !Number.isFinite(number))).toEqual([]);
        } catch (error) {
          if (!(error instanceof FigureOutOfRange)) throw error;
          expect(error.message).toMatch(/^(The|There) .*\.$/);
        }
      }),
      { numRuns: 300 },
    );
  });

  it.each([
    [
      '146 % vol, which may be US proof',
      () => ethanolInPour({ volume: ml(20), strength: abv(146) }),
      /give 73\./,
    ],
    ['201 % vol', () => densityFromAbv(abv(201)), /from 0 to 100/],
    ['-1 % vol', () => densityFromAbv(abv(-1)), /from 0 to 100/],
    ['no number for a pour', () => poursPerBottle(ml(700), ml(Number.NaN)), /The pour is NaN/],
    ['a pour of nothing', () => poursPerBottle(ml(700), ml(0)), /The pour is 0/],
    ['half a guest', () => remoteKit(2.5, []), /Give a whole number/],
    ['fewer than no guests', () => remoteKit(-1, []), /from 0 to 10000/],
    ['half a drop', () => afterDrops({ volume: ml(20), strength: abv(46) }, 0.5), /Give a whole number/],
  ])('refuses %s', (_, run, message) => {
    expect(run).toThrow(FigureOutOfRange);
    expect(run).toThrow(message);
    expect(run).toThrow(RangeError);
  });

  it('takes 0 and 100 % vol', () => {
    expect(ethanolInPour({ volume: ml(20), strength: abv(0) })).toMatchObject({ volume: 0, mass: 0 });
    expect(ethanolInPour({ volume: ml(20), strength: abv(100) })).toMatchObject({ volume: 20 });
  });
});
