import { isLikingRating, type Liking, summariseLiking } from '../liking.ts';
import { compareOrders, type OrderFigures, type OrderMeaning, type OrderMethod } from './order-comparison.ts';
import { limitsOfPanel, type PanelResult, PROPER_PANEL } from './panel-result.ts';
import { completeRow, type PermittedAnswer, usableAnswers, usableParts } from './permitted-answers.ts';

export interface LikingQuestion<Pour> {
  readonly pours: readonly Pour[];
  /** One rating from 1 to 9 per pour in the order of `pours`, null where none was given. */
  readonly answers: readonly PermittedAnswer<readonly (number | null)[]>[];
  readonly guests: number;
}

interface LikingFigures<Pour> {
  readonly pours: readonly { readonly pour: Pour; readonly liking: Liking }[];
  /** The pours compared over guests who rated all of them; null where that cannot be done. */
  readonly order: OrderFigures<Pour> | null;
  /** Guests behind `order`. */
  readonly ratedAll: number;
}

export type LikingResult<Pour> = PanelResult<
  'liking',
  LikingFigures<Pour>,
  OrderMethod | 'summary-only',
  OrderMeaning | 'summary-only',
  'no-answers'
>;

/** How well each pour was liked, how far opinions spread, and whether the room liked one better. */
export function likingRecap<Pour>({ pours, answers, guests }: LikingQuestion<Pour>): LikingResult<Pour> {
  const onScale = answers.map(({ answer, ...permission }) => ({
    ...permission,
    answer: pours.map((_, index) => {
      const rating = answer[index];
      return isLikingRating(rating) ? rating : null;
    }),
  }));
  const anyRating = usableParts(onScale);
  const n = anyRating.answers.length;
  const panel = limitsOfPanel(anyRating, { guests, proper: PROPER_PANEL.liking });
  if (n === 0) return { subject: 'liking', outcome: 'none', n, reason: 'no-answers', limits: panel };

  // Anonymous guests must hide each other for each pour, not only over the evening.
  const perPour = pours.map((pour, index) => ({
    pour,
    liking: summariseLiking(usableAnswers(onScale, (row) => row[index] ?? null, index).answers),
  }));
  const complete = usableAnswers(onScale, (row) => completeRow(row, pours.length));
  const compared = compareOrders(complete.answers, pours, { better: 'higher' });
  const result = { subject: 'liking', outcome: 'result', n } as const;
  const ratedAll = complete.answers.length;
  if (compared.status === 'none') {
    const figures = { pours: perPour, order: null, ratedAll };
    return { ...result, figures, method: 'summary-only', meaning: 'summary-only', limits: panel };
  }
  const { figures: order, method, meaning } = compared;
  const gaps = complete.incomplete > anyRating.incomplete ? (['incomplete-left-out'] as const) : [];
  const limits = [...new Set([...panel, ...gaps, ...compared.limits])];
  return { ...result, figures: { pours: perPour, order, ratedAll }, method, meaning, limits };
}
