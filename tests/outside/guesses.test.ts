import { describe, expect, it } from 'vitest';
import { brierScore } from '../../core/panel/guess/brier.ts';
import { distanceOf } from '../../core/panel/guess/nearness.ts';
import { trendOf } from '../../core/panel/guess/trend.ts';
import published from './guesses.json';

describe(published.brier.source, () => {
  it.each(published.brier.cases)('$sure and $right: $score', ({ sure, right, score }) => {
    expect(brierScore([{ sure, right }])).toBeCloseTo(score, 12);
  });
});

describe(published.trend.source, () => {
  it.each(published.trend.cases)('n = $n, S = $score: $chance', ({ n, score, chance }) => {
    expect(trendOf(rowWith(n, score))?.score).toBe(score);
    expect(Math.abs((trendOf(rowWith(n, score))?.chance ?? 0) - chance)).toBeLessThanOrEqual(0.0006);
  });
});

describe(published.preferredNumbers.source, () => {
  it('puts prices one step apart where the series does, within its rounding', () => {
    const { series } = published.preferredNumbers;
    for (const [index, step] of series.slice(1).entries()) {
      const before = series[index] ?? 1;
      expect(Math.abs(distanceOf('price', step * 1000, before * 1000) - 1)).toBeLessThan(0.08);
    }
  });
});

/** A row of n evenings that gets better except for as many pairs as the score wants: the last ones stand in the wrong order. */
function rowWith(n: number, score: number): number[] {
  const row = Array.from({ length: n }, (_, index) => n - index);
  let wrong = (((n * (n - 1)) / 2 - score) / 2) | 0;
  for (let end = n - 1; wrong > 0; end -= 1) {
    for (let at = 0; at < end && wrong > 0; at += 1, wrong -= 1) {
      const [one = 0, other = 0] = [row[at], row[at + 1]];
      row[at] = other;
      row[at + 1] = one;
    }
  }
  return row;
}
