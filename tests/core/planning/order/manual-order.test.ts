import { describe, expect, it } from 'vitest';
import { movePour } from '../../../../core/planning/order/manual-order.ts';

const order = ['a', 'b', 'c', 'd'];

describe('an order changed by hand', () => {
  it('moves a pour', () => {
    expect(movePour(order, 'a', 2)).toEqual(['b', 'c', 'a', 'd']);
    expect(movePour(order, 'c', 1)).toEqual(['a', 'c', 'b', 'd']);
  });

  it('holds to the ends and leaves strangers alone', () => {
    expect(movePour(order, 'a', -1)).toEqual(order);
    expect(movePour(order, 'b', 99)).toEqual(['a', 'c', 'd', 'b']);
    expect(movePour(order, 'x', 0)).toEqual(order);
  });
});
