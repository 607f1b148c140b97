import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { columnSums, midRanks, tieTerm } from '../../../core/panel/mid-ranks.ts';
import { figuresOfRankSums, friedmanTest } from '../../../core/panel/ranking.ts';
import {
  nemenyiDifference,
  rankingDifferences,
  rankSumLsd,
} from '../../../core/panel/ranking-differences.ts';
import { compareOrders } from '../../../core/panel/recap/order-comparison.ts';
import { arrangementCount, exactSpreadTail } from '../../../core/panel/row-permutations.ts';
import { friedmanCritical, friedmanExactP } from '../../outside/friedman-tables.ts';
import {
  arrangedTables,
  columnOrder,
  isFiniteThroughout,
  panelOf,
  reordered,
  roughTable,
} from './panel-arbitraries.ts';

const close = (one: number | null, other: number | null) =>
  one === null || other === null ? one === other : Math.abs(one - other) < 1e-9;

describe('mid-ranks', () => {
  it('gives equal values the mean of their places', () => {
    expect(midRanks([30, 10, 10, 20])).toEqual([4, 1.5, 1.5, 3]);
    expect(tieTerm([30, 10, 10, 20])).toBe(6);
  });

  it('always shares out the same sum', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 5 })), (values) => {
        const sum = midRanks(values).reduce((total, rank) => total + rank, 0);
        return sum === (values.length * (values.length + 1)) / 2;
      }),
    );
  });
});

describe('the exact distribution', () => {
  it('counts arrangements of equal values once', () => {
    expect(arrangementCount([1, 1, 2, 2])).toBe(6);
    expect(arrangementCount([3, 1, 2])).toBe(6);
    expect(arrangementCount([5, 5, 5])).toBe(1);
  });

  it('equals full enumeration on tiny panels, ties and all', () => {
    fc.assert(
      fc.property(panelOf(3, 4), (rows) => {
        const test = friedmanTest(rows);
        if (test.status !== 'tested') return true;
        const statistics = arrangedTables(rows).map((table) => {
          const sums = columnSums(table.map(midRanks));
          return sums.reduce((sum, each) => sum + each * each, 0);
        });
        const seen = test.rankSums.reduce((sum, each) => sum + each * each, 0);
        const share = statistics.filter((value) => value >= seen).length / statistics.length;
        return close(test.pExact, share);
      }),
      { numRuns: 40 },
    );
  });

  it('gives up, and says so, beyond its budget', () => {
    const rows = Array.from({ length: 6 }, () => [1, 2, 3, 4, 5]);
    expect(exactSpreadTail(rows, 1000)).toBeNull();
    const wide = Array.from({ length: 9 }, (_, judge) =>
      Array.from({ length: 12 }, (__, pour) => (pour * judge) % 7),
    );
    const test = friedmanTest(wide);
    expect(test).toMatchObject({ status: 'tested', pExact: null });
    expect(friedmanCritical({ k: 12, n: 9, alpha: 0.05 })).toEqual({ status: 'too-large' });
    expect(friedmanExactP({ k: 12, n: 9, chi2: 20 })).toBeNull();
  });
});

describe("Friedman's test", () => {
  it('does not care in which order pours or judges stand', () => {
    const relabelled = panelOf(6, 5).chain((rows) =>
      fc.tuple(fc.constant(rows), columnOrder(rows[0]?.length ?? 0), columnOrder(rows.length)),
    );
    fc.assert(
      fc.property(relabelled, ([rows, columns, judges]) => {
        const before = friedmanTest(rows);
        const after = friedmanTest(reordered(rows, judges).map((row) => reordered(row, columns)));
        if (before.status !== 'tested' || after.status !== 'tested') return before.status === after.status;
        expect(after.rankSums).toEqual(reordered(before.rankSums, columns));
        return (
          close(before.chi2, after.chi2) &&
          close(before.pExact, after.pExact) &&
          close(before.pChiSquare, after.pChiSquare) &&
          close(before.kendallW, after.kendallW)
        );
      }),
    );
  });

  it('keeps chances and W between 0 and 1 and never gives a figure that is no number', () => {
    fc.assert(
      fc.property(roughTable, (table) => {
        const test = friedmanTest(table);
        expect(isFiniteThroughout(test)).toBe(true);
        if (test.status !== 'tested') return;
        for (const share of [test.pChiSquare, test.pExact ?? 0, test.kendallW, test.imanDavenport?.p ?? 0]) {
          expect(share).toBeGreaterThanOrEqual(0);
          expect(share).toBeLessThanOrEqual(1);
        }
      }),
      { numRuns: 400 },
    );
  });

  it.each([
    ['nobody', [], { status: 'no-judges' }],
    ['rows without entries', [[], []], { status: 'no-judges', droppedJudges: [0, 1] }],
    [
      'gaps everywhere',
      [
        [null, 1],
        [2, null],
      ],
      { status: 'no-judges', droppedJudges: [0, 1] },
    ],
    ['one pour', [[1], [2]], { status: 'one-sample', n: 2 }],
    [
      'all ties',
      [
        [2, 2],
        [5, 5],
      ],
      { status: 'all-tied', n: 2, k: 2, rankSums: [3, 3] },
    ],
    ['one judge', [[1, 2, 3]], { status: 'one-judge', n: 1, kendallW: 1, imanDavenport: null }],
    [
      'a short row',
      [
        [1, 2, 3],
        [1, 2],
        [3, 1, 2],
      ],
      { status: 'tested', n: 2, droppedJudges: [1] },
    ],
    [
      'no number',
      [
        [1, 2],
        [Number.NaN, 1],
        [1, 2],
      ],
      { status: 'tested', n: 2, droppedJudges: [1] },
    ],
  ])('has a plain outcome for %s', (_name, table, outcome) => {
    expect(friedmanTest(table)).toMatchObject(outcome);
  });

  it('has no F without a bound when all are of one mind', () => {
    expect(
      friedmanTest([
        [1, 2, 3],
        [1, 2, 3],
        [1, 2, 3],
      ]),
    ).toMatchObject({ kendallW: 1, imanDavenport: null });
    expect(figuresOfRankSums([3, 6, 9], 3).imanDavenport).toBeNull();
    expect(() => figuresOfRankSums([3], 3)).toThrow(RangeError);
    expect(() => friedmanCritical({ k: 1, n: 3, alpha: 0.05 })).toThrow(RangeError);
  });

  it('reads a printed value as the attainable one that it rounds', () => {
    const precise = friedmanExactP({ k: 5, n: 7, chi2: 9.142_857_142_857 });
    expect(friedmanExactP({ k: 5, n: 7, chi2: 9.14 })).toBe(precise);
    expect(friedmanExactP({ k: 5, n: 7, chi2: 9.143 })).toBe(precise);
  });
});

describe('the order of the room', () => {
  it('turns about when a high mark is the good one', () => {
    const marks = [
      [9, 5, 1],
      [8, 8, 2],
    ];
    const order = (better: 'lower' | 'higher') => {
      const compared = compareOrders(marks, ['a', 'b', 'c'], { better });
      return compared.status === 'compared' ? compared.figures.places.map(({ pour }) => pour) : compared;
    };
    expect(order('higher')).toEqual(['a', 'b', 'c']);
    expect(order('lower')).toEqual(['c', 'b', 'a']);
    expect(compareOrders([], [], { better: 'lower' })).toEqual({ status: 'none', reason: 'no-answers' });
  });
});

describe('pairs of pours', () => {
  it('holds more pairs together when all pairs are judged at once', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 3, max: 12 }), (n, k) => {
        const panel = { n, k, alpha: 0.05 };
        return nemenyiDifference(panel).onRankSums > rankSumLsd(panel);
      }),
      { numRuns: 15 },
    );
  });

  it('is one and the same yardstick for two pours', () => {
    const panel = { n: 9, k: 2, alpha: 0.05 };
    expect(nemenyiDifference(panel).onRankSums).toBeCloseTo(rankSumLsd(panel), 8);
  });

  it('names pairs by column, the smaller first', () => {
    const found = rankingDifferences([20, 9, 9], 9, { method: 'nemenyi', alpha: 0.05 });
    expect(found.apart).toEqual([
      [0, 1],
      [0, 2],
    ]);
  });

  it('refuses a panel that is none', () => {
    expect(() => rankSumLsd({ n: 0, k: 3, alpha: 0.05 })).toThrow(RangeError);
    expect(() => nemenyiDifference({ n: 5, k: 1, alpha: 0.05 })).toThrow(RangeError);
  });
});
