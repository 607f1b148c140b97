import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { redrawnOrders, withServingOrders } from '../../../../core/planning/serving/drawn-orders.ts';
import { balanceOfSeats, designServingOrders } from '../../../../core/planning/serving/serving-orders.ts';
import { servedInOwnOrders } from '../../../../core/session/serving.ts';
import { planOf } from '../../../support/plans.ts';
import { seededRandom } from '../../../support/seeded-random.ts';

const own = { blind: true, ownOrders: true } as const;
const random = () => seededRandom(7);

describe('orders drawn for a plan', () => {
  it('are there for every seat as soon as each seat has an order of its own, and not before', () => {
    for (const plan of [planOf(6), planOf(6, { blind: true }), planOf(6, { ownOrders: true })]) {
      expect(withServingOrders(plan, random())).toBe(plan);
    }
    const drawn = withServingOrders(planOf(6, own), random());
    expect(servedInOwnOrders(drawn)).toBe(true);
    expect(drawn.servingOrders.map(({ rows }) => rows.length)).toEqual([6, 6]);
  });

  it('stay as they are while the flights hold the same pours, whatever their order', () => {
    const drawn = withServingOrders(planOf(6, own), random());
    expect(withServingOrders(drawn, random())).toBe(drawn);
    const [a, b, ...rest] = drawn.pours;
    if (a === undefined || b === undefined) throw new Error('There are six pours.');
    const turned = { ...drawn, pours: [b, a, ...rest] };
    expect(withServingOrders(turned, random())).toBe(turned);
  });

  it('are drawn anew for the flight that changed, and for no other', () => {
    const drawn = withServingOrders(planOf(6, own), random());
    const [first, second] = drawn.servingOrders;
    const swapped = {
      ...drawn,
      pours: drawn.pours.map((pour) =>
        pour.id === 'fir' ? { ...pour, id: 'juniper' as typeof pour.id } : pour,
      ),
    };
    const mended = withServingOrders(swapped, random());
    expect(mended.servingOrders[0]).toBe(first);
    expect(mended.servingOrders[1]).not.toEqual(second);
    expect(servedInOwnOrders(mended)).toBe(true);
  });

  it('go when the tasting is blind no more', () => {
    const drawn = withServingOrders(planOf(6, own), random());
    expect(withServingOrders({ ...drawn, blind: false }, random()).servingOrders).toEqual([]);
  });

  it('come out otherwise when they are drawn once more', () => {
    const drawn = withServingOrders(planOf(9, own), random());
    expect(redrawnOrders(drawn, seededRandom(8)).servingOrders).not.toEqual(drawn.servingOrders);
  });

  it('cover and balance every lineup, by the same designs as for one drawing of all flights', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 16 }), fc.nat(), (pours, seed) => {
        const drawn = withServingOrders(planOf(pours, own), seededRandom(seed));
        expect(servedInOwnOrders(drawn)).toBe(true);
        const ids = drawn.servingOrders.map(({ rows }) => rows[0] ?? []);
        const together = designServingOrders(ids, seededRandom(seed));
        expect(together.flights.map(({ rows }) => rows.length)).toEqual(
          drawn.servingOrders.map(({ rows }) => rows.length),
        );
        for (const [flight, { rows }] of drawn.servingOrders.entries()) {
          const seats = rows.map((_, seat) => seat);
          const { flights } = balanceOfSeats({ flights: drawn.servingOrders }, seats);
          expect(flights[flight]).toMatchObject({ positionBalanced: true, carryoverBalanced: true });
        }
      }),
      { numRuns: 40 },
    );
  });
});
