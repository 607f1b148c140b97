import fc from 'fast-check';

/** Whole marks from 1 to `most`, so that ties are common. */
export const panelOf = (judges: number, samples: number, most = 4): fc.Arbitrary<number[][]> =>
  fc.tuple(fc.integer({ min: 1, max: judges }), fc.integer({ min: 2, max: samples })).chain(([n, k]) =>
    fc.array(fc.array(fc.integer({ min: 1, max: most }), { minLength: k, maxLength: k }), {
      minLength: n,
      maxLength: n,
    }),
  );

/** Anything that a table of answers could be by accident: gaps, ragged rows, no rows, values that are no numbers. */
export const roughTable: fc.Arbitrary<(number | null)[][]> = fc.array(
  fc.array(
    fc.oneof(
      { weight: 6, arbitrary: fc.integer({ min: 0, max: 9 }) },
      { weight: 1, arbitrary: fc.constantFrom(null, Number.NaN, Number.POSITIVE_INFINITY, -1, 0.5) },
    ),
    { maxLength: 5 },
  ),
  { maxLength: 7 },
);

/** True when no number anywhere in the value is NaN or infinite. */
export function isFiniteThroughout(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value === 'object' && value !== null) return Object.values(value).every(isFiniteThroughout);
  return value !== undefined;
}

/** All orders of the values, equal ones included: k! of them. */
function permutations<T>(values: readonly T[]): T[][] {
  if (values.length === 0) return [[]];
  return values.flatMap((value, index) =>
    permutations([...values.slice(0, index), ...values.slice(index + 1)]).map((rest) => [value, ...rest]),
  );
}

/** Every way to arrange each row by itself: the full enumeration that the exact tests are held against. */
export function arrangedTables(rows: readonly (readonly number[])[]): number[][][] {
  return rows.reduce<number[][][]>(
    (tables, row) => tables.flatMap((table) => permutations(row).map((arranged) => [...table, arranged])),
    [[]],
  );
}

/** The order of columns as a list of positions. */
export const columnOrder = (columns: number): fc.Arbitrary<number[]> =>
  fc.shuffledSubarray(
    Array.from({ length: columns }, (_, index) => index),
    { minLength: columns, maxLength: columns },
  );

export const reordered = <T>(values: readonly T[], order: readonly number[]): T[] =>
  order.flatMap((index) => values.slice(index, index + 1));
