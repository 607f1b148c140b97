import { normalPoint } from './distributions.ts';
import { studentisedRangePoint } from './studentised-range.ts';

/**
 * Which pairs of samples stand apart once a ranking test has found a difference. Two published yardsticks for the
 * gap between rank sums; ties are not allowed for, which makes both of them a little too strict.
 *
 * - rank-sum-lsd: z sqrt(nk(k+1)/6), the least significant difference of ISO 8587. Each pair is judged by itself,
 *   so among many pairs some will stand apart by chance.
 * - nemenyi: q sqrt(nk(k+1)/12), q the studentised range (Nemenyi 1963). The chance of even one false pair among
 *   all is held at alpha.
 */
export type DifferenceMethod = 'rank-sum-lsd' | 'nemenyi';

interface Panel {
  readonly n: number;
  readonly k: number;
  readonly alpha: number;
}

function requirePanel({ n, k, alpha }: Panel): void {
  if (!(n >= 1) || !(k >= 2) || !(alpha > 0 && alpha < 1)) {
    throw new RangeError(
      `One judge or more, two samples or more and 0 < alpha < 1 are needed: ${n}, ${k}, ${alpha}.`,
    );
  }
}

export function rankSumLsd(panel: Panel): number {
  requirePanel(panel);
  return normalPoint(panel.alpha / 2) * Math.sqrt((panel.n * panel.k * (panel.k + 1)) / 6);
}

/** `q` is divided by sqrt 2, as tables for this test print it. */
export function nemenyiDifference(panel: Panel) {
  requirePanel(panel);
  const { n, k, alpha } = panel;
  const q = studentisedRangePoint(alpha, k) / Math.SQRT2;
  const onMeanRanks = q * Math.sqrt((k * (k + 1)) / (6 * n));
  return { q, onMeanRanks, onRankSums: onMeanRanks * n };
}

export interface RankingDifferences {
  readonly method: DifferenceMethod;
  readonly alpha: number;
  /** The smallest gap between rank sums that counts. */
  readonly threshold: number;
  /** Pairs of column numbers, the smaller first. */
  readonly apart: readonly (readonly [number, number])[];
}

function thresholdOf(method: DifferenceMethod, panel: Panel): number {
  switch (method) {
    case 'rank-sum-lsd':
      return rankSumLsd(panel);
    case 'nemenyi':
      return nemenyiDifference(panel).onRankSums;
    default:
      return method satisfies never;
  }
}

/** Pairs whose rank sums, each over n judges, lie at least the threshold apart. */
export function rankingDifferences(
  rankSums: readonly number[],
  n: number,
  { method, alpha }: { readonly method: DifferenceMethod; readonly alpha: number },
): RankingDifferences {
  const threshold = thresholdOf(method, { n, k: rankSums.length, alpha });
  const apart: [number, number][] = [];
  rankSums.forEach((sum, one) => {
    rankSums.slice(one + 1).forEach((otherSum, offset) => {
      if (Math.abs(sum - otherSum) >= threshold - 1e-9) apart.push([one, one + 1 + offset]);
    });
  });
  return { method, alpha, threshold, apart };
}
