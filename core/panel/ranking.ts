import { chiSquareUpperTail, fUpperTail } from './distributions.ts';
import { columnSums, completeJudges, midRanks, type Scores, tieTerm } from './mid-ranks.ts';
import { EXACT_BUDGET, exactSpreadTail } from './row-permutations.ts';

export interface ImanDavenport {
  readonly f: number;
  readonly df1: number;
  readonly df2: number;
  readonly p: number;
}

export interface RankingFigures {
  /** Judges who ranked everything, and samples. */
  readonly n: number;
  readonly k: number;
  readonly droppedJudges: readonly number[];
  readonly rankSums: readonly number[];
  readonly chi2: number;
  readonly df: number;
  readonly pChiSquare: number;
  /** By arrangements within judges, ties and all; null when too large to count. */
  readonly pExact: number | null;
  /** 1 when the judges are of one mind, 0 when their orders cancel. */
  readonly kendallW: number;
  /** 1 without ties. */
  readonly tieCorrection: number;
  /** null where it has no bound (all judges of one mind) or no degrees of freedom (one judge). */
  readonly imanDavenport: ImanDavenport | null;
}

export type RankingTest =
  | { readonly status: 'no-judges'; readonly droppedJudges: readonly number[] }
  | { readonly status: 'one-sample'; readonly n: number; readonly droppedJudges: readonly number[] }
  | {
      readonly status: 'all-tied';
      readonly n: number;
      readonly k: number;
      readonly rankSums: readonly number[];
      readonly droppedJudges: readonly number[];
    }
  /** The figures can be reckoned, yet say nothing about a panel: one judge always agrees with themself. */
  | ({ readonly status: 'one-judge' } & RankingFigures)
  | ({ readonly status: 'tested' } & RankingFigures);

/** Friedman's statistic without ties, 12/(nk(k+1)) Σ R² - 3n(k+1) (Friedman 1937). */
function untiedStatistic(rankSums: readonly number[], n: number): number {
  const k = rankSums.length;
  const mean = (n * (k + 1)) / 2;
  const spread = rankSums.reduce((sum, rankSum) => sum + (rankSum - mean) ** 2, 0);
  return (12 * spread) / (n * k * (k + 1));
}

/** F = (n-1) χ² / (n(k-1) - χ²) with k-1 and (k-1)(n-1) degrees of freedom (Iman and Davenport 1980). */
function imanDavenport(chi2: number, n: number, k: number): ImanDavenport | null {
  const room = n * (k - 1) - chi2;
  if (n < 2 || k < 2 || room <= 1e-9 * n * k) return null;
  const df1 = k - 1;
  const df2 = (k - 1) * (n - 1);
  const f = ((n - 1) * chi2) / room;
  return { f, df1, df2, p: fUpperTail(f, df1, df2) };
}

/** What follows from the rank sums of n judges; `tieCorrection` is 1 where nothing is known of ties. */
export function figuresOfRankSums(rankSums: readonly number[], n: number, tieCorrection = 1) {
  const k = rankSums.length;
  if (k < 2 || !(n >= 1))
    throw new RangeError('Rank sums of two samples or more by one judge or more are needed.');
  const chi2 = untiedStatistic(rankSums, n) / tieCorrection;
  return {
    chi2,
    df: k - 1,
    pChiSquare: chiSquareUpperTail(chi2, k - 1),
    kendallW: Math.min(1, chi2 / (n * (k - 1))),
    imanDavenport: imanDavenport(chi2, n, k),
  };
}

/**
 * Friedman's test on mid-ranks within judges, the smallest score ranked 1, corrected for ties by
 * 1 - Σ(t³-t)/(n(k³-k)); Kendall's W = χ²/(n(k-1)) (Kendall and Babington Smith 1939). Judges with a missing
 * answer are left out. `budget` bounds the exact reckoning; 0 does without it.
 */
export function friedmanTest(scores: Scores, budget: number = EXACT_BUDGET): RankingTest {
  const { rows, sampleCount: k, droppedJudges } = completeJudges(scores);
  const n = rows.length;
  if (n === 0) return { status: 'no-judges', droppedJudges };
  if (k === 1) return { status: 'one-sample', n, droppedJudges };
  const ranks = rows.map(midRanks);
  const rankSums = columnSums(ranks);
  const lost = ranks.reduce((sum, row) => sum + tieTerm(row), 0);
  const tieCorrection = 1 - lost / (n * (k ** 3 - k));
  // All rows tied throughout: lost equals n(k³-k) in whole numbers, so the quotient is exactly 1.
  if (tieCorrection === 0) return { status: 'all-tied', n, k, rankSums, droppedJudges };
  const doubled = ranks.map((row) => row.map((rank) => rank * 2));
  return {
    status: n === 1 ? 'one-judge' : 'tested',
    n,
    k,
    droppedJudges,
    rankSums,
    ...figuresOfRankSums(rankSums, n, tieCorrection),
    pExact: exactSpreadTail(doubled, budget),
    tieCorrection,
  };
}
