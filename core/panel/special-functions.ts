/**
 * The two special functions from which every tail in this folder follows. Our own code, because core takes no
 * packages; the algorithms are public: series and continued fractions of the NIST Digital Library of
 * Mathematical Functions (DLMF), the latter evaluated by Lentz's method as modified by Thompson and Barnett
 * (1986). Tests hold them against another library and published tables to about ten digits.
 */
const RELATIVE_PRECISION = 1e-16;
/** Keeps a vanishing partial denominator from dividing by zero; far below anything that matters. */
const TINY = 1e-300;
const MOST_TERMS = 20_000;

/** Lanczos's approximation with g = 7 and nine terms (P. Godfrey's coefficients), good to about 15 digits. */
const LANCZOS_G = 7;
const LANCZOS_FIRST = 0.999_999_999_999_809_93;
const LANCZOS = [
  676.520_368_121_885_1, -1259.139_216_722_402_8, 771.323_428_777_653_13, -176.615_029_162_140_6,
  12.507_343_278_686_905, -0.138_571_095_265_720_12, 9.984_369_578_019_572e-6, 1.505_632_735_149_311_6e-7,
];

/** ln Γ(x) for x > 0 (Lanczos 1964; below one half by the reflection formula, DLMF 5.5.3). */
export function logGamma(x: number): number {
  if (!(x > 0)) throw new RangeError(`logGamma takes a number above 0, not ${x}.`);
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const shifted = x - 1;
  const base = shifted + LANCZOS_G + 0.5;
  const sum = LANCZOS.reduce((total, term, index) => total + term / (shifted + index + 1), LANCZOS_FIRST);
  return 0.5 * Math.log(2 * Math.PI) + (shifted + 0.5) * Math.log(base) - base + Math.log(sum);
}

/** b0 + a1/(b1 + a2/(b2 + ...)) by the modified Lentz method; `term(j)` gives [aj, bj] for j = 1, 2, ... */
function continuedFraction(first: number, term: (j: number) => readonly [number, number]): number {
  let value = Math.abs(first) < TINY ? TINY : first;
  let upper = value;
  let lower = 0;
  for (let j = 1; j <= MOST_TERMS; j += 1) {
    const [a, b] = term(j);
    lower = b + a * lower;
    lower = 1 / (Math.abs(lower) < TINY ? TINY : lower);
    upper = b + a / upper;
    if (Math.abs(upper) < TINY) upper = TINY;
    const step = upper * lower;
    value *= step;
    if (Math.abs(step - 1) <= RELATIVE_PRECISION * 4) break;
  }
  return value;
}

/** Q(a, x), the regularised upper incomplete gamma function (DLMF 8.7.1 below a + 1, 8.9.2 above). */
export function upperGammaRatio(a: number, x: number): number {
  if (!(x > 0)) return 1;
  if (x === Number.POSITIVE_INFINITY) return 0;
  const scale = Math.exp(a * Math.log(x) - x - logGamma(a));
  if (x < a + 1) {
    let term = 1 / a;
    let sum = term;
    for (let j = 1; j <= MOST_TERMS && term > sum * RELATIVE_PRECISION; j += 1) {
      term *= x / (a + j);
      sum += term;
    }
    return Math.max(0, 1 - scale * sum);
  }
  return scale / continuedFraction(x + 1 - a, (j) => [-j * (j - a), x + 2 * j + 1 - a]);
}

/** I_x(a, b), the regularised incomplete beta function (DLMF 8.17.22, and 8.17.4 where that converges faster). */
export function betaRatio(x: number, a: number, b: number): number {
  if (!(x > 0)) return 0;
  if (x >= 1) return 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - betaRatio(1 - x, b, a);
  const scale = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  const denominator = continuedFraction(1, (j) => {
    const m = Math.floor(j / 2);
    const odd = j % 2 === 1;
    const numerator = odd ? -(a + m) * (a + b + m) : m * (b - m);
    return [(numerator * x) / ((a + j - 1) * (a + j)), 1];
  });
  return Math.min(1, scale / (a * denominator));
}
