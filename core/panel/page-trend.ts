import { normalUpperTail } from './distributions.ts';
import { columnSums, completeJudges, midRanks, type Scores } from './mid-ranks.ts';

/**
 * Page's test for a predicted order (Page 1963): the columns stand in the order in which scores should rise,
 * L = Σ j R_j. One-sided: a large L speaks for the prediction.
 */
export type PageTest =
  | { readonly status: 'no-judges' }
  | { readonly status: 'one-sample' }
  | {
      readonly status: 'tested';
      readonly n: number;
      readonly k: number;
      readonly l: number;
      readonly z: number;
      readonly pNormal: number;
      /** By arrangements of the ranks as given, ties and all; null when too large to count. */
      readonly pExact: number | null;
      /** As printed tables have it, as if no judge could tie; an L and a half, which only ties give, is cut to L. */
      readonly pExactNoTies: number | null;
    };

/** Largest k and largest count of multiplications for the exact distribution. */
const MOST_SAMPLES = 10;
const MOST_STEPS = 20_000_000;

/** Chances of 0, 1, 2, ... above `least`, in units of half a rank. */
interface Distribution {
  readonly least: number;
  readonly chances: Float64Array;
}

/**
 * One judge's Σ j r_j over all arrangements of `doubledRanks`: positions are filled from the left, and what
 * matters of the past is only which ranks are used (a bit mask).
 */
function oneJudge(doubledRanks: readonly number[]): Distribution {
  const k = doubledRanks.length;
  const size = doubledRanks.reduce((sum, rank) => sum + rank, 0) * k + 1;
  const byMask = Array.from({ length: 1 << k }, () => new Float64Array(0));
  byMask[0] = new Float64Array(size);
  byMask[0][0] = 1;
  for (let mask = 0; mask < (1 << k) - 1; mask += 1) {
    const here = byMask[mask] ?? new Float64Array(0);
    const used = doubledRanks.filter((_, index) => mask & (1 << index)).length;
    doubledRanks.forEach((rank, index) => {
      const bit = 1 << index;
      if (mask & bit) return;
      let there = byMask[mask | bit];
      if (there === undefined || there.length === 0) {
        there = new Float64Array(size);
        byMask[mask | bit] = there;
      }
      const shift = (used + 1) * rank;
      for (let sum = 0; sum + shift < size; sum += 1) {
        const chance = here[sum] ?? 0;
        if (chance > 0) there[sum + shift] = (there[sum + shift] ?? 0) + chance / (k - used);
      }
    });
  }
  const all = byMask[(1 << k) - 1] ?? new Float64Array(0);
  const least = all.findIndex((chance) => chance > 0);
  let most = all.length - 1;
  while (all[most] === 0) most -= 1;
  return { least, chances: all.slice(least, most + 1) };
}

function convolve(one: Distribution, other: Distribution): Distribution {
  const chances = new Float64Array(one.chances.length + other.chances.length - 1);
  one.chances.forEach((chance, i) => {
    if (chance === 0) return;
    other.chances.forEach((factor, j) => {
      chances[i + j] = (chances[i + j] ?? 0) + chance * factor;
    });
  });
  return { least: one.least + other.least, chances };
}

/** The distribution of 2L for judges with these ranks, or null when it is too large to reckon. */
function distributionOfL(ranks: readonly (readonly number[])[]): Distribution | null {
  const k = ranks[0]?.length ?? 0;
  const widest = (k * (k * k - 1)) / 3 + 1;
  if (k > MOST_SAMPLES || ranks.length ** 2 * widest ** 2 > 2 * MOST_STEPS) return null;
  const known = new Map<string, Distribution>();
  let sum: Distribution = { least: 0, chances: Float64Array.of(1) };
  for (const row of ranks) {
    const doubled = row.map((rank) => rank * 2).sort((a, b) => a - b);
    const key = doubled.join();
    const judge = known.get(key) ?? oneJudge(doubled);
    known.set(key, judge);
    sum = convolve(sum, judge);
  }
  return sum;
}

function tailOf(distribution: Distribution, l: number): number {
  const from = Math.max(0, Math.ceil(2 * l - 1e-9) - distribution.least);
  return Math.min(
    1,
    distribution.chances.slice(from).reduce((sum, chance) => sum + chance, 0),
  );
}

const untiedRows = (k: number, n: number): number[][] =>
  Array.from({ length: n }, () => Array.from({ length: k }, (_, index) => index + 1));

function requirePanel(k: number, n: number): void {
  if (!Number.isInteger(k) || !Number.isInteger(n) || k < 2 || n < 1) {
    throw new RangeError(
      `Whole numbers of two samples or more and one judge or more are needed, not ${k}, ${n}.`,
    );
  }
}

/** L, its normal approximation and the exact p without ties, from rank sums of n judges in the predicted order. */
export function pageFromRankSums(rankSums: readonly number[], n: number) {
  const k = rankSums.length;
  requirePanel(k, n);
  const l = rankSums.reduce((sum, rankSum, index) => sum + (index + 1) * rankSum, 0);
  const mean = (n * k * (k + 1) ** 2) / 4;
  const z = (l - mean) / Math.sqrt((n * k ** 2 * (k + 1) * (k ** 2 - 1)) / 144);
  const untied = distributionOfL(untiedRows(k, n));
  return {
    l,
    z,
    pNormal: normalUpperTail(z),
    pExactNoTies: untied === null ? null : tailOf(untied, Math.floor(l)),
  };
}

export function pageTest(scores: Scores): PageTest {
  const { rows, sampleCount: k } = completeJudges(scores);
  if (rows.length === 0) return { status: 'no-judges' };
  if (k === 1) return { status: 'one-sample' };
  const ranks = rows.map(midRanks);
  const figures = pageFromRankSums(columnSums(ranks), rows.length);
  const given = distributionOfL(ranks);
  const pExact = given === null ? null : tailOf(given, figures.l);
  return { status: 'tested', n: rows.length, k, ...figures, pExact };
}

export type PageCritical =
  | { readonly status: 'attainable'; readonly critical: number }
  | { readonly status: 'out-of-reach' }
  | { readonly status: 'too-large' };

/** The smallest L with P(L >= it) <= alpha for n judges and k samples, without ties. */
export function pageCritical(k: number, n: number, alpha: number): PageCritical {
  requirePanel(k, n);
  const distribution = distributionOfL(untiedRows(k, n));
  if (distribution === null) return { status: 'too-large' };
  let tail = 0;
  let critical: number | null = null;
  for (let index = distribution.chances.length - 1; index >= 0; index -= 1) {
    const chance = distribution.chances[index] ?? 0;
    if (chance === 0) continue;
    tail += chance;
    if (tail > alpha * (1 + 1e-12)) break;
    critical = (index + distribution.least) / 2;
  }
  return critical === null ? { status: 'out-of-reach' } : { status: 'attainable', critical };
}
