import fc from 'fast-check';
import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import {
  binomialUpperTail,
  chiSquareUpperTail,
  fUpperTail,
  normalPoint,
  normalUpperTail,
  studentPoint,
  studentUpperTail,
} from '../../core/panel/distributions.ts';
import { logGamma } from '../../core/panel/special-functions.ts';
import { studentisedRangePoint, studentisedRangeUpperTail } from '../../core/panel/studentised-range.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const degrees = fc.integer({ min: 1, max: 60 });

/** jstat's own tails are good to seven digits: near 0, its Student's t is itself off by 2e-8. */
const near = (actual: number, expected: number) => Math.abs(actual - expected) <= 1e-7;

describe('tails, against the independent library jstat 1.9.6', () => {
  it('agrees on the normal', () => {
    fc.assert(fc.property(number(-8, 8), (z) => near(normalUpperTail(z), 1 - jStat.normal.cdf(z, 0, 1))));
  });

  it('agrees on chi-square', () => {
    fc.assert(
      fc.property(number(0, 120), degrees, (x, df) =>
        near(chiSquareUpperTail(x, df), 1 - jStat.chisquare.cdf(x, df)),
      ),
    );
  });

  it('agrees on F', () => {
    fc.assert(
      fc.property(number(0, 60), degrees, degrees, (f, df1, df2) =>
        near(fUpperTail(f, df1, df2), 1 - jStat.centralF.cdf(f, df1, df2)),
      ),
    );
  });

  it("agrees on Student's t", () => {
    fc.assert(
      fc.property(number(-30, 30), degrees, (t, df) =>
        near(studentUpperTail(t, df), 1 - jStat.studentt.cdf(t, df)),
      ),
    );
  });

  it('agrees on the binomial', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100 }), fc.nat(100), number(0.02, 0.98), (n, x, p) => {
        let tail = 0;
        for (let k = x; k <= n; k += 1) tail += jStat.binomial.pdf(k, n, p);
        return near(binomialUpperTail(x, n, p), tail);
      }),
    );
  });

  it('agrees on the studentised range with many degrees of freedom', () => {
    fc.assert(
      fc.property(
        number(0.2, 9),
        fc.integer({ min: 2, max: 20 }),
        (q, k) =>
          // Above q = 3 the library integrates in coarser steps and is itself off by up to 3e-8.
          Math.abs(studentisedRangeUpperTail(q, k) - (1 - jStat.tukey.cdf(q, k, 1e6))) <= 1e-7,
      ),
      { numRuns: 40 },
    );
  });

  it('agrees on ln Γ', () => {
    fc.assert(
      fc.property(number(0.01, 500), (x) =>
        near(logGamma(x) / Math.max(1, x), jStat.gammaln(x) / Math.max(1, x)),
      ),
    );
  });
});

/**
 * Digits beyond jstat's, from SciPy 1.17.1 (norm.sf, chi2.sf, f.sf, t.sf, binom.sf) and, for the studentised range,
 * mpmath's quadrature with 30 digits; small tails included, so the error is relative.
 */
const SCIPY: readonly (readonly [string, number, number])[] = [
  ['normal 0.5', normalUpperTail(0.5), 0.3085375387259869],
  ['normal 1.959963984540054', normalUpperTail(1.959963984540054), 0.025],
  ['normal 5', normalUpperTail(5), 2.866515718791933e-7],
  ['normal 12', normalUpperTail(12), 1.776482112077653e-33],
  ['chi-square 0.5 with 1', chiSquareUpperTail(0.5, 1), 0.47950012218695337],
  ['chi-square 11.142857143 with 2', chiSquareUpperTail(11.142857143, 2), 0.003805040775239572],
  ['chi-square 60 with 3', chiSquareUpperTail(60, 3), 5.878230727906921e-13],
  ['chi-square 3 with 40', chiSquareUpperTail(3, 40), 0.9999999999999997],
  ['chi-square 200 with 9', chiSquareUpperTail(200, 9), 3.312992393909567e-38],
  ['F 3.69 with 3 and 39', fUpperTail(3.69, 3, 39), 0.01974409968948888],
  ['F 0.2 with 2 and 5', fUpperTail(0.2, 2, 5), 0.824974664479918],
  ['F 80 with 7 and 56', fUpperTail(80, 7, 56), 8.000964507631248e-27],
  ['t 2.228 with 10', studentUpperTail(2.228, 10), 0.02500588590855566],
  ['t 12 with 4', studentUpperTail(12, 4), 0.0001382142742514865],
  ['t -1 with 1', studentUpperTail(-1, 1), 0.75],
  ['binomial 8 of 12 at 1 / 3', binomialUpperTail(8, 12, 1 / 3), 0.01875843226247128],
  ['binomial 30 of 30 at 1 / 3', binomialUpperTail(30, 30, 1 / 3), 4.856935749618853e-15],
  ['binomial 400 of 1000 at 1 / 3', binomialUpperTail(400, 1000, 1 / 3), 5.988277870041007e-6],
  ['binomial 60 of 100 at 1 / 2', binomialUpperTail(60, 100, 1 / 2), 0.028443966820490444],
  ['studentised range 3.31 of 3', studentisedRangeUpperTail(3.31, 3), 0.050403372147103005],
  ['studentised range 4.47 of 10', studentisedRangeUpperTail(4.47, 10), 0.05044122016716674],
  ['studentised range 1 of 5', studentisedRangeUpperTail(1, 5), 0.9549548551886442],
];

describe('tails, against SciPy 1.17.1 and mpmath', () => {
  it.each(SCIPY)('%s', (_name, actual, expected) => {
    expect(Math.abs(actual / expected - 1)).toBeLessThan(1e-11);
  });
});

describe('points, against printed tables', () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods, tables 1.3.6.7.1 and 1.3.6.7.2, from memory.
  it.each([
    [0.025, 1.96],
    [0.05, 1.645],
    [0.005, 2.576],
  ])('normal %d', (alpha, z) => expect(normalPoint(alpha)).toBeCloseTo(z, 3));

  it.each([
    [0.025, 1, 12.706],
    [0.025, 10, 2.228],
    [0.05, 8, 1.86],
  ])("Student's t %d with %d", (alpha, df, t) => expect(studentPoint(alpha, df)).toBeCloseTo(t, 3));

  it('mirrors t below one half and meets it in the middle', () => {
    expect(studentPoint(0.975, 10)).toBeCloseTo(-2.228, 3);
    expect(studentPoint(0.5, 3)).toBeCloseTo(0, 9);
  });

  // Studentised range, 5 %, infinite degrees of freedom, as handbooks print it; from memory.
  it.each([
    [2, 2.77],
    [3, 3.31],
    [4, 3.63],
    [5, 3.86],
    [10, 4.47],
  ])('studentised range of %d', (k, q) => expect(studentisedRangePoint(0.05, k)).toBeCloseTo(q, 2));

  it.each([0, 1, -1, Number.NaN])('refuses the tail %d', (alpha) => {
    expect(() => normalPoint(alpha)).toThrow(RangeError);
    expect(() => studentPoint(alpha, 3)).toThrow(RangeError);
    expect(() => studentisedRangePoint(alpha, 3)).toThrow(RangeError);
  });
});
