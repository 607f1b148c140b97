import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cohenKappa, fleissKappa } from '../../../core/panel/kappa.ts';
import { krippendorffAlpha } from '../../../core/panel/krippendorff-alpha.ts';
import { rankCorrelation } from '../../../core/panel/rank-correlation.ts';
import {
  intraclassCorrelations,
  twoWayAnalysis,
  varianceRatios,
} from '../../../core/panel/two-way-analysis.ts';
import { meanJaccard } from '../../../core/panel/word-overlap.ts';
import { isFiniteThroughout, roughTable } from './panel-arbitraries.ts';

describe('kappa', () => {
  it.each([
    ['nothing at all', [], 'nothing-to-compare'],
    [
      'one rater',
      [
        [1, 0],
        [0, 1],
      ],
      'nothing-to-compare',
    ],
    [
      'unequal raters',
      [
        [2, 1],
        [1, 1],
      ],
      'unequal-raters',
    ],
    [
      'one category',
      [
        [4, 0],
        [4, 0],
      ],
      'one-category',
    ],
    [
      'less than nobody',
      [
        [3, -1],
        [1, 1],
      ],
      'impossible-count',
    ],
    ['no number', [[Number.NaN, 1]], 'impossible-count'],
  ])("Fleiss's has a plain outcome for %s", (_name, counts, status) => {
    expect(fleissKappa(counts).status).toBe(status);
  });

  it.each([
    ['nothing at all', [], 'nothing-to-compare'],
    [
      'an empty table',
      [
        [0, 0],
        [0, 0],
      ],
      'nothing-to-compare',
    ],
    ['a table that is not square', [[1, 2]], 'impossible-count'],
    [
      'one category',
      [
        [5, 0],
        [0, 0],
      ],
      'one-category',
    ],
  ])("Cohen's has a plain outcome for %s", (_name, table, status) => {
    expect(cohenKappa(table).status).toBe(status);
  });

  it('is 1 when two raters never differ', () => {
    expect(
      cohenKappa([
        [3, 0],
        [0, 4],
      ]),
    ).toMatchObject({ kappa: 1, observed: 1 });
  });
});

describe("Krippendorff's alpha", () => {
  it('is 1 when nobody differs, whatever the scale', () => {
    for (const level of ['nominal', 'ordinal', 'interval', 'ratio'] as const) {
      expect(
        krippendorffAlpha({
          level,
          data: [
            [1, 2, 5, null],
            [1, 2, 5, 4],
          ],
        }),
      ).toMatchObject({ alpha: 1, units: 3 });
    }
  });

  // By hand: the only pair there is, is also all that chance can draw from.
  it('is 0 for a single unit on which two differ', () => {
    expect(krippendorffAlpha({ level: 'ratio', data: [[1], [3]] })).toMatchObject({ alpha: 0 });
  });

  it('cannot be reckoned without two answers on a unit, or without variation', () => {
    expect(krippendorffAlpha({ level: 'nominal', data: [] }).status).toBe('nothing-to-compare');
    expect(
      krippendorffAlpha({
        level: 'nominal',
        data: [
          ['a', null],
          [null, 'b'],
        ],
      }).status,
    ).toBe('nothing-to-compare');
    expect(
      krippendorffAlpha({
        level: 'ordinal',
        data: [
          [2, 2],
          [2, 2],
        ],
      }).status,
    ).toBe('no-variation');
  });

  it('never gives a figure that is no number', () => {
    const levels = fc.constantFrom(
      'nominal' as const,
      'ordinal' as const,
      'interval' as const,
      'ratio' as const,
    );
    fc.assert(
      fc.property(levels, roughTable, (level, data) =>
        isFiniteThroughout(krippendorffAlpha({ level, data })),
      ),
    );
  });
});

describe('the two-way table', () => {
  it('is never anything but numbers, or says why', () => {
    fc.assert(
      fc.property(roughTable, (scores) => {
        const table = twoWayAnalysis(scores);
        if (table.status !== 'analysed') return;
        expect(isFiniteThroughout(varianceRatios(table))).toBe(true);
        expect(isFiniteThroughout(intraclassCorrelations(table))).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  it('names what cannot be reckoned', () => {
    expect(twoWayAnalysis([]).status).toBe('too-few');
    expect(twoWayAnalysis([[1, 2, 3]]).status).toBe('too-few');
    expect(twoWayAnalysis([[1], [2]]).status).toBe('too-few');
    expect(
      twoWayAnalysis([
        [4, 4],
        [4, 4],
      ]).status,
    ).toBe('no-variation');
  });

  it('leaves out a judge who missed a drink', () => {
    const gap = twoWayAnalysis([
      [1, 2, 3],
      [2, null, 5],
      [4, 4, 4],
    ]);
    expect(gap).toEqual(
      twoWayAnalysis([
        [1, 3],
        [2, 5],
        [4, 4],
      ]),
    );
  });

  it('has an F without bound, not infinity, when nothing is left over', () => {
    const table = twoWayAnalysis([
      [0.1, 1.1],
      [0.2, 1.2],
      [0.3, 1.3],
    ]);
    if (table.status !== 'analysed') expect.fail(table.status);
    expect(varianceRatios(table)).toMatchObject({ samples: { f: null, p: 0 }, judges: { f: null, p: 0 } });
    expect(intraclassCorrelations(table).icc31).toBeCloseTo(1, 9);
  });

  it('has no intraclass correlation where it is nothing divided by nothing', () => {
    const table = twoWayAnalysis([
      [1, 5],
      [5, 1],
    ]);
    if (table.status !== 'analysed') expect.fail(table.status);
    expect(intraclassCorrelations(table)).toMatchObject({ icc21: null, icc1k: null, icc3k: null });
  });
});

describe('rank correlation', () => {
  it('lies between -1 and 1 and turns its sign with the order', () => {
    const pairs = fc.array(fc.tuple(fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 6 })), {
      maxLength: 9,
    });
    fc.assert(
      fc.property(pairs, (list) => {
        const x = list.map(([one]) => one);
        const y = list.map(([, other]) => other);
        const found = rankCorrelation(x, y);
        const turned = rankCorrelation(
          x,
          y.map((value) => -value),
        );
        if (found.status !== 'correlated' || turned.status !== 'correlated')
          return found.status === turned.status;
        return (
          Math.abs(found.spearman) <= 1 + 1e-12 &&
          Math.abs(found.kendallTauB) <= 1 + 1e-12 &&
          Math.abs(found.spearman + turned.spearman) < 1e-12 &&
          Math.abs(found.kendallTauB + turned.kendallTauB) < 1e-12
        );
      }),
    );
  });

  it('leaves out a pair with a gap', () => {
    expect(rankCorrelation([1, 2, null, 3], [1, 2, 3])).toEqual({
      status: 'correlated',
      n: 2,
      spearman: 1,
      kendallTauB: 1,
      discordantPairs: 0,
    });
    expect(rankCorrelation([1], [1])).toEqual({ status: 'too-few', n: 1 });
  });
});

describe('overlap of words', () => {
  it('leaves out a pair without any word, and counts a word once', () => {
    expect(meanJaccard([[], [], ['oak', 'oak']])).toEqual({ status: 'overlap', meanJaccard: 0, pairs: 2 });
    expect(meanJaccard([[], []]).status).toBe('nothing-to-compare');
    expect(meanJaccard([['oak']]).status).toBe('nothing-to-compare');
  });
});
