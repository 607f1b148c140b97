import { chiSquareUpperTail } from './distributions.ts';
import { columnSums, completeJudges, type Scores } from './mid-ranks.ts';
import { EXACT_BUDGET, exactSpreadTail } from './row-permutations.ts';

/**
 * Cochran's Q (Cochran 1950): is a word said of some samples more often than of others? Rows are judges, columns
 * samples, 1 = the judge ticked the word. Valid when every judge could tick it for every sample and the judges did
 * not see each other's ticks. Judges who ticked all or none say nothing about differences; `informative` counts
 * the rest, and while informative × samples is below 24 the chi-square p is rough (Tate and Brown 1970, from
 * memory): take the exact one.
 */
export type CochranQ =
  | { readonly status: 'no-judges'; readonly droppedJudges: readonly number[] }
  | { readonly status: 'one-sample'; readonly n: number; readonly droppedJudges: readonly number[] }
  /** Every judge ticked all samples or none. */
  | {
      readonly status: 'no-variation';
      readonly n: number;
      readonly k: number;
      readonly ticks: readonly number[];
      readonly droppedJudges: readonly number[];
    }
  | {
      readonly status: 'tested';
      readonly n: number;
      readonly k: number;
      readonly ticks: readonly number[];
      readonly droppedJudges: readonly number[];
      readonly informative: number;
      readonly q: number;
      readonly df: number;
      readonly pChiSquare: number;
      /** By arrangements of each judge's own ticks; null when too large to count. */
      readonly pExact: number | null;
    };

/** Q = (k-1)(k Σ C² - T²) / (k T - Σ R²); an entry other than 0 is a tick. */
export function cochranQ(table: Scores, budget: number = EXACT_BUDGET): CochranQ {
  const { rows, sampleCount: k, droppedJudges } = completeJudges(table);
  const n = rows.length;
  if (n === 0) return { status: 'no-judges', droppedJudges };
  if (k === 1) return { status: 'one-sample', n, droppedJudges };
  const marks = rows.map((row) => row.map((value) => (value === 0 ? 0 : 1)));
  const ticks = columnSums(marks);
  const rowTotals = marks.map((row) => row.reduce<number>((sum, mark) => sum + mark, 0));
  const total = rowTotals.reduce((sum, value) => sum + value, 0);
  const denominator = k * total - rowTotals.reduce((sum, value) => sum + value * value, 0);
  if (denominator === 0) return { status: 'no-variation', n, k, ticks, droppedJudges };
  const squares = ticks.reduce((sum, count) => sum + count * count, 0);
  const q = ((k - 1) * (k * squares - total * total)) / denominator;
  return {
    status: 'tested',
    n,
    k,
    ticks,
    droppedJudges,
    informative: rowTotals.filter((value) => value > 0 && value < k).length,
    q,
    df: k - 1,
    pChiSquare: chiSquareUpperTail(q, k - 1),
    pExact: exactSpreadTail(marks, budget),
  };
}
