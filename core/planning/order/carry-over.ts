import type { AxisCode } from './axes/axis.ts';
import type { PourReading } from './order-axes.ts';

/**
 * What a pour lays over a later one, in whole thousandths of a point, so that sums are exact in any order.
 *
 * On each axis the earlier pour costs the later one `weight x (its level - the later one's level)` where it
 * stands higher, and nothing where it stands lower: smoke spoils the delicate, the delicate does not spoil
 * smoke. The sum over the axes is the pair's full carry-over. Of it counts
 * - all, when the two are neighbours;
 * - a little over half, when they are neighbours with a break between;
 * - a fifth, for any earlier pour: palates tire, and a giant is not forgotten after one glass.
 * Nothing measured stands behind these shares; they are stated so that they can be argued with.
 */
export const POINT = 1000;
const LEAD = 100;
const LINGERING_SHARE = 0.2;
/** On top of it, by how near they stand. */
const nearShares = { neighbour: 0.8, 'neighbour-after-break': 0.35, earlier: 0 } as const;

export type Distance = keyof typeof nearShares;

/** The difference between two pours on one axis: positive where the later one stands higher. */
export interface AxisStep {
  readonly axis: AxisCode;
  readonly from: number;
  readonly to: number;
  /** Thousandths of a point, signed: a rise is positive, a fall (which costs) negative. */
  readonly rise: number;
  readonly leads: boolean;
  /** True where either level is a stand-in for a missing fact. */
  readonly assumed: boolean;
}

/** Axis by axis, from one pour to another. Pours of different drinks are compared as drinks only. */
export function stepsBetween(earlier: PourReading, later: PourReading): readonly AxisStep[] {
  const sameDrink = earlier.drink === later.drink;
  return [...earlier.levels].flatMap(([axis, from]) => {
    const to = later.levels.get(axis);
    if (to === undefined || (axis === 'drink') === sameDrink) return [];
    return {
      axis,
      from: from.value,
      to: to.value,
      rise: Math.round(from.weight * (to.value - from.value) * POINT),
      leads: from.leads,
      assumed: from.assumed || to.assumed,
    };
  });
}

/** How much a step counts for the order: an axis that leads outweighs all others together. */
export const pull = ({ rise, leads }: AxisStep): number => (leads ? rise * LEAD : rise);

/** Full carry-over of a pour on one directly after it, in thousandths of a point, the leading axis pulled up. */
export function fullCarryOver(earlier: PourReading, later: PourReading): number {
  return stepsBetween(earlier, later).reduce((sum, step) => sum + Math.max(0, -pull(step)), 0);
}

/** The share of a full carry-over that counts at a distance, in whole thousandths of a point. */
export function carryOverAt(full: number, distance: Distance): number {
  return Math.round(full * LINGERING_SHARE) + Math.round(full * nearShares[distance]);
}

/** The costs of every ordered pair, row = earlier, column = later, flat, row by row. */
export interface CarryOverTable {
  readonly size: number;
  readonly earlier: Int32Array;
  /** On top of `earlier`, for neighbours. */
  readonly neighbour: Int32Array;
  /** On top of `earlier`, for neighbours with a break between. */
  readonly neighbourAfterBreak: Int32Array;
}

export function carryOverTable(pours: readonly PourReading[]): CarryOverTable {
  const size = pours.length;
  const earlier = new Int32Array(size * size);
  const neighbour = new Int32Array(size * size);
  const neighbourAfterBreak = new Int32Array(size * size);
  pours.forEach((before, row) => {
    pours.forEach((after, column) => {
      if (row === column) return;
      const full = fullCarryOver(before, after);
      const at = row * size + column;
      earlier[at] = carryOverAt(full, 'earlier');
      neighbour[at] = carryOverAt(full, 'neighbour') - carryOverAt(full, 'earlier');
      neighbourAfterBreak[at] = carryOverAt(full, 'neighbour-after-break') - carryOverAt(full, 'earlier');
    });
  });
  return { size, earlier, neighbour, neighbourAfterBreak };
}
