/**
 * The exact null distribution behind Friedman's and Cochran's tests: if the judges see no difference, every
 * arrangement of a judge's own values over the samples is equally likely, ties and all. Both statistics rise
 * with the spread of the column sums, so that spread is all that has to be counted.
 *
 * Full enumeration would visit the product of all arrangements. Because each row's arrangements are closed under
 * exchanging columns, only the sorted column sums matter: rows are folded in one by one over those, which turns
 * 24^9 cases for nine judges and four samples into some thousands of states.
 */
export interface SpreadAtom {
  /** k Σ sum² - (Σ sum)², in squared units of the reduced rows: a whole number, 0 when all columns are level. */
  readonly spread: number;
  readonly probability: number;
}

/** How many arrangements may be visited before the reckoning is given up: some tenths of a second. */
export const EXACT_BUDGET = 3_000_000;
/** Eight samples in a row without ties: the longest list of arrangements that is worth writing out. */
const MOST_ARRANGEMENTS = 40_320;

const greatestCommonDivisor = (a: number, b: number): number =>
  b === 0 ? a : greatestCommonDivisor(b, a % b);

/** Every row starts at 0 and steps are as small as can be; the order of spreads does not change by that. */
function reduceRows(rows: readonly (readonly number[])[]): number[][] {
  const shifted = rows.map((row) => row.map((value) => value - Math.min(...row)));
  const divisor = shifted.flat().reduce(greatestCommonDivisor, 0) || 1;
  return shifted.map((row) => row.map((value) => value / divisor));
}

export function arrangementCount(row: readonly number[]): number {
  const groups = new Map<number, number>();
  let count = 1;
  row.forEach((value, index) => {
    const size = (groups.get(value) ?? 0) + 1;
    groups.set(value, size);
    count = (count * (index + 1)) / size;
  });
  return Math.round(count);
}

function arrangements(row: readonly number[]): number[][] {
  if (row.length === 0) return [[]];
  return [...new Set(row)].flatMap((first) => {
    const rest = [...row];
    rest.splice(rest.indexOf(first), 1);
    return arrangements(rest).map((tail) => [first, ...tail]);
  });
}

/** Sorts in place; short and nearly sorted arrays are what insertion is best at. */
function insertionSort(values: number[]): void {
  for (let i = 1; i < values.length; i += 1) {
    const value = values[i] ?? 0;
    let j = i - 1;
    for (; j >= 0 && (values[j] ?? 0) > value; j -= 1) values[j + 1] = values[j] ?? 0;
    values[j + 1] = value;
  }
}

/** Sorted sums as one number: digits in a base above any sum, without the last, which the total gives back. */
interface Packing {
  readonly base: number;
  readonly columns: number;
}

function pack(sorted: readonly number[], { base, columns }: Packing): number {
  let key = 0;
  for (let i = 0; i < columns - 1; i += 1) key = key * base + (sorted[i] ?? 0);
  return key;
}

function unpack(key: number, total: number, { base, columns }: Packing, into: number[]): void {
  let rest = key;
  let last = total;
  for (let i = columns - 2; i >= 0; i -= 1) {
    const higher = Math.floor(rest / base);
    into[i] = rest - higher * base;
    last -= into[i] ?? 0;
    rest = higher;
  }
  into[columns - 1] = last;
}

const totalOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

function spreadOf(sums: readonly number[]): number {
  const total = totalOf(sums);
  return sums.length * sums.reduce((sum, value) => sum + value * value, 0) - total * total;
}

/** The rows folded together, or 'too-large' when that would visit more than `budget` arrangements. */
function foldRows(rows: readonly (readonly number[])[], budget: number): SpreadAtom[] | 'too-large' {
  // Rows with few arrangements come last, where the states are most.
  const ordered = [...rows].sort((one, other) => arrangementCount(other) - arrangementCount(one));
  const columns = ordered[0]?.length ?? 0;
  const packing = { base: totalOf(ordered.map((row) => Math.max(...row))) + 1, columns };
  if (packing.base ** (columns - 1) > Number.MAX_SAFE_INTEGER) return 'too-large';
  // The first row's arrangements all sort to the same sums and need no list.
  if (arrangementCount(ordered[1] ?? []) > MOST_ARRANGEMENTS) return 'too-large';
  const start = [...(ordered[0] ?? [])].sort((a, b) => a - b);
  let states = new Map<number, number>([[pack(start, packing), 1]]);
  let total = totalOf(start);
  let visits = 0;
  const sums: number[] = [...start];
  const next: number[] = [...start];
  for (const row of ordered.slice(1)) {
    visits += states.size * arrangementCount(row);
    if (visits > budget) return 'too-large';
    const placements = arrangements(row);
    const grown = new Map<number, number>();
    for (const [key, probability] of states) {
      unpack(key, total, packing, sums);
      const share = probability / placements.length;
      for (const placement of placements) {
        for (let i = 0; i < columns; i += 1) next[i] = (sums[i] ?? 0) + (placement[i] ?? 0);
        insertionSort(next);
        const target = pack(next, packing);
        grown.set(target, (grown.get(target) ?? 0) + share);
      }
    }
    states = grown;
    total += totalOf(row);
  }
  const atoms = new Map<number, number>();
  for (const [key, probability] of states) {
    unpack(key, total, packing, sums);
    const spread = spreadOf(sums);
    atoms.set(spread, (atoms.get(spread) ?? 0) + probability);
  }
  return [...atoms]
    .map(([spread, probability]) => ({ spread, probability }))
    .sort((one, other) => one.spread - other.spread);
}

/**
 * The distribution of the spread of column sums for whole-numbered rows of equal length, smallest spread first;
 * 'too-large' when it would cost more than `budget` visits.
 */
export function spreadDistribution(
  rows: readonly (readonly number[])[],
  budget: number = EXACT_BUDGET,
): SpreadAtom[] | 'too-large' {
  return rows.length === 0 ? [] : foldRows(reduceRows(rows), budget);
}

/** P(spread of column sums >= the one seen) under arrangements within rows; null when that is too large. */
export function exactSpreadTail(
  rows: readonly (readonly number[])[],
  budget: number = EXACT_BUDGET,
): number | null {
  const atoms = spreadDistribution(rows, budget);
  if (atoms === 'too-large') return null;
  const reduced = reduceRows(rows);
  const columns = reduced[0] ?? [];
  const seen = spreadOf(columns.map((_, column) => totalOf(reduced.map((row) => row[column] ?? 0))));
  const tail = atoms.reduce((sum, atom) => (atom.spread >= seen ? sum + atom.probability : sum), 0);
  return Math.min(1, tail);
}
