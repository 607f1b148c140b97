/**
 * A table of answers: one row per judge (a guest), one column per sample (a pour); null, or a value that is no
 * finite number, is a missing answer.
 */
export type Scores = readonly (readonly (number | null)[])[];

/** Ranks from 1 for the smallest; equal values share the mean of the places they cover. */
export function midRanks(values: readonly number[]): number[] {
  return values.map((value) => {
    let below = 0;
    let equal = 0;
    for (const other of values) {
      if (other < value) below += 1;
      else if (other === value) equal += 1;
    }
    return below + (equal + 1) / 2;
  });
}

/** Sum of t³ - t over the groups of t equal values: what ties take from the spread of ranks. */
export function tieTerm(values: readonly number[]): number {
  const groups = new Map<number, number>();
  for (const value of values) groups.set(value, (groups.get(value) ?? 0) + 1);
  let sum = 0;
  for (const size of groups.values()) sum += size ** 3 - size;
  return sum;
}

export interface CompleteJudges {
  /** Rows without a gap, all `sampleCount` long. */
  readonly rows: number[][];
  readonly sampleCount: number;
  /** Positions in the table of the judges left out because an answer is missing. */
  readonly droppedJudges: number[];
}

/**
 * Listwise deletion: a judge who missed a sample cannot be ranked beside the others. The longest row says how
 * many samples there are, so a short row is one with gaps.
 */
export function completeJudges(scores: Scores): CompleteJudges {
  const sampleCount = scores.reduce((most, row) => Math.max(most, row.length), 0);
  const rows: number[][] = [];
  const droppedJudges: number[] = [];
  scores.forEach((row, judge) => {
    const present = row.filter((value): value is number => value !== null && Number.isFinite(value));
    if (present.length === sampleCount && sampleCount > 0) rows.push(present);
    else droppedJudges.push(judge);
  });
  return { rows, sampleCount, droppedJudges };
}

/** Sums down the columns of rows of equal length. */
export function columnSums(rows: readonly (readonly number[])[]): number[] {
  const sums: number[] = Array.from({ length: rows[0]?.length ?? 0 }, () => 0);
  for (const row of rows) {
    row.forEach((value, column) => {
      sums[column] = (sums[column] ?? 0) + value;
    });
  }
  return sums;
}
