/**
 * Agreement beyond chance on categories that exclude each other: 1 is perfect, 0 is what chance gives, below 0 is
 * worse. Undefined when only one category was ever used, for then chance alone agrees always.
 */
export type Kappa =
  | {
      readonly status: 'agreement';
      readonly kappa: number;
      readonly observed: number;
      readonly expected: number;
    }
  | { readonly status: 'one-category'; readonly observed: 1; readonly expected: 1 }
  | { readonly status: 'nothing-to-compare' }
  /** Fleiss's kappa needs the same number of raters for each subject. */
  | { readonly status: 'unequal-raters' }
  | { readonly status: 'impossible-count' };

const areCounts = (rows: readonly (readonly number[])[]): boolean =>
  rows.every((row) => row.every((count) => Number.isSafeInteger(count) && count >= 0));
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

function beyondChance(observed: number, expected: number): Kappa {
  // Equality is decided in whole numbers by the callers' sums, up to the last rounding.
  if (expected >= 1 - 1e-12) return { status: 'one-category', observed: 1, expected: 1 };
  return { status: 'agreement', kappa: (observed - expected) / (1 - expected), observed, expected };
}

/**
 * Fleiss's kappa (Fleiss 1971). Rows are subjects, columns categories, entries the number of raters who chose
 * that category for that subject. Valid for two raters or more, the same number for each subject.
 */
export function fleissKappa(counts: readonly (readonly number[])[]): Kappa {
  if (!areCounts(counts)) return { status: 'impossible-count' };
  const raters = sum(counts[0] ?? []);
  if (counts.some((row) => sum(row) !== raters)) return { status: 'unequal-raters' };
  if (raters < 2) return { status: 'nothing-to-compare' };
  const pairs = counts.length * raters * (raters - 1);
  const observed = sum(counts.flatMap((row) => row.map((count) => count * (count - 1)))) / pairs;
  const width = Math.max(...counts.map((row) => row.length));
  const expected = sum(
    Array.from({ length: width }, (_, category) => {
      const share = sum(counts.map((row) => row[category] ?? 0)) / (counts.length * raters);
      return share * share;
    }),
  );
  return beyondChance(observed, expected);
}
