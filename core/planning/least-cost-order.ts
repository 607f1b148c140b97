import { limits } from '../tasting.ts';
import type { CarryOverTable } from './carry-over.ts';

/** The subsets of 16 pours still fit a browser's memory and patience (2^16 x 16 whole numbers, 4 MB). */
export const MAX_LINEUP = limits.pours;

/** How flights bind an order, by the index of each pour in the table. */
export type FlightRule =
  /** Breaks before these positions (0 = the first pour); any pour may stand anywhere. */
  | { readonly kind: 'positions'; readonly breaksBefore: ReadonlySet<number> }
  /** Each pour belongs to a flight; flights stay whole, in their order or in the cheapest one. */
  | { readonly kind: 'membership'; readonly flightOf: readonly number[]; readonly inOrder: boolean };

export interface LeastCostOrder {
  readonly order: readonly number[];
  readonly cost: number;
  /** For each position, the other pours that could have stood there at the same least cost, given what came before. */
  readonly equallyGood: readonly (readonly number[])[];
}

const OUT_OF_REACH = 2 ** 30;
const read = (table: Int32Array, at: number): number => table[at] ?? 0;

/** Bit masks of the pours of each flight, and of all pours that must come before a flight. */
function flightMasks(rule: FlightRule, size: number): { own: Int32Array; before: Int32Array } {
  const own = new Int32Array(size);
  const before = new Int32Array(size);
  for (let pour = 0; pour < size; pour++) {
    for (let other = 0; other < size; other++) {
      if (rule.kind === 'positions') {
        own[pour] = read(own, pour) | (1 << other);
        continue;
      }
      const [mine = 0, its = 0] = [rule.flightOf[pour], rule.flightOf[other]];
      if (its === mine) own[pour] = read(own, pour) | (1 << other);
      if (rule.inOrder && its < mine) before[pour] = read(before, pour) | (1 << other);
    }
  }
  return { own, before };
}

function countBits(set: number): number {
  let count = 0;
  for (let rest = set; rest !== 0; rest &= rest - 1) count++;
  return count;
}

/**
 * The exact order of least cost, by dynamic programming over subsets (Held and Karp 1962; Bellman 1962): the
 * least cost still to come depends on which pours were served and which was last, and on nothing else, since
 * what lingers from all the earlier ones is a sum over a set. Time n^2 2^n. Of several least-cost orders the
 * one that is first by index is returned, so the same table always gives the same order.
 *
 * Throws a RangeError above MAX_LINEUP pours.
 */
export function leastCostOrder(table: CarryOverTable, rule: FlightRule): LeastCostOrder {
  const { size, earlier, neighbour, neighbourAfterBreak } = table;
  if (size > MAX_LINEUP) {
    throw new RangeError(
      `An order can be reckoned for up to ${MAX_LINEUP} pours; take ${size - MAX_LINEUP} out.`,
    );
  }
  if (size === 0) return { order: [], cost: 0, equallyGood: [] };
  const full = 2 ** size - 1;
  const { own, before } = flightMasks(rule, size);
  const breaksBefore = rule.kind === 'positions' ? rule.breaksBefore : new Set<number>();
  const toGo = new Int32Array((full + 1) * size).fill(OUT_OF_REACH);
  const lingering = new Int32Array(size);

  const mayFollow = (served: number, last: number, next: number): boolean => {
    if ((read(before, next) & ~served) !== 0) return false;
    const flight = read(own, last);
    return (flight & (1 << next)) !== 0 || (flight & ~served) === 0;
  };
  const toNeighbour = (served: number, last: number, next: number): number => {
    const afterBreak =
      rule.kind === 'membership'
        ? (read(own, last) & (1 << next)) === 0
        : breaksBefore.has(countBits(served));
    return read(afterBreak ? neighbourAfterBreak : neighbour, last * size + next);
  };
  const lingersOn = (served: number, next: number): number => {
    let sum = 0;
    for (let rest = served; rest !== 0; rest &= rest - 1) {
      sum += read(earlier, (31 - Math.clz32(rest & -rest)) * size + next);
    }
    return sum;
  };

  for (let last = 0; last < size; last++) toGo[full * size + last] = 0;
  for (let served = full - 1; served > 0; served--) {
    for (let next = 0; next < size; next++) {
      if ((served & (1 << next)) === 0) lingering[next] = lingersOn(served, next);
    }
    const gap = breaksBefore.has(countBits(served));
    const direct = gap ? neighbourAfterBreak : neighbour;
    for (let last = 0; last < size; last++) {
      if ((served & (1 << last)) === 0) continue;
      const flight = read(own, last);
      let least = OUT_OF_REACH;
      for (let next = 0; next < size; next++) {
        if ((served & (1 << next)) !== 0 || !mayFollow(served, last, next)) continue;
        const pairs = (flight & (1 << next)) === 0 ? neighbourAfterBreak : direct;
        const cost =
          read(lingering, next) +
          read(pairs, last * size + next) +
          read(toGo, (served | (1 << next)) * size + next);
        if (cost < least) least = cost;
      }
      toGo[served * size + last] = least;
    }
  }

  const order: number[] = [];
  const equallyGood: number[][] = [];
  let cost = 0;
  let served = 0;
  while (order.length < size) {
    const last = order.at(-1);
    let least = OUT_OF_REACH;
    let best: number[] = [];
    let bestStep = 0;
    for (let next = 0; next < size; next++) {
      if ((served & (1 << next)) !== 0) continue;
      const allowed = last === undefined ? read(before, next) === 0 : mayFollow(served, last, next);
      if (!allowed) continue;
      const step = last === undefined ? 0 : lingersOn(served, next) + toNeighbour(served, last, next);
      const whole = step + read(toGo, (served | (1 << next)) * size + next);
      if (whole < least) [least, best, bestStep] = [whole, [next], step];
      else if (whole === least) best.push(next);
    }
    const [chosen, ...others] = best;
    if (chosen === undefined)
      throw new RangeError('No order keeps these flights whole; check their numbers.');
    order.push(chosen);
    equallyGood.push(others);
    cost += bestStep;
    served |= 1 << chosen;
  }
  return { order, cost, equallyGood };
}
