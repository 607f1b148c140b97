import { midRanks } from '../mid-ranks.ts';
import { friedmanTest, type RankingFigures } from '../ranking.ts';
import { type DifferenceMethod, rankingDifferences } from '../ranking-differences.ts';
import { type LimitCode, RECAP_ALPHA } from './panel-result.ts';

/** Ranks (a low one is good) and ratings (a high one is good) are compared in the same way. */
export interface OrderFigures<Pour> {
  /** Best first; equal rank sums share a place, such as 1.5. */
  readonly places: readonly { readonly pour: Pour; readonly rankSum: number; readonly place: number }[];
  readonly chi2: number;
  readonly df: number;
  readonly p: number;
  readonly kendallW: number;
  /** Pairs that stand apart, the better one first; none are looked for unless the room agrees at all. */
  readonly apart: readonly { readonly better: Pour; readonly worse: Pour }[];
  readonly differences: { readonly method: DifferenceMethod; readonly threshold: number };
}

export type OrderMethod = 'friedman-exact' | 'friedman-chi-square';
export type OrderMeaning = 'clear-favourite' | 'favourites-share' | 'no-agreement-shown';
export type NoOrder = 'no-answers' | 'one-guest' | 'one-pour' | 'all-tied';

export type OrderComparison<Pour> =
  | { readonly status: 'none'; readonly reason: NoOrder }
  | {
      readonly status: 'compared';
      readonly figures: OrderFigures<Pour>;
      readonly method: OrderMethod;
      readonly meaning: OrderMeaning;
      readonly limits: readonly LimitCode[];
    };

const factorial = (k: number): number => (k <= 1 ? 1 : k * factorial(k - 1));

function figuresOf<Pour>(
  test: RankingFigures,
  p: number,
  pours: readonly Pour[],
  better: 'lower' | 'higher',
  method: DifferenceMethod,
): OrderFigures<Pour> {
  const sign = better === 'lower' ? 1 : -1;
  const ranked = midRanks(test.rankSums.map((sum) => sign * sum));
  const entries = pours.map((pour, index) => ({
    pour,
    rankSum: test.rankSums[index] ?? 0,
    place: ranked[index] ?? 0,
  }));
  const { threshold, apart } = rankingDifferences(test.rankSums, test.n, { method, alpha: RECAP_ALPHA });
  const pairs = apart.flatMap(([one, other]) => {
    const pair = [entries[one], entries[other]].filter((entry) => entry !== undefined);
    const [best, worst] = pair.sort((a, b) => a.place - b.place);
    return best === undefined || worst === undefined ? [] : [{ better: best.pour, worse: worst.pour }];
  });
  return {
    places: [...entries].sort((one, other) => one.place - other.place),
    chi2: test.chi2,
    df: test.df,
    p,
    kendallW: test.kendallW,
    apart: p <= RECAP_ALPHA ? pairs : [],
    differences: { method, threshold },
  };
}

function meaningOf<Pour>({ p, places, apart }: OrderFigures<Pour>): OrderMeaning {
  if (p > RECAP_ALPHA) return 'no-agreement-shown';
  const best = places[0]?.pour;
  const beaten = apart.filter((pair) => pair.better === best).length;
  return beaten === places.length - 1 ? 'clear-favourite' : 'favourites-share';
}

/**
 * Complete rows only, one value per pour. The pairs are judged by `pairs`: by default the least significant
 * difference of rank sums, and only after the room as a whole was found to agree, which for three pours keeps
 * the chance of any false pair at alpha. Nemenyi's difference keeps it for any number, but is so strict that nine
 * guests of one mind over three pours would not have a favourite.
 */
export function compareOrders<Pour>(
  rows: readonly (readonly number[])[],
  pours: readonly Pour[],
  {
    better,
    pairs = 'rank-sum-lsd',
  }: { readonly better: 'lower' | 'higher'; readonly pairs?: DifferenceMethod },
): OrderComparison<Pour> {
  const test = friedmanTest(rows);
  switch (test.status) {
    case 'no-judges':
      return { status: 'none', reason: 'no-answers' };
    case 'one-sample':
      return { status: 'none', reason: 'one-pour' };
    case 'all-tied':
      return { status: 'none', reason: test.n === 1 ? 'one-guest' : 'all-tied' };
    case 'one-judge':
      return { status: 'none', reason: 'one-guest' };
    case 'tested': {
      const figures = figuresOf(test, test.pExact ?? test.pChiSquare, pours, better, pairs);
      const meaning = meaningOf(figures);
      const limits: LimitCode[] = [];
      if (meaning === 'no-agreement-shown') limits.push('not-shown-is-not-same');
      // The chance that all give one and the same order, without ties, by luck.
      if (factorial(test.k) ** (1 - test.n) > RECAP_ALPHA) limits.push('panel-too-small-to-show');
      if (pairs === 'rank-sum-lsd' && test.k > 3 && figures.apart.length > 0)
        limits.push('pairs-not-corrected');
      if (test.pExact === null) limits.push('approximate-p');
      const method = test.pExact === null ? 'friedman-chi-square' : 'friedman-exact';
      return { status: 'compared', figures, method, meaning, limits };
    }
    default:
      return test satisfies never;
  }
}
