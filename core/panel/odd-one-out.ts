import { binomialUpperTail, normalPoint, pointOfTail } from './distributions.ts';

/**
 * Forced-choice tests of whether a room can tell two drinks apart. Each answer is right or wrong, and guessing is
 * right with a known chance, so p is an exact binomial tail. Independent answers are assumed: one per guest.
 *
 * triangle (ISO 4120), duo-trio (ISO 10399), paired comparison (ISO 5495); 2-AFC and 3-AFC: point out the one
 * with more of a named quality among two or three; tetrad: sort four into two pairs.
 */
export type DifferenceTestMethod =
  | 'triangle'
  | 'duo-trio'
  | 'tetrad'
  | '2-AFC'
  | '3-AFC'
  | 'paired-one-sided'
  | 'paired-two-sided';

/** The chance that a guess is right. */
const chanceOfGuess: Readonly<Record<DifferenceTestMethod, number>> = {
  triangle: 1 / 3,
  tetrad: 1 / 3,
  '3-AFC': 1 / 3,
  'duo-trio': 1 / 2,
  '2-AFC': 1 / 2,
  'paired-one-sided': 1 / 2,
  'paired-two-sided': 1 / 2,
};

const isCount = (value: number): boolean => Number.isSafeInteger(value) && value >= 0;

/** P(as many right or more) by guessing; two-sided: twice the tail of the larger count, at most 1. */
function guessingTail(method: DifferenceTestMethod, n: number, correct: number): number {
  const chance = chanceOfGuess[method];
  if (method !== 'paired-two-sided') return binomialUpperTail(correct, n, chance);
  return Math.min(1, 2 * binomialUpperTail(Math.max(correct, n - correct), n, chance));
}

/** The exact p, or null where the counts cannot be: not whole, below 0, or more right than answers. */
export function exactP(method: DifferenceTestMethod, n: number, correct: number): number | null {
  if (!isCount(n) || !isCount(correct) || correct > n || n === 0) return null;
  return guessingTail(method, n, correct);
}

/**
 * The fewest right answers of n that guessing reaches with chance alpha or less (two-sided: the smallest larger
 * count); null when not even n of n are enough.
 */
export function criticalCorrect(method: DifferenceTestMethod, n: number, alpha: number): number | null {
  if (!isCount(n) || n === 0) return null;
  // A tail that equals alpha counts; the margin keeps rounding from deciding that.
  const enough = (correct: number) => guessingTail(method, n, correct) <= alpha * (1 + 1e-12);
  if (!enough(n)) return null;
  let low = Math.floor(n / 2) * (method === 'paired-two-sided' ? 1 : 0);
  let high = n;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (enough(middle)) high = middle;
    else low = middle + 1;
  }
  return high;
}

export type DifferenceTest =
  | { readonly status: 'no-answers' }
  /** Counts that cannot be: not whole, below 0, or more right than answers. */
  | { readonly status: 'impossible-count' }
  | {
      readonly status: 'tested';
      readonly method: DifferenceTestMethod;
      readonly n: number;
      readonly correct: number;
      readonly expectedByGuessing: number;
      readonly p: number;
      readonly alpha: number;
      /** null: a panel this small cannot show a difference at all. */
      readonly critical: number | null;
      readonly shown: boolean;
    };

export function differenceTest(
  method: DifferenceTestMethod,
  { n, correct, alpha = 0.05 }: { readonly n: number; readonly correct: number; readonly alpha?: number },
): DifferenceTest {
  if (n === 0 && correct === 0) return { status: 'no-answers' };
  const p = exactP(method, n, correct);
  if (p === null) return { status: 'impossible-count' };
  const critical = criticalCorrect(method, n, alpha);
  const counted = method === 'paired-two-sided' ? Math.max(correct, n - correct) : correct;
  return {
    status: 'tested',
    method,
    n,
    correct,
    expectedByGuessing: n * chanceOfGuess[method],
    p,
    alpha,
    critical,
    shown: critical !== null && counted >= critical,
  };
}

export interface Distinguishers {
  readonly proportionCorrect: number;
  /** Abbott's correction (pc - p0)/(1 - p0); below 0 when the room did worse than guessing. */
  readonly proportion: number;
  readonly proportionClamped: number;
  readonly standardError: number;
  readonly lower: number;
  readonly upper: number;
  /** The limits of a small panel: exact for the share that is right, corrected like it, from 0 to 1. */
  readonly exact: { readonly lower: number; readonly upper: number };
}

/**
 * The share of guests who truly tell the drinks apart, corrected for lucky guesses, with the normal limits of
 * ISO 4120's annex: one-sided (each limit by itself) or two-sided. They fall together when all are right or none, so that a
 * party goes by the exact ones. Null where the counts cannot be.
 */
export function distinguishers(
  method: Exclude<DifferenceTestMethod, 'paired-two-sided'>,
  counts: { readonly n: number; readonly correct: number },
  { confidence, sides }: { readonly confidence: number; readonly sides: 1 | 2 },
): Distinguishers | null {
  if (exactP(method, counts.n, counts.correct) === null) return null;
  const chance = chanceOfGuess[method];
  const pc = counts.correct / counts.n;
  const proportion = (pc - chance) / (1 - chance);
  const standardError = Math.sqrt((pc * (1 - pc)) / counts.n) / (1 - chance);
  const reach = normalPoint((1 - confidence) / sides) * standardError;
  const [low, high] = exactShare(counts, (1 - confidence) / sides);
  const corrected = (share: number): number => Math.max(0, (share - chance) / (1 - chance));
  return {
    proportionCorrect: pc,
    proportion,
    proportionClamped: Math.max(0, proportion),
    standardError,
    lower: proportion - reach,
    upper: proportion + reach,
    exact: { lower: corrected(low), upper: corrected(high) },
  };
}

/**
 * Limits of a share of right answers that miss it with chance alpha or less at each end: the shares at which so many right
 * or more, or so many or fewer, come about with just that chance (Clopper and Pearson, Biometrika 1934).
 *
 * @returns from 0 to 1
 */
export function exactShare(
  { n, correct }: { readonly n: number; readonly correct: number },
  alpha: number,
): readonly [number, number] {
  const atLeast = (count: number) => (share: number) => binomialUpperTail(count, n, share);
  const lower = correct === 0 ? 0 : pointOfTail((share) => 1 - atLeast(correct)(share), 1 - alpha, [0, 1]);
  const upper = correct === n ? 1 : pointOfTail((share) => 1 - atLeast(correct + 1)(share), alpha, [0, 1]);
  return [lower, upper];
}
