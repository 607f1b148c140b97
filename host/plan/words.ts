import { type PlanWords, planWords } from '../../shared/language/en/plan.ts';
import { dayAndTime as dayAndTimeIn } from '../../shared/language/wall-clock.ts';
import { locale } from '../locale.ts';

/** The language of the plan page; the only place of it that knows which one it is. */
export const words: PlanWords = planWords;

/** Without grouping, as a field shows it for editing. */
export const plainNumber = (value: number): string =>
  new Intl.NumberFormat(locale, { maximumFractionDigits: 9, useGrouping: false }).format(value);

export function length(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  return words.course.hours(Math.floor(minutes / 60), minutes % 60);
}

export const dayAndTime = (epoch: number, timeZone: string): string =>
  dayAndTimeIn(epoch, locale, { weekday: 'short', day: 'numeric', month: 'short' }, timeZone);
