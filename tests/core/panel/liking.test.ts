import fc from 'fast-check';
import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { summariseLiking } from '../../../core/panel/liking.ts';
import { isFiniteThroughout } from './panel-arbitraries.ts';

const ratings = fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 40 });

describe('liking of one pour', () => {
  it('gives the mean, median and spread that jstat gives', () => {
    fc.assert(
      fc.property(ratings, (values) => {
        const liking = summariseLiking(values);
        if (liking.status !== 'rated') return false;
        expect(liking.n).toBe(values.length);
        expect(liking.mean).toBeCloseTo(jStat.mean(values), 9);
        expect(liking.median).toBeCloseTo(jStat.median(values), 9);
        if (values.length > 1) expect(liking.standardDeviation).toBeCloseTo(jStat.stdev(values, true), 9);
        return true;
      }),
    );
  });

  it('keeps every figure on the scale and in order', () => {
    fc.assert(
      fc.property(ratings, (values) => {
        const liking = summariseLiking(values);
        if (liking.status !== 'rated') return false;
        const { least, quartiles, median, most, mean, meanInterval, counts } = liking;
        const inOrder = [1, least, quartiles[0], median, quartiles[1], most, 9];
        expect(inOrder).toEqual([...inOrder].sort((a, b) => a - b));
        const [low, high] = meanInterval ?? [mean, mean];
        expect(counts.reduce((sum, count) => sum + count, 0)).toBe(values.length);
        return (
          1 <= low && low <= mean + 1e-9 && mean <= high + 1e-9 && high <= 9 && isFiniteThroughout(liking)
        );
      }),
    );
  });

  // By hand: mean 6, s = sqrt(10/4), t = 2.776 with 4 degrees of freedom.
  it('reckons the interval of the mean by t', () => {
    expect(summariseLiking([4, 5, 6, 7, 8])).toMatchObject({
      mean: 6,
      quartiles: [4.5, 7.5],
      meanInterval: [expect.closeTo(4.037, 3), expect.closeTo(7.963, 3)],
    });
  });

  it.each([
    ['divided', [2, 3, 8, 9]],
    ['divided', [5, 2, 5, 8]],
    ['liked', [6, 7, 8, 4, 7]],
    ['disliked', [1, 2, 3]],
    ['neither', [5, 5, 5, 6, 4]],
    ['neither', [9, 1]],
  ])('calls a room %s', (shape, values) => {
    expect(summariseLiking(values)).toMatchObject({ shape });
  });

  it('takes what is no point of the scale as not rated', () => {
    expect(summariseLiking([])).toEqual({ status: 'no-ratings' });
    expect(summariseLiking([null, 0, 10, 4.5, Number.NaN])).toEqual({ status: 'no-ratings' });
    expect(summariseLiking([7, null])).toMatchObject({ n: 1, standardDeviation: null, meanInterval: null });
  });
});
