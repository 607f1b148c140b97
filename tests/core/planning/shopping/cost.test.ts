import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { costPerSeat } from '../../../../core/planning/shopping/cost.ts';
import { minorUnits } from '../../../../core/units.ts';

const line = (price: number, count: number) => ({ price: minorUnits(price), count });

describe('cost of a seat', () => {
  it('covers the total and shows what the rounding brings', () => {
    const cost = costPerSeat('EUR', [line(4999, 2), line(6150, 1)], 7);
    expect(cost).toMatchObject({ kind: 'seat-cost', total: 16148, perSeat: 2307, surplus: 1 });
  });

  it('has no seat price without seats, nor a price for nothing', () => {
    expect(costPerSeat('JPY', [line(4200, 1)], 0)).toEqual({
      kind: 'no-seats',
      currency: 'JPY',
      total: 4200,
    });
    expect(costPerSeat('JPY', [], 5)).toMatchObject({ total: 0, perSeat: 0, surplus: 0 });
  });

  it('is never short, and by less than one unit a seat too much', () => {
    const lines = fc.array(fc.tuple(fc.nat(10_000_000), fc.nat(500)), { maxLength: 20 });
    fc.assert(
      fc.property(lines, fc.integer({ min: 1, max: 300 }), (given, seats) => {
        const cost = costPerSeat(
          'GBP',
          given.map(([price, count]) => line(price, count)),
          seats,
        );
        if (cost.kind !== 'seat-cost') throw new Error(cost.kind);
        const total = given.reduce((sum, [price, count]) => sum + BigInt(price) * BigInt(count), 0n);
        expect(BigInt(cost.total)).toBe(total);
        expect(BigInt(cost.perSeat) * BigInt(seats) - total).toBe(BigInt(cost.surplus));
        expect(cost.surplus).toBeGreaterThanOrEqual(0);
        expect(cost.surplus).toBeLessThan(seats);
        expect(cost.reckoning.at(-1)?.result.value).toBe(cost.perSeat);
      }),
    );
  });

  it('takes whole minor units of a named currency only', () => {
    expect(() => costPerSeat('EUR', [line(49.99, 2)], 7)).toThrow('Give a whole number of cents');
    expect(() => costPerSeat('euro', [], 7)).toThrow('Give its three letters');
    const hoard = Array.from({ length: 100 }, () => line(10_000_000_000, 10_000));
    expect(() => costPerSeat('EUR', hoard, 7)).toThrow('too large to be exact');
  });
});
