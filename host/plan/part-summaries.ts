import type { Plan } from '../../core/tasting.ts';
import { money, number } from '../numbers.ts';
import { courseOf, lengthOf } from './figures/course.ts';
import { shoppingFor } from './figures/shopping.ts';
import { strengthOf } from './figures/strength.ts';
import { sizesOf } from './pour-edits.ts';
import { isLongPast } from './wall-time.ts';
import { dayAndTime, length, words } from './words.ts';

/** The parts of a plan, in the order in which a host mostly fills them. */
export const parts = [
  'pours',
  'guests',
  'evening',
  'course',
  'strength',
  'shopping',
  'table',
  'before',
  'copies',
] as const;
export type Part = (typeof parts)[number];

export interface PartSummary {
  readonly text: string;
  /** It wants to be seen to. */
  readonly loud?: boolean;
}

/** Each part in a few words, recomputed as the plan changes: the list of parts is the plan at a glance. */
export function summaryOf(part: Part, plan: Plan): PartSummary {
  const said = words.summary;
  switch (part) {
    case 'pours': {
      const pours = plan.pours.length;
      return { text: pours === 0 ? said.noPours : said.pours(pours, sizesOf(plan).length) };
    }
    case 'guests':
      return { text: said.guests(plan.guests, plan.remoteGuests, words.levels[plan.level]) };
    case 'evening':
      if (plan.startsAt === undefined) return { text: said.noDate };
      return {
        text: dayAndTime(Date.parse(plan.startsAt), plan.timeZone),
        loud: isLongPast(plan.startsAt, Date.now()),
      };
    case 'course':
      return { text: length(lengthOf(courseOf(plan))) };
    case 'strength':
      return strengthSummary(plan);
    case 'shopping': {
      const { totalBottles, cost } = shoppingFor(plan, false);
      if (plan.pours.length === 0) return { text: said.noPours };
      return cost.kind === 'seat-cost' && cost.total > 0
        ? { text: said.bottlesCost(totalBottles, money(cost.perSeat, plan.currency)) }
        : { text: said.bottles(totalBottles) };
    }
    case 'table':
      return { text: said.table };
    case 'before':
      return { text: words.summary.before };
    case 'copies':
      return { text: said.copies };
    default:
      return part satisfies never;
  }
}

function strengthSummary(plan: Plan): PartSummary {
  const { evening, counted } = strengthOf(plan);
  if (plan.pours.length === 0) return { text: words.summary.noPours };
  if (counted.length === 0) return { text: words.summary.strengthUnknown };
  const grams = number(evening.total.mass, 1);
  if (evening.caution.level === 'loud') return { text: words.summary.strengthLoud(grams), loud: true };
  return { text: words.summary.strength(grams, drinksOf(evening.total.drinks, evening.standard)) };
}

/** So many of a country's standard drinks, in words: of one there is one. */
export function drinksOf(drinks: number, standard: keyof typeof words.figures.strength.standards): string {
  const { standards, oneStandard } = words.figures.strength;
  const shown = number(drinks, 1);
  return `${shown}\u00a0${shown === number(1, 1) ? oneStandard[standard] : standards[standard]}`;
}
