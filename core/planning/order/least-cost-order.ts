import { limits } from '../../tasting.ts';
import type { CarryOverTable } from './carry-over.ts';

/** The subsets of 16 pours still fit a browser's memory and patience (2^16 x 16 whole numbers, 4 MB). */
const MAX_LINEUP = limits.pours;

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

interface Problem {
  readonly size: number;
  /** What neighbours cost on top of what lingers, breaks between flights counted; row = earlier. */
  readonly neighbour: Int32Array;
  readonly neighbourAfterBreak: Int32Array;
  readonly lingersOn: (served: number, next: number) => number;
  /** How many pours have been served where a break stands, by position alone. */
  readonly breaksBefore: ReadonlySet<number>;
  /** By pour: the set of its flight, which has to be finished before another begins. */
  readonly flight: Int32Array;
  /** By pour: the set that must have been served before it. */
  readonly before: Int32Array;
}

/** The lowest pour of a set that is not empty. */
const lowest = (set: number): number => 31 - Math.clz32(set & -set);

function countBits(set: number): number {
  let count = 0;
  for (let rest = set; rest !== 0; rest &= rest - 1) count++;
  return count;
}

/**
 * What a set of earlier pours leaves for a later one. The set is looked up in two halves of eight pours, so that
 * a sum over sixteen costs two reads.
 */
function lingeringSums({ size, earlier }: CarryOverTable): (served: number, next: number) => number {
  const half = (firstPour: number): Int32Array => {
    const sums = new Int32Array(256 * size);
    for (let set = 1; set < 256; set++) {
      const pour = firstPour + lowest(set);
      if (pour >= size) continue;
      for (let next = 0; next < size; next++) {
        sums[set * size + next] =
          read(sums, (set & (set - 1)) * size + next) + read(earlier, pour * size + next);
      }
    }
    return sums;
  };
  const [low, high] = [half(0), half(8)];
  return (served, next) => read(low, (served & 255) * size + next) + read(high, (served >> 8) * size + next);
}

function stateProblem(table: CarryOverTable, rule: FlightRule): Problem {
  const { size, neighbourAfterBreak } = table;
  const neighbour = Int32Array.from(table.neighbour);
  const flight = new Int32Array(size);
  const before = new Int32Array(size);
  for (let pour = 0; pour < size; pour++) {
    for (let other = 0; other < size; other++) {
      const [mine, its] =
        rule.kind === 'positions' ? [0, 0] : [rule.flightOf[pour] ?? 0, rule.flightOf[other] ?? 0];
      const at = other * size + pour;
      if (mine === its) flight[pour] = read(flight, pour) | (1 << other);
      else neighbour[at] = read(neighbourAfterBreak, at);
      if (rule.kind === 'membership' && rule.inOrder && its < mine) {
        before[pour] = read(before, pour) | (1 << other);
      }
    }
  }
  const breaksBefore = rule.kind === 'positions' ? rule.breaksBefore : new Set<number>();
  return {
    size,
    neighbour,
    neighbourAfterBreak,
    lingersOn: lingeringSums(table),
    breaksBefore,
    flight,
    before,
  };
}

const neighboursAt = (problem: Problem, served: number): Int32Array =>
  problem.breaksBefore.has(countBits(served)) ? problem.neighbourAfterBreak : problem.neighbour;

/** The set of pours that may come next: those of the last one's flight until it is finished. */
const mayFollow = ({ flight }: Problem, served: number, last: number): number => {
  const own = read(flight, last);
  return (own & ~served) === 0 ? ~served : own & ~served;
};

/** The least cost still to come, by the set already served and the last of it: at [served x size + last]. */
function costsToGo(problem: Problem): Int32Array {
  const { size, before, lingersOn } = problem;
  const sets = 2 ** size;
  const toGo = new Int32Array(sets * size);
  const open = new Int32Array(size);
  const base = new Int32Array(size);
  for (let served = sets - 2; served > 0; served--) {
    // What does not depend on the last pour is reckoned once for all of them: this is the hot part.
    let opens = 0;
    let openSet = 0;
    for (let rest = ~served & (sets - 1); rest !== 0; rest &= rest - 1) {
      const next = lowest(rest);
      if ((read(before, next) & ~served) !== 0) continue;
      base[opens] = lingersOn(served, next) + read(toGo, (served | (1 << next)) * size + next);
      open[opens++] = next;
      openSet |= 1 << next;
    }
    const neighbour = neighboursAt(problem, served);
    for (let rest = served; rest !== 0; rest &= rest - 1) {
      const last = lowest(rest);
      const barred = openSet & ~mayFollow(problem, served, last);
      let least = OUT_OF_REACH;
      for (let choice = 0; choice < opens; choice++) {
        const next = read(open, choice);
        if ((barred & (1 << next)) !== 0) continue;
        const cost = read(base, choice) + read(neighbour, last * size + next);
        if (cost < least) least = cost;
      }
      toGo[served * size + last] = least;
    }
  }
  return toGo;
}

/** The pours that may come next at the least cost of the whole, by index, and what they add themselves. */
function bestNext(problem: Problem, toGo: Int32Array, served: number, last: number | undefined) {
  const { size, before, lingersOn } = problem;
  const allowed = last === undefined ? ~served : mayFollow(problem, served, last);
  let least = OUT_OF_REACH;
  let step = 0;
  let pours: number[] = [];
  for (let next = 0; next < size; next++) {
    if ((allowed & (1 << next)) === 0 || (read(before, next) & ~served) !== 0) continue;
    const direct = last === undefined ? 0 : read(neighboursAt(problem, served), last * size + next);
    const own = direct + lingersOn(served, next);
    const whole = own + read(toGo, (served | (1 << next)) * size + next);
    if (whole < least) [least, step, pours] = [whole, own, [next]];
    else if (whole === least) pours.push(next);
  }
  return { pours, step };
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
  const { size } = table;
  if (size > MAX_LINEUP) {
    throw new RangeError(
      `An order can be reckoned for up to ${MAX_LINEUP} pours; take ${size - MAX_LINEUP} out.`,
    );
  }
  const problem = stateProblem(table, rule);
  const toGo = costsToGo(problem);
  const order: number[] = [];
  const equallyGood: number[][] = [];
  let cost = 0;
  let served = 0;
  while (order.length < size) {
    const { pours, step } = bestNext(problem, toGo, served, order.at(-1));
    const [chosen, ...others] = pours;
    if (chosen === undefined) throw new RangeError('No order keeps these flights whole; check them.');
    order.push(chosen);
    equallyGood.push(others);
    cost += step;
    served |= 1 << chosen;
  }
  return { order, cost, equallyGood };
}
