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

/** Rows in the smallest Williams design of n samples: n for even n, 2n for odd n (Williams 1949); one of one. */
export function williamsSize(n: number): number {
  if (!Number.isInteger(n) || n < 1)
    throw new RangeError('A design needs at least one sample, in whole numbers.');
  if (n === 1) return 1;
  return n % 2 === 0 ? n : 2 * n;
}
