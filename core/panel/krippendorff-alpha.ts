/**
 * Krippendorff's alpha (Krippendorff 2011, "Computing Krippendorff's alpha-reliability"): agreement beyond chance
 * for any number of observers, with gaps. Valid where kappa is not: guests who missed a pour, scales with an
 * order. Undefined when all values are equal.
 */
export type ReliabilityData =
  | { readonly level: 'nominal'; readonly data: readonly (readonly (number | string | null)[])[] }
  | {
      /** Order only; distances; or distances from a true zero (values of 0 or more). */
      readonly level: 'ordinal' | 'interval' | 'ratio';
      readonly data: readonly (readonly (number | null)[])[];
    };

export type Reliability =
  /** `values`: how many of the answers stand beside at least one other of the same unit. */
  | { readonly status: 'agreement'; readonly alpha: number; readonly values: number; readonly units: number }
  | { readonly status: 'no-variation' }
  /** No unit has two answers. */
  | { readonly status: 'nothing-to-compare' };

type Value = number | string;

/** What cannot stand on the scale counts as a gap, so that no difference is without a value. */
function isPresent(level: ReliabilityData['level'], value: Value | null): value is Value {
  if (typeof value === 'string') return level === 'nominal';
  return value !== null && Number.isFinite(value) && (level !== 'ratio' || value >= 0);
}

function ascending(one: Value, other: Value): number {
  if (typeof one === 'number' && typeof other === 'number') return one - other;
  return String(one) < String(other) ? -1 : 1;
}

/** The squared difference between two categories of different position in the sorted list. */
function squaredDifference(
  level: ReliabilityData['level'],
  categories: readonly Value[],
  totals: readonly number[],
): (c: number, k: number) => number {
  const value = (index: number) => Number(categories[index]);
  switch (level) {
    case 'nominal':
      return () => 1;
    case 'ordinal':
      return (c, k) => {
        const [low, high] = c < k ? [c, k] : [k, c];
        const between = totals.slice(low, high + 1).reduce((sum, total) => sum + total, 0);
        return (between - ((totals[c] ?? 0) + (totals[k] ?? 0)) / 2) ** 2;
      };
    case 'interval':
      return (c, k) => (value(c) - value(k)) ** 2;
    case 'ratio':
      return (c, k) => ((value(c) - value(k)) / (value(c) + value(k))) ** 2;
    default:
      return level satisfies never;
  }
}

/** Rows are observers, columns units (a pour, or a pour and a word); null is a gap. */
export function krippendorffAlpha({ level, data }: ReliabilityData): Reliability {
  const unitCount = data.reduce((most, row) => Math.max(most, row.length), 0);
  const units = Array.from({ length: unitCount }, (_, unit) =>
    data.map((row): Value | null => row[unit] ?? null).filter((value) => isPresent(level, value)),
  ).filter((values) => values.length >= 2);
  if (units.length === 0) return { status: 'nothing-to-compare' };

  const categories = [...new Set(units.flat())].sort(ascending);
  if (categories.length === 1) return { status: 'no-variation' };
  const position = new Map(categories.map((category, index) => [category, index]));
  const tallies = units.map((values) => {
    const tally = categories.map(() => 0);
    for (const value of values) {
      const index = position.get(value) ?? 0;
      tally[index] = (tally[index] ?? 0) + 1;
    }
    return { tally, size: values.length };
  });
  const totals = categories.map((_, c) => tallies.reduce((sum, { tally }) => sum + (tally[c] ?? 0), 0));
  const n = totals.reduce((sum, total) => sum + total, 0);
  const delta = squaredDifference(level, categories, totals);

  let seen = 0;
  let byChance = 0;
  categories.forEach((_, c) => {
    for (let k = 0; k < c; k += 1) {
      const together = tallies.reduce(
        (sum, { tally, size }) => sum + ((tally[c] ?? 0) * (tally[k] ?? 0)) / (size - 1),
        0,
      );
      seen += together * delta(c, k);
      byChance += (totals[c] ?? 0) * (totals[k] ?? 0) * delta(c, k);
    }
  });
  return { status: 'agreement', alpha: 1 - ((n - 1) * seen) / byChance, values: n, units: units.length };
}
