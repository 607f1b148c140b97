/** A set of serving orders as rows of sample numbers, one row per guest, one column per position. */
export type ServingRows = readonly (readonly number[])[];

export interface OrderBalance {
  readonly rows: number;
  /** How many samples: the length of a row. */
  readonly n: number;
  readonly allRowsPermutations: boolean;
  /** How often a sample stands in a position: the least and the most over all samples and positions. */
  readonly positionCountMin: number;
  readonly positionCountMax: number;
  /** Every sample equally often in every position. */
  readonly positionBalanced: boolean;
  /** How often one sample comes directly before another: the least and the most over all ordered pairs. */
  readonly adjacentCountMin: number;
  readonly adjacentCountMax: number;
  /** Every ordered pair of different samples equally often: first-order carry-over cancels. */
  readonly carryoverBalanced: boolean;
}

const leastAndMost = (counts: readonly number[]): readonly [number, number] =>
  counts.length === 0 ? [0, 0] : [Math.min(...counts), Math.max(...counts)];

const tally = (keys: readonly string[]): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>();
  for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
  return counts;
};

/** What a design of serving orders keeps level, counted from its rows alone, whoever made it. */
export function balanceOf(rows: ServingRows): OrderBalance {
  const samples = [...new Set(rows.flat())];
  const n = Math.max(0, ...rows.map((row) => row.length));
  const positions = tally(rows.flatMap((row) => row.map((sample, position) => `${sample}@${position}`)));
  const neighbours = tally(rows.flatMap((row) => row.slice(1).map((sample, at) => `${row[at]}>${sample}`)));
  const [positionCountMin, positionCountMax] = leastAndMost(
    samples.flatMap((sample) =>
      Array.from({ length: n }, (_, position) => positions.get(`${sample}@${position}`) ?? 0),
    ),
  );
  const [adjacentCountMin, adjacentCountMax] = leastAndMost(
    samples.flatMap((a) => samples.flatMap((b) => (a === b ? [] : (neighbours.get(`${a}>${b}`) ?? 0)))),
  );
  const allRowsPermutations =
    samples.length === n && rows.every((row) => row.length === n && new Set(row).size === n);
  return {
    rows: rows.length,
    n,
    allRowsPermutations,
    positionCountMin,
    positionCountMax,
    positionBalanced: allRowsPermutations && positionCountMin === positionCountMax,
    adjacentCountMin,
    adjacentCountMax,
    carryoverBalanced: allRowsPermutations && adjacentCountMin === adjacentCountMax,
  };
}

export interface BestBalance {
  readonly positionMin: number;
  readonly positionMax: number;
  readonly adjacentMeanPerOrderedPair: number;
  readonly positionBalancePossible: boolean;
  readonly carryoverBalancePossible: boolean;
}

/**
 * The best that `guests` orders of `n` samples can do: m guests give m(n - 1) neighbours over n(n - 1) ordered
 * pairs, and each sample floor(m/n) or ceil(m/n) times in each position. Carry-over balance needs a multiple
 * of n guests for even n, of 2n for odd n (Williams 1949; the few single squares known for odd composite n are
 * not used).
 * Throws a RangeError unless both are whole numbers from 1.
 */
export function bestBalance(n: number, guests: number): BestBalance {
  if (!Number.isInteger(n) || n < 1 || !Number.isInteger(guests) || guests < 1) {
    throw new RangeError('A design needs at least one sample and one guest, in whole numbers.');
  }
  return {
    positionMin: Math.floor(guests / n),
    positionMax: Math.ceil(guests / n),
    adjacentMeanPerOrderedPair: guests / n,
    positionBalancePossible: guests % n === 0,
    carryoverBalancePossible: guests % williamsSize(n) === 0,
  };
}

/** Rows in the smallest Williams design of n samples: n for even n, 2n for odd n (Williams 1949); one of one. */
export function williamsSize(n: number): number {
  if (!Number.isInteger(n) || n < 1)
    throw new RangeError('A design needs at least one sample, in whole numbers.');
  if (n === 1) return 1;
  return n % 2 === 0 ? n : 2 * n;
}

/** How many orders n samples can be served in. Exact to 18; throws a RangeError beyond or below 0. */
export function orderCount(n: number): number {
  if (!Number.isInteger(n) || n < 0 || n > 18) {
    throw new RangeError('Orders are counted exactly for 0 to 18 samples.');
  }
  let count = 1;
  for (let factor = 2; factor <= n; factor++) count *= factor;
  return count;
}
