import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fleissKappa } from '../../../core/panel/kappa.ts';
import { krippendorffAlpha } from '../../../core/panel/krippendorff-alpha.ts';
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

describe('overlap of words', () => {
  it('leaves out a pair without any word, and counts a word once', () => {
    expect(meanJaccard([[], [], ['oak', 'oak']])).toEqual({ status: 'overlap', meanJaccard: 0, pairs: 2 });
    expect(meanJaccard([[], []]).status).toBe('nothing-to-compare');
    expect(meanJaccard([['oak']]).status).toBe('nothing-to-compare');
  });
});
