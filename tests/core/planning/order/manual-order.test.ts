import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PlannedPour } from '../../../../core/planning/order/axes/pour-facts.ts';
import { weighOrder } from '../../../../core/planning/order/lineup.ts';
import {
  cheapestPlace,
  moveDown,
  movePour,
  moveUp,
  swapPour,
} from '../../../../core/planning/order/manual-order.ts';
import { plannedPours } from './lineup-arbitraries.ts';

const order = ['a', 'b', 'c', 'd'];

describe('an order changed by hand', () => {
  it('moves a pour by one or by a drag', () => {
    expect(moveUp(order, 'c')).toEqual(['a', 'c', 'b', 'd']);
    expect(moveDown(order, 'c')).toEqual(['a', 'b', 'd', 'c']);
    expect(movePour(order, 'a', 2)).toEqual(['b', 'c', 'a', 'd']);
  });

  it('holds to the ends and leaves strangers alone', () => {
    expect(moveUp(order, 'a')).toEqual(order);
    expect(moveDown(order, 'd')).toEqual(order);
    expect(movePour(order, 'b', 99)).toEqual(['a', 'c', 'd', 'b']);
    expect(movePour(order, 'x', 0)).toEqual(order);
  });

  it('gives a missing bottle’s place to another, once', () => {
    expect(swapPour(order, 'b', 'x')).toEqual(['a', 'x', 'c', 'd']);
    expect(swapPour(order, 'b', 'd')).toEqual(order);
  });

  it('takes the earliest of places that cost the same', () => {
    const same = (id: string): PlannedPour => ({ id, drink: 'spirit', abv: 40 });
    expect(cheapestPlace([same('a'), same('b')], same('c'))).toEqual({ position: 0, cost: 0 });
  });

  it('finds the cheapest place for a new pour', () => {
    fc.assert(
      fc.property(plannedPours('spirit', 1, 7), ([pour, ...rest]) => {
        if (pour === undefined) return;
        const place = cheapestPlace(rest, pour);
        const costs = Array.from(
          { length: rest.length + 1 },
          (_, at) => weighOrder([...rest.slice(0, at), pour, ...rest.slice(at)]).cost,
        );
        expect(place.cost).toBe(Math.min(...costs));
        expect(place.position).toBe(costs.indexOf(place.cost));
      }),
    );
  });
});
