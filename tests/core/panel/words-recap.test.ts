import { describe, expect, it } from 'vitest';
import type { PermittedAnswer } from '../../../core/panel/recap/permitted-answers.ts';
import { wordsRecap } from '../../../core/panel/recap/words-recap.ts';

const shared = <T>(answers: readonly T[]): PermittedAnswer<T>[] =>
  answers.map((answer) => ({ consent: 'shared', answer }));
const times = <T>(count: number, value: T): T[] => Array.from({ length: count }, () => value);

describe('the recap of words', () => {
  const pours = ['ash', 'birch', 'cedar'];

  it('finds the word that tells pours apart, and raises p for every word tested', () => {
    const answers = shared([
      ...times(7, [['smoke', 'pear'], ['pear'], []]),
      [['smoke'], ['pear'], ['hay']],
      [['smoke'], [], ['pear']],
    ]);
    const result = wordsRecap({ pours, answers, guests: 9 });
    if (result.outcome !== 'result') expect.fail(result.reason);
    expect(result).toMatchObject({
      method: 'cochran-q-holm',
      meaning: 'words-tell-pours-apart',
      limits: ['small-panel', 'many-words-tested'],
    });
    const [first, second] = result.figures.tests;
    // All nine put the one tick on the same pour: 3 of 3^9 arrangements are as far apart.
    expect(first).toMatchObject({
      word: 'smoke',
      ticks: [9, 0, 0],
      exact: true,
      p: expect.closeTo(3 / 3 ** 9, 12),
    });
    expect(first?.adjustedP).toBeCloseTo(6 / 3 ** 9, 12);
    expect(second).toMatchObject({ word: 'pear' });
    expect(result.figures.tests).toHaveLength(2);
    expect(result.figures.pours[0]).toMatchObject({
      n: 9,
      words: [
        { word: 'smoke', guests: 9 },
        { word: 'pear', guests: 7 },
      ],
    });
    expect(result.figures.agreement?.method).toBe('fleiss-kappa');
  });

  it('turns to the coefficient that bears gaps when a note is missing', () => {
    const answers = shared<(string[] | null)[]>([
      [['oak'], ['hay'], ['oak']],
      [['oak'], ['hay'], null],
      [['oak'], [], ['oak']],
    ]);
    const result = wordsRecap({ pours, answers, guests: 3 });
    expect(result).toMatchObject({ n: 3, figures: { agreement: { method: 'krippendorff-alpha' } } });
    expect(result.limits).toContain('incomplete-left-out');
  });

  it('counts a guest once, however often a word was tapped', () => {
    const answers = shared([[['oak', 'oak']], [['oak']]]);
    expect(wordsRecap({ pours: ['ash'], answers, guests: 2 })).toMatchObject({
      figures: { pours: [{ words: [{ word: 'oak', guests: 2 }] }] },
    });
  });

  it('only counts where there is nothing to test', () => {
    const one = wordsRecap({ pours: ['ash'], answers: shared([[['oak']], [['oak']]]), guests: 2 });
    expect(one).toMatchObject({ method: 'counts-only', figures: { tests: [], pours: [{ overlap: 1 }] } });
    const silent = wordsRecap({ pours, answers: shared(times(3, [[], [], []])), guests: 3 });
    expect(silent).toMatchObject({
      method: 'counts-only',
      figures: { agreement: null, pours: [{ overlap: null }, {}, {}] },
    });
    expect(wordsRecap({ pours, answers: shared([[null, null, null]]), guests: 3 })).toMatchObject({
      outcome: 'none',
    });
  });
});
