import { shuffled } from '../shuffle.ts';

/** Which of two drinks, A or B, stands in which glass of a difference test. */
export type TriangleOrder = 'AAB' | 'ABA' | 'ABB' | 'BAA' | 'BAB' | 'BBA';

/** The six orders of a triangle test, in alphabetical order (ISO 4120, 7.1). */
export const TRIANGLE_ORDERS: readonly TriangleOrder[] = ['AAB', 'ABA', 'ABB', 'BAA', 'BAB', 'BBA'];

/**
 * The same six in a ring such that any stretch of it is as even as it can be: the place of the odd glass runs
 * 3, 2, 1, 3, 2, 1, and the odd drink alternates. So a last, incomplete six is balanced too.
 */
const EVEN_RING: readonly TriangleOrder[] = ['AAB', 'BAB', 'BAA', 'BBA', 'ABA', 'ABB'];

/** The place of the odd glass, counted from 0. */
export const oddGlass = (order: TriangleOrder): 0 | 1 | 2 => oddGlasses[order];
const oddGlasses = { BAA: 0, ABB: 0, ABA: 1, BAB: 1, AAB: 2, BBA: 2 } as const;

/**
 * One order per seat: every six seats share out the six orders by lot, and those left over get a stretch of the
 * ring, so that no order, no place of the odd glass and no odd drink comes up more than once more than another.
 *
 * @throws RangeError unless seatCount is a whole number of 0 or more
 */
export function triangleOrdersForSeats(seatCount: number, random: () => number): TriangleOrder[] {
  if (!Number.isSafeInteger(seatCount) || seatCount < 0) {
    throw new RangeError(`The number of seats must be whole and not below 0: ${seatCount}.`);
  }
  const orders: TriangleOrder[] = [];
  for (let left = seatCount; left > 0; left -= EVEN_RING.length) {
    const start = Math.floor(random() * EVEN_RING.length);
    const turned = [...EVEN_RING.slice(start), ...EVEN_RING.slice(0, start)];
    orders.push(...shuffled(turned.slice(0, Math.min(left, EVEN_RING.length)), random));
  }
  return orders;
}
