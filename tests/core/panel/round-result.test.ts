import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pourId } from '../../../core/ids.ts';
import {
  type RoundAnswer,
  type RoundResult,
  roundResult,
  type Told,
} from '../../../core/panel/round-result.ts';
import { ash, birch, cedar } from '../../support/evening.ts';

const pours = [ash, birch, cedar];
const counts = (...values: readonly (number | null)[]): RoundAnswer => ({
  values,
  counts: values.map(() => true),
});
const keeps = (...values: readonly (number | null)[]): RoundAnswer => ({
  values,
  counts: values.map(() => false),
});
const told = (of: Told, answers: readonly RoundAnswer[], about = pours) => {
  const result = roundResult({ of, pours: about, answers });
  if (result.outcome === 'too-few') throw new Error('Too few count.');
  return result;
};

describe('[R2] the result of a round', () => {
  it('needs three who let it count, and says nothing of one or two', () => {
    const two = [counts(1, 2, 3), counts(1, 2, 3), keeps(3, 2, 1), keeps(2, 1, 3)];
    for (const of of ['order', 'liking'] as const) {
      const kept = roundResult({ of, pours, answers: two });
      expect(kept).toEqual({ of, outcome: 'too-few', pours: pours.map((pour) => ({ pour })) });
      const other = roundResult({ of, pours, answers: [counts(3, 2, 1), keeps(1, 2, 3)] });
      expect(other).toEqual(kept);
      expect(roundResult({ of, pours, answers: [...two, counts(2, 1, 3)] }).outcome).toBe('told');
    }
  });

  it('says of how many it is made, and holds nothing of who keeps theirs', () => {
    const four = [counts(1, 2, 3), counts(1, 3, 2), counts(2, 1, 3), counts(1, 2, 3)];
    expect(told('order', [...four, keeps(3, 2, 1)])).toMatchObject({ counted: 4, given: 5 });
    expect(told('order', [...four, keeps(3, 2, 1)])).toEqual(told('order', [...four, keeps(1, 2, 3)]));
    // Whoever put only some of them in order has given no order.
    expect(told('order', [...four, counts(1, 2, null), keeps(null, null, null)])).toMatchObject({
      counted: 4,
      given: 4,
    });
  });

  it('puts the pours in the order of their mean places, with every place that was given', () => {
    const { pours: rows } = told('order', [
      counts(3, 1, 2),
      counts(3, 1, 2),
      counts(2, 1, 3),
      counts(3, 2, 1),
    ]);
    expect(rows).toEqual([
      {
        pour: birch,
        place: 1,
        mean: 1.25,
        spread: [
          { at: 1, guests: 3 },
          { at: 2, guests: 1 },
        ],
      },
      {
        pour: cedar,
        place: 2,
        mean: 2,
        spread: [
          { at: 1, guests: 1 },
          { at: 2, guests: 2 },
          { at: 3, guests: 1 },
        ],
      },
      {
        pour: ash,
        place: 3,
        mean: 2.75,
        spread: [
          { at: 2, guests: 1 },
          { at: 3, guests: 3 },
        ],
      },
    ]);
  });

  it('shares the mean of their places among pours that somebody put level', () => {
    const { pours: rows } = told('order', [counts(1, 1, 3), counts(1, 1, 3), counts(1, 1, 3)]);
    expect(rows.map(({ mean, place }) => [mean, place])).toEqual([
      [1.5, 1.5],
      [1.5, 1.5],
      [3, 3],
    ]);
    expect(told('order', [counts(1, 1, 1), counts(1, 1, 1), counts(1, 1, 1)])).toMatchObject({
      meaning: 'all-tied',
      luck: null,
      pours: pours.map((pour) => ({ pour, place: 2, mean: 2 })),
    });
  });

  it('is honest about a party: three of one mind over two glasses have shown nothing', () => {
    const two = told('order', [counts(1, 2), counts(1, 2), counts(1, 2)], [ash, birch]);
    // All three alike by luck: 2 of 2³ cases.
    expect(two).toMatchObject({ meaning: 'no-agreement-shown', party: true, tooFewToShow: true, luck: 0.25 });
    const eight = told(
      'order',
      Array.from({ length: 8 }, () => counts(1, 2, 3)),
    );
    expect(eight).toMatchObject({ meaning: 'clear-favourite', party: true, tooFewToShow: false });
    expect(eight.luck).toBeLessThan(0.001);
  });

  it('leaves a pour out of the liking that fewer than three let count, whoever else rated it', () => {
    const answers = [counts(8, 5, 3), counts(7, 5, null), counts(9, 6, 2), keeps(1, 1, 1)];
    const result = told('liking', answers);
    const row = (pour: string) => result.pours.find((each) => each.pour === pourId(pour));
    expect(row('ash')).toMatchObject({ mean: 8 });
    expect(row('cedar')).toMatchObject({ mean: null, spread: [] });
    expect(result).toMatchObject({ counted: 3, given: 4 });
  });

  it('counts a liking pour by pour, as each was let', () => {
    const some: RoundAnswer = { values: [9, 9, 9], counts: [true, false, true] };
    const result = told('liking', [some, some, some, counts(8, 5, 8), counts(8, 5, 8)]);
    expect(result.pours.find(({ pour }) => pour === birch)).toMatchObject({ mean: null });
    expect(result.pours.find(({ pour }) => pour === ash)).toMatchObject({ mean: 8.6 });
  });
});

describe('the result of a round, against a published worked example', () => {
  // Siegel, Nonparametric Statistics (1956), table 9.7, after Kendall: ranks that three executives gave six applicants;
  // rank sums 8, 14, 11, 11, 11, 8 and W = 0.16; from memory.
  const six = ['ash', 'birch', 'cedar', 'dogwood', 'elm', 'fir'].map(pourId);
  const ranks = [
    [1, 6, 3, 2, 5, 4],
    [1, 5, 6, 4, 2, 3],
    [6, 3, 2, 5, 4, 1],
  ];
  const result = told(
    'order',
    ranks.map((row) => counts(...row)),
    six,
  );

  it('has the mean places of its rank sums', () => {
    const sums = new Map(result.pours.map(({ pour, mean }) => [pour, Math.round((mean ?? 0) * 3)]));
    expect(six.map((pour) => sums.get(pour))).toEqual([8, 14, 11, 11, 11, 8]);
  });

  it('finds no agreement, as W = 0.16 of three judges does not show any', () => {
    expect(result).toMatchObject({ meaning: 'no-agreement-shown', counted: 3 });
    expect(result.luck).toBeGreaterThan(0.5);
  });
});

describe('whoever keeps an answer', () => {
  it('[R2] changes nothing that the room is told but how many gave one', () => {
    const order = fc.shuffledSubarray([1, 2, 3], { minLength: 3, maxLength: 3 });
    const rows = fc.array(fc.tuple(order, fc.boolean()), { minLength: 1, maxLength: 9 });
    fc.assert(
      fc.property(rows, fc.array(order, { minLength: 9, maxLength: 9 }), (given, others) => {
        const result = (swapped: boolean): RoundResult =>
          roundResult({
            of: 'order',
            pours,
            answers: given.map(([values, isCounted], index) =>
              isCounted ? counts(...values) : keeps(...((swapped ? others[index] : undefined) ?? values)),
            ),
          });
        expect(result(true)).toEqual(result(false));
      }),
    );
  });
});
