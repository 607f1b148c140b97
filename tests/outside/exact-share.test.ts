import fc from 'fast-check';
import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { exactShare } from '../../core/panel/odd-one-out.ts';

describe('exact limits of a share, against published worked examples', () => {
  it.each([
    // Newcombe, Statistics in Medicine 17 (1998), table I, method 5 (Clopper and Pearson); from memory.
    ['81 of 263', 263, 81, 0.2527, 0.3676, 4],
    ['15 of 148', 148, 15, 0.0578, 0.1617, 4],
    ['none of 20', 20, 0, 0, 0.1684, 4],
    ['1 of 29', 29, 1, 0.0009, 0.1776, 4],
    // Conover (1971), Mendel's peas, as R's manual of binom.test prints it; from memory.
    ['682 of 925', 925, 682, 0.7076683, 0.7654066, 7],
  ])('%s', (_name, n, correct, lower, upper, digits) => {
    const [low, high] = exactShare({ n, correct }, 0.025);
    expect(low).toBeCloseTo(lower, digits);
    expect(high).toBeCloseTo(upper, digits);
  });

  it('are the points of the beta distribution, as the independent library jstat 1.9.6 reckons it', () => {
    const counts = fc.integer({ min: 1, max: 80 }).chain((n) => fc.tuple(fc.constant(n), fc.nat(n)));
    fc.assert(
      fc.property(counts, fc.constantFrom(0.005, 0.025, 0.05), ([n, correct], alpha) => {
        const [lower, upper] = exactShare({ n, correct }, alpha);
        if (correct > 0) expect(jStat.beta.cdf(lower, correct, n - correct + 1)).toBeCloseTo(alpha, 6);
        if (correct < n) expect(jStat.beta.cdf(upper, correct + 1, n - correct)).toBeCloseTo(1 - alpha, 6);
      }),
    );
  });
});
