import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cochranQ } from '../../../core/panel/cochran-q.ts';
import { holmAdjusted } from '../../../core/panel/holm.ts';
import { arrangedTables, panelOf } from './panel-arbitraries.ts';

const ticksOf = (judges: number, samples: number) =>
  panelOf(judges, samples, 2).map((rows) => rows.map((row) => row.map((mark) => mark - 1)));

describe("Cochran's Q", () => {
  it('has the exact p of full enumeration on tiny panels', () => {
    fc.assert(
      fc.property(ticksOf(4, 3), (rows) => {
        const test = cochranQ(rows);
        if (test.status !== 'tested') return true;
        const spread = (table: number[][]) =>
          (table[0] ?? [])
            .map((_, column) => table.reduce((sum, row) => sum + (row[column] ?? 0), 0))
            .reduce((sum, count) => sum + count * count, 0);
        const tables = arrangedTables(rows);
        const share = tables.filter((table) => spread(table) >= spread(rows)).length / tables.length;
        return Math.abs((test.pExact ?? -1) - share) < 1e-9;
      }),
      { numRuns: 60 },
    );
  });

  it('is not moved by judges who ticked all or nothing', () => {
    fc.assert(
      fc.property(ticksOf(5, 4), (rows) => {
        const before = cochranQ(rows);
        const width = rows[0]?.length ?? 0;
        const after = cochranQ([...rows, Array(width).fill(1), Array(width).fill(0)]);
        if (before.status !== 'tested' || after.status !== 'tested') return before.status === after.status;
        expect(after.informative).toBe(before.informative);
        return (
          Math.abs(after.q - before.q) < 1e-9 && Math.abs((after.pExact ?? 0) - (before.pExact ?? 1)) < 1e-9
        );
      }),
    );
  });

  it.each([
    ['nobody', [], 'no-judges'],
    ['one pour', [[1], [0]], 'one-sample'],
    [
      'nobody ticked',
      [
        [0, 0],
        [0, 0],
      ],
      'no-variation',
    ],
    [
      'all or nothing',
      [
        [1, 1],
        [0, 0],
      ],
      'no-variation',
    ],
  ])('has a plain outcome for %s', (_name, table, status) => {
    expect(cochranQ(table).status).toBe(status);
  });
});

describe("Holm's adjustment", () => {
  // Worked by hand from the definition: 0.01 × 4, 0.02 × 3, then never falling again.
  it('multiplies the smallest by all, the next by one fewer, and never falls', () => {
    const adjusted = holmAdjusted([0.04, 0.01, 0.03, 0.02]);
    expect(adjusted).toEqual([0.06, 0.04, 0.06, 0.06].map((p) => expect.closeTo(p, 12)));
    expect(holmAdjusted([0.9, 0.8])).toEqual([1, 1]);
    expect(holmAdjusted([])).toEqual([]);
  });
});
