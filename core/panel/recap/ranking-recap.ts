import type { DifferenceMethod } from '../ranking-differences.ts';
import {
  compareOrders,
  type NoOrder,
  type OrderFigures,
  type OrderMeaning,
  type OrderMethod,
} from './order-comparison.ts';
import { limitsOfPanel, type PanelResult, PROPER_PANEL } from './panel-result.ts';
import { completeRow, type PermittedAnswer, usableAnswers } from './permitted-answers.ts';

export interface RankingQuestion<Pour> {
  readonly pours: readonly Pour[];
  /** One entry per pour in the order of `pours`: 1 is liked best, ties allowed, null where nothing was ranked. */
  readonly answers: readonly PermittedAnswer<readonly (number | null)[]>[];
  /** All who could have answered. */
  readonly guests: number;
  readonly pairs?: DifferenceMethod;
}

export type RankingResult<Pour> = PanelResult<
  'ranking',
  OrderFigures<Pour>,
  OrderMethod,
  OrderMeaning,
  NoOrder
>;

/** Which pour the room ranked first, and whether the room agreed. */
export function rankingRecap<Pour>(question: RankingQuestion<Pour>): RankingResult<Pour> {
  const { pours, guests, pairs } = question;
  const usable = usableAnswers(question.answers, (row) => completeRow(row, pours.length));
  const n = usable.answers.length;
  const panel = limitsOfPanel(usable, { guests, proper: PROPER_PANEL.liking });
  const compared = compareOrders(usable.answers, pours, {
    better: 'lower',
    ...(pairs === undefined ? {} : { pairs }),
  });
  if (compared.status === 'none') {
    return { subject: 'ranking', outcome: 'none', n, reason: compared.reason, limits: panel };
  }
  const { figures, method, meaning, limits } = compared;
  return {
    subject: 'ranking',
    outcome: 'result',
    n,
    figures,
    method,
    meaning,
    limits: [...panel, ...limits],
  };
}
