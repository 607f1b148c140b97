import { betaRatio, upperGammaRatio } from './special-functions.ts';

/**
 * Upper tails P(X >= x), and the points that leave a given tail. Tails are what the tests of this folder need,
 * and small ones keep their digits when they are not reckoned as one minus something.
 */

/** Where a falling function takes the value `target`, by halving until the doubles on both sides meet. */
export function pointOfTail(
  tail: (x: number) => number,
  target: number,
  [from, to]: readonly [number, number],
): number {
  let low = from;
  let high = to;
  for (;;) {
    const middle = low + (high - low) / 2;
    if (middle <= low || middle >= high) return middle;
    if (tail(middle) > target) low = middle;
    else high = middle;
  }
}

function requireProbability(alpha: number): void {
  if (!(alpha > 0 && alpha < 1)) throw new RangeError(`A tail lies between 0 and 1, not ${alpha}.`);
}

/** Standard normal: P(Z >= z) = Q(1/2, z²/2) / 2 for z >= 0 (DLMF 7.11.2). */
export function normalUpperTail(z: number): number {
  const half = upperGammaRatio(0.5, (z * z) / 2) / 2;
  return z >= 0 ? half : 1 - half;
}

/** The z with P(Z >= z) = alpha. @throws RangeError unless 0 < alpha < 1 */
export function normalPoint(alpha: number): number {
  requireProbability(alpha);
  return pointOfTail(normalUpperTail, alpha, [-40, 40]);
}

/** Chi-square with `df` > 0 degrees of freedom (Abramowitz and Stegun 26.4.19). */
export function chiSquareUpperTail(x: number, df: number): number {
  return upperGammaRatio(df / 2, x / 2);
}

/** F with df1, df2 > 0 degrees of freedom (Abramowitz and Stegun 26.6.2). */
export function fUpperTail(f: number, df1: number, df2: number): number {
  return f > 0 ? betaRatio(df2 / (df2 + df1 * f), df2 / 2, df1 / 2) : 1;
}

/** Student's t with `df` > 0 degrees of freedom, one-sided (Abramowitz and Stegun 26.7.1). */
export function studentUpperTail(t: number, df: number): number {
  const half = betaRatio(df / (df + t * t), df / 2, 0.5) / 2;
  return t >= 0 ? half : 1 - half;
}

/** The t with P(T >= t) = alpha. @throws RangeError unless 0 < alpha < 1 */
export function studentPoint(alpha: number, df: number): number {
  requireProbability(alpha);
  if (alpha > 0.5) return -studentPoint(1 - alpha, df);
  return pointOfTail((t) => studentUpperTail(t, df), alpha, [0, 1e12]);
}

/** Binomial: P(X >= x) of n independent answers, each right with chance p, = I_p(x, n - x + 1) (DLMF 8.17.5). */
export function binomialUpperTail(x: number, n: number, p: number): number {
  if (x <= 0) return 1;
  return x > n ? 0 : betaRatio(p, x, n - x + 1);
}
