import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { balanceOf, williamsSize } from '../../../../core/planning/serving/order-balance.ts';
import {
  balanceOfSeats,
  designServingOrders,
  servingOrderOf,
  williamsDesign,
} from '../../../../core/planning/serving/serving-orders.ts';
import { shuffled } from '../../../../core/shuffle.ts';
import { seededRandom } from '../../../support/seeded-random.ts';

const pours = (n: number) => Array.from({ length: n }, (_, at) => `pour-${at}`);
const seats = (count: number) => Array.from({ length: count }, (_, at) => at);
const sizes = fc.integer({ min: 1, max: 16 });

describe('a Williams design', () => {
  it.each(seats(16).map((at) => at + 1))('of %i samples keeps positions and neighbours level', (n) => {
    const rows = williamsDesign(n);
    const balance = balanceOf(rows);
    expect(rows).toHaveLength(williamsSize(n));
    expect(balance).toMatchObject({
      allRowsPermutations: true,
      positionBalanced: true,
      carryoverBalanced: true,
    });
  });

  it('holds the reverse of every row when n is even', () => {
    for (const n of [2, 4, 6, 8, 12]) {
      const rows = williamsDesign(n).map((row) => row.join());
      for (const row of williamsDesign(n)) expect(rows).toContain([...row].reverse().join());
    }
  });

  it('keeps both balances when samples are relabelled or rows change places; columns may not', () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 10 }), fc.integer(), (n, seed) => {
        const random = seededRandom(seed);
        const labels = shuffled(seats(n), random);
        const rows = shuffled(williamsDesign(n), random).map((row) =>
          row.map((sample) => labels[sample] ?? -1),
        );
        expect(balanceOf(rows)).toMatchObject({ positionBalanced: true, carryoverBalanced: true });
      }),
    );
    const swapped = williamsDesign(4).map(([a = 0, b = 0, c = 0, d = 0]) => [b, a, c, d]);
    expect(balanceOf(swapped)).toMatchObject({ positionBalanced: true, carryoverBalanced: false });
  });

  it('sees through a cyclic square', () => {
    const cyclic = seats(5).map((row) => seats(5).map((at) => (row + at) % 5));
    expect(balanceOf(cyclic)).toMatchObject({ positionBalanced: true, carryoverBalanced: false });
  });
});

describe('serving orders for seats', () => {
  it('keep positions as level as can be for any number of seats', () => {
    fc.assert(
      fc.property(sizes, fc.integer({ min: 1, max: 60 }), fc.integer(), (n, guests, seed) => {
        const design = designServingOrders([pours(n)], seededRandom(seed));
        const [balance] = balanceOfSeats(design, seats(guests)).flights;
        expect(balance).toMatchObject({
          allRowsPermutations: true,
          positionCountMin: Math.floor(guests / n),
          positionCountMax: Math.ceil(guests / n),
          positionBalanced: guests % n === 0,
        });
        // n rows for even n, 2n for odd n (Williams 1949).
        if (guests % williamsSize(n) === 0) expect(balance?.carryoverBalanced).toBe(true);
      }),
    );
  });

  it('give no two guests of one block the same row', () => {
    fc.assert(
      fc.property(sizes, fc.integer(), (n, seed) => {
        const design = designServingOrders([pours(n)], seededRandom(seed));
        const rows = seats(williamsSize(n)).map((seat) => servingOrderOf(design, seat).join());
        expect(new Set(rows).size).toBe(rows.length);
      }),
    );
  });

  it('stay inside their flights', () => {
    const flights = [pours(3), ['x', 'y', 'z', 'w']];
    const design = designServingOrders(flights, seededRandom(7));
    for (const seat of seats(24)) {
      const order = servingOrderOf(design, seat);
      expect(order.map((flight) => [...flight].sort())).toEqual(flights.map((flight) => [...flight].sort()));
    }
  });

  it('come out alike from the same seed and unlike from another', () => {
    const design = (seed: number) => designServingOrders([pours(6)], seededRandom(seed));
    expect(design(11)).toEqual(design(11));
    expect(design(11)).not.toEqual(design(12));
    expect(balanceOfSeats(design(12), seats(6)).limits).toEqual([]);
  });

  it('seat a late guest on the next row without touching the others', () => {
    const design = designServingOrders([pours(4)], seededRandom(3));
    const early = seats(3).map((seat) => servingOrderOf(design, seat));
    expect(seats(3).map((seat) => servingOrderOf(design, seat))).toEqual(early);
    expect(balanceOfSeats(design, [0, 1, 2, 3]).flights[0]?.carryoverBalanced).toBe(true);
  });

  it('say what they cannot keep', () => {
    const design = designServingOrders([pours(4)], seededRandom(3));
    expect(balanceOfSeats(design, seats(5)).limits).toEqual([
      { code: 'seats-do-not-fill-design', flight: 0, seats: 5, needed: 8 },
    ]);
    const single = designServingOrders([['only']], seededRandom(3));
    expect(balanceOfSeats(single, seats(5)).limits).toEqual([{ code: 'nothing-to-vary', flight: 0 }]);
  });

  it('obey a forced place and say that it breaks the balance', () => {
    const forced = { last: ['pour-2'] };
    const design = designServingOrders([pours(5)], seededRandom(9), forced);
    const { flights, limits } = balanceOfSeats(design, seats(4), forced);
    expect(seats(4).map((seat) => servingOrderOf(design, seat)[0]?.at(-1))).toEqual(Array(4).fill('pour-2'));
    expect(flights[0]?.positionBalanced).toBe(false);
    expect(limits).toEqual([{ code: 'forced-place-breaks-balance', flight: 0, pours: ['pour-2'] }]);
  });

  it('refuse doubled pours, and seats and sizes that are none', () => {
    expect(() => designServingOrders([['a'], ['a']], seededRandom(1))).toThrow(/only once/);
    expect(() => servingOrderOf({ flights: [] }, -1)).toThrow(/from 0/);
    expect(() => williamsSize(2.5)).toThrow(RangeError);
    expect(designServingOrders([], seededRandom(1))).toEqual({ flights: [] });
    expect(servingOrderOf(designServingOrders([[]], seededRandom(1)), 4)).toEqual([[]]);
  });
});
