import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { likingRecap } from '../../../core/panel/recap/liking-recap.ts';
import { oddOneOutRecap } from '../../../core/panel/recap/odd-one-out-recap.ts';
import type { PermittedAnswer } from '../../../core/panel/recap/permitted-answers.ts';
import { rankingRecap } from '../../../core/panel/recap/ranking-recap.ts';
import { wordsRecap } from '../../../core/panel/recap/words-recap.ts';
import { isFiniteThroughout, roughTable } from './panel-arbitraries.ts';

const shared = <T>(answers: readonly T[]): PermittedAnswer<T>[] =>
  answers.map((answer) => ({ consent: 'shared', answer }));
const anonymous = <T>(answers: readonly T[]): PermittedAnswer<T>[] =>
  answers.map((answer) => ({ consent: 'anonymous', answer }));
const times = <T>(count: number, value: T): T[] => Array.from({ length: count }, () => value);

describe('the recap of a ranking', () => {
  const pours = ['ash', 'birch', 'cedar'];

  it('names a clear favourite, best first, with its limits', () => {
    const result = rankingRecap({ pours, answers: shared(times(9, [3, 1, 2])), guests: 9 });
    expect(result).toMatchObject({
      subject: 'ranking',
      outcome: 'result',
      n: 9,
      method: 'friedman-exact',
      meaning: 'clear-favourite',
      limits: ['small-panel'],
      figures: { kendallW: 1, differences: { method: 'rank-sum-lsd' } },
    });
    if (result.outcome !== 'result') expect.fail(result.reason);
    expect(result.figures.places.map(({ pour, place }) => [pour, place])).toEqual([
      ['birch', 1],
      ['cedar', 2],
      ['ash', 3],
    ]);
    expect(result.figures.apart).toContainEqual({ better: 'birch', worse: 'ash' });
  });

  it('lets favourites share when the first is not apart from the second', () => {
    const answers = shared(times(9, [3, 1, 2]));
    expect(rankingRecap({ pours, answers, guests: 9, pairs: 'nemenyi' })).toMatchObject({
      meaning: 'favourites-share',
      figures: { apart: [{ better: 'birch', worse: 'ash' }], differences: { method: 'nemenyi' } },
    });
    const drawn = shared([...times(5, [1, 2, 3]), ...times(5, [2, 1, 3])]);
    expect(rankingRecap({ pours, answers: drawn, guests: 10 })).toMatchObject({
      meaning: 'favourites-share',
      figures: { places: [{ place: 1.5 }, { place: 1.5 }, { pour: 'cedar', place: 3 }] },
    });
  });

  it('says that many pairs were each judged alone', () => {
    const four = ['ash', 'birch', 'cedar', 'elm'];
    const alone = { pours: four, answers: shared(times(9, [1, 2, 3, 4])), guests: 9 };
    expect(rankingRecap(alone).limits).toEqual(['small-panel', 'pairs-not-corrected']);
    expect(rankingRecap({ ...alone, pairs: 'nemenyi' }).limits).toEqual(['small-panel']);
  });

  it('shows no pairs when the room does not agree', () => {
    const answers = shared([
      [1, 2, 3],
      [3, 2, 1],
      [2, 1, 3],
    ]);
    expect(rankingRecap({ pours, answers, guests: 3 })).toMatchObject({
      meaning: 'no-agreement-shown',
      figures: { apart: [] },
      limits: ['small-panel', 'not-shown-is-not-same'],
    });
  });

  it('finds no pair by itself where the whole shows nothing', () => {
    const four = ['ash', 'birch', 'cedar', 'elm'];
    // Rank sums 13, 11, 5, 11: the first and third lie further apart than the least significant difference, 7.16.
    const answers = shared([
      [4, 2, 1, 3],
      [3, 4, 2, 1],
      [2, 3, 1, 4],
      [4, 2, 1, 3],
    ]);
    expect(rankingRecap({ pours: four, answers, guests: 4 })).toMatchObject({
      meaning: 'no-agreement-shown',
      figures: { apart: [], differences: { threshold: expect.closeTo(7.157, 3) } },
    });
  });

  it('says when even one mind would not have been enough', () => {
    const result = rankingRecap({ pours, answers: shared(times(2, [1, 2, 3])), guests: 2 });
    expect(result.limits).toContain('panel-too-small-to-show');
  });

  it('says who is not in it', () => {
    const answers = [
      ...shared<(number | null)[]>([
        [1, 2, 3],
        [1, 2, 3],
        [1, null, 2],
      ]),
      ...anonymous([[3, 2, 1]]),
    ];
    const result = rankingRecap({ pours, answers, guests: 6 });
    expect(result).toMatchObject({
      n: 2,
      limits: expect.arrayContaining(['incomplete-left-out', 'anonymous-left-out', 'not-everyone-shared']),
    });
  });

  it('gives up exactness for a large room, and says so', () => {
    const many = Array.from({ length: 12 }, (_, pour) => `pour ${pour}`);
    const ranks = many.map((_, index) => index + 1);
    const answers = shared([...times(8, ranks), [...ranks].reverse()]);
    expect(rankingRecap({ pours: many, answers, guests: 9 })).toMatchObject({
      method: 'friedman-chi-square',
      limits: ['small-panel', 'pairs-not-corrected', 'approximate-p'],
    });
  });

  it.each([
    ['no-answers', pours, [], 0],
    ['no-answers', [], [[]], 0],
    ['one-guest', pours, [[1, 2, 3]], 1],
    ['one-guest', pours, [[1, 1, 1]], 1],
    ['one-pour', ['ash'], [[1], [1]], 2],
    [
      'all-tied',
      pours,
      [
        [1, 1, 1],
        [2, 2, 2],
      ],
      2,
    ],
  ])('has a plain reason: %s', (reason, names, rows, n) => {
    expect(rankingRecap({ pours: names, answers: shared(rows), guests: 4 })).toMatchObject({
      outcome: 'none',
      reason,
      n,
    });
  });
});

describe('anonymous answers', () => {
  const pours = ['ash', 'birch'];
  const three = shared([
    [1, 2],
    [1, 2],
    [2, 1],
  ]);

  it('count once three can hide each other, and not before', () => {
    const two = rankingRecap({ pours, answers: [...three, ...anonymous(times(2, [1, 2]))], guests: 5 });
    expect(two).toMatchObject({ n: 3, limits: expect.arrayContaining(['anonymous-left-out']) });
    const enough = rankingRecap({ pours, answers: [...three, ...anonymous(times(3, [1, 2]))], guests: 6 });
    expect(enough).toMatchObject({ n: 6 });
    expect(enough.limits).not.toContain('anonymous-left-out');
  });

  it('do not count by their incomplete fellows', () => {
    const answers = [
      ...three,
      ...anonymous<(number | null)[]>([
        [1, 2],
        [1, 2],
        [null, 2],
      ]),
    ];
    expect(rankingRecap({ pours, answers, guests: 6 })).toMatchObject({ n: 3 });
  });

  it('must hide each other for each pour', () => {
    const answers = anonymous<(number | null)[]>([
      [7, 8],
      [6, 3],
      [9, null],
      [5, null],
    ]);
    const result = likingRecap({ pours, answers, guests: 4 });
    expect(result).toMatchObject({
      n: 4,
      figures: {
        pours: [{ liking: { n: 4 } }, { liking: { status: 'no-ratings' } }],
        order: null,
        ratedAll: 0,
      },
      meaning: 'summary-only',
    });
    const words = anonymous<(string[] | null)[]>([
      [['oak'], ['hay']],
      [['oak'], null],
      [['oak'], null],
    ]);
    expect(wordsRecap({ pours, answers: words, guests: 3 })).toMatchObject({
      figures: { pours: [{ words: [{ word: 'oak', guests: 3 }] }, { n: 0, words: [] }] },
    });
  });
});

describe('the recap of liking', () => {
  const pours = ['ash', 'birch'];

  it('sums up each pour and compares them, a high mark first', () => {
    const result = likingRecap({ pours, answers: shared(times(8, [4, 8])), guests: 8 });
    expect(result).toMatchObject({
      n: 8,
      meaning: 'clear-favourite',
      method: 'friedman-exact',
      figures: {
        ratedAll: 8,
        order: { places: [{ pour: 'birch' }, { pour: 'ash' }], apart: [{ better: 'birch' }] },
      },
    });
  });

  it('keeps a guest who missed a pour in the sums, not in the comparison', () => {
    const answers = shared<(number | null)[]>([
      [7, 8],
      [6, 8],
      [9, null],
    ]);
    expect(likingRecap({ pours, answers, guests: 3 })).toMatchObject({
      n: 3,
      figures: { pours: [{ liking: { n: 3 } }, { liking: { n: 2 } }], ratedAll: 2 },
      limits: expect.arrayContaining(['incomplete-left-out']),
    });
  });

  it('needs a rating', () => {
    expect(likingRecap({ pours, answers: shared([[null, 12]]), guests: 3 })).toMatchObject({
      outcome: 'none',
      reason: 'no-answers',
    });
  });
});

describe('the recap of an odd glass', () => {
  // 8 of 12: exactly 3323/177147 by guessing, critical number 8 (printed triangle tables).
  it('says that the room told them apart', () => {
    const answers = shared([...times(8, true), ...times(4, false), null]);
    expect(oddOneOutRecap({ test: 'triangle', answers, guests: 13 })).toMatchObject({
      n: 12,
      meaning: 'room-told-them-apart',
      figures: { correct: 8, critical: 8, expectedByGuessing: 4, p: expect.closeTo(3323 / 177147, 12) },
      limits: ['small-panel', 'incomplete-left-out'],
    });
  });

  it('does not take a miss for sameness, nor a pair for a panel', () => {
    expect(oddOneOutRecap({ test: 'triangle', answers: shared([true, true]), guests: 2 })).toMatchObject({
      meaning: 'no-difference-shown',
      figures: { critical: null },
      limits: ['small-panel', 'not-shown-is-not-same', 'panel-too-small-to-show'],
    });
  });

  it('needs an answer', () => {
    expect(oddOneOutRecap({ test: 'duo-trio', answers: [], guests: 0 })).toEqual({
      subject: 'odd-one-out',
      outcome: 'none',
      n: 0,
      reason: 'no-answers',
      limits: ['small-panel'],
    });
  });
});

describe('every recap', () => {
  it('never gives a figure that is no number', () => {
    const consents = fc.array(fc.constantFrom('shared' as const, 'anonymous' as const), {
      minLength: 8,
      maxLength: 8,
    });
    fc.assert(
      fc.property(roughTable, fc.integer({ min: 0, max: 5 }), consents, (table, width, consent) => {
        const pours = Array.from({ length: width }, (_, index) => index);
        const given = <T>(answers: readonly T[]) =>
          answers.map((answer, index) => ({ consent: consent[index] ?? 'shared', answer }));
        const words = table.map((row) => row.map((value) => (value === null ? null : [`word ${value}`])));
        const picks = table.map((row) => (row[0] == null ? null : row[0] > 4));
        const guests = table.length;
        expect(isFiniteThroughout(rankingRecap({ pours, answers: given(table), guests }))).toBe(true);
        expect(isFiniteThroughout(likingRecap({ pours, answers: given(table), guests }))).toBe(true);
        expect(isFiniteThroughout(wordsRecap({ pours, answers: given(words), guests }))).toBe(true);
        expect(isFiniteThroughout(oddOneOutRecap({ test: 'triangle', answers: given(picks), guests }))).toBe(
          true,
        );
      }),
      { numRuns: 60 },
    );
  });
});
