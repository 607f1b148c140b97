import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CarryOverTable } from '../../../../core/planning/order/carry-over.ts';
import { type FlightRule, leastCostOrder } from '../../../../core/planning/order/least-cost-order.ts';

const costs = (size: number) =>
  fc
    .array(fc.integer({ min: 0, max: 2000 }), { minLength: size * size, maxLength: size * size })
    .map((all) => Int32Array.from(all));

const tables = (min: number, max: number): fc.Arbitrary<CarryOverTable> =>
  fc.integer({ min, max }).chain((size) =>
    fc.record({
      size: fc.constant(size),
      earlier: costs(size),
      neighbour: costs(size),
      neighbourAfterBreak: costs(size),
    }),
  );

/** The cost of an order, summed pair by pair as it is defined. */
function costOf(table: CarryOverTable, order: readonly number[], rule: FlightRule): number {
  let cost = 0;
  for (const [position, pour] of order.entries()) {
    for (const before of order.slice(0, position)) cost += table.earlier[before * table.size + pour] ?? 0;
    const last = order[position - 1];
    if (last === undefined) continue;
    const parted =
      rule.kind === 'positions'
        ? rule.breaksBefore.has(position)
        : rule.flightOf[last] !== rule.flightOf[pour];
    cost += (parted ? table.neighbourAfterBreak : table.neighbour)[last * table.size + pour] ?? 0;
  }
  return cost;
}

function permutationsOf(items: readonly number[]): number[][] {
  if (items.length === 0) return [[]];
  return items.flatMap((item) =>
    permutationsOf(items.filter((other) => other !== item)).map((rest) => [item, ...rest]),
  );
}

describe('the least-cost order of any table', () => {
  it('costs what its pairs cost, at any size, and no more than other orders', () => {
    fc.assert(
      fc.property(
        tables(9, 12),
        fc.integer({ min: 1, max: 8 }),
        fc.infiniteStream(fc.nat()),
        (table, cut, keys) => {
          const rule: FlightRule = { kind: 'positions', breaksBefore: new Set([cut]) };
          const best = leastCostOrder(table, rule);
          expect(best.cost).toBe(costOf(table, best.order, rule));
          for (let tries = 0; tries < 20; tries++) {
            const other = best.order
              .map((pour) => ({ pour, key: keys.next().value ?? 0 }))
              .sort((a, b) => a.key - b.key)
              .map(({ pour }) => pour);
            expect(best.cost).toBeLessThanOrEqual(costOf(table, other, rule));
          }
        },
      ),
      { numRuns: 30 },
    );
  });

  it('agrees with trying every order of ten pours in three flights', () => {
    const flightOf = [0, 1, 2, 0, 1, 2, 0, 1, 2, 0];
    const rule: FlightRule = { kind: 'membership', flightOf, inOrder: true };
    const orders = [0, 1, 2].map((flight) =>
      permutationsOf(flightOf.flatMap((own, pour) => (own === flight ? [pour] : []))),
    );
    const [first = [], second = [], third = []] = orders;
    const all = first.flatMap((a) => second.flatMap((b) => third.map((c) => [...a, ...b, ...c])));
    fc.assert(
      fc.property(tables(10, 10), (table) => {
        const least = Math.min(...all.map((order) => costOf(table, order, rule)));
        expect(leastCostOrder(table, rule).cost).toBe(least);
      }),
      { numRuns: 15 },
    );
  });

  it('takes the first by index where all cost the same, and names the rest', () => {
    const size = 4;
    const flat = new Int32Array(size * size);
    const table: CarryOverTable = { size, earlier: flat, neighbour: flat, neighbourAfterBreak: flat };
    const { order, equallyGood } = leastCostOrder(table, { kind: 'positions', breaksBefore: new Set() });
    expect(order).toEqual([0, 1, 2, 3]);
    expect(equallyGood).toEqual([[1, 2, 3], [2, 3], [3], []]);
  });
});
