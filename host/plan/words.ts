import { type PlanWords, planWords } from '../../shared/language/en/plan.ts';
import { dayAndTime as dayAndTimeIn } from '../../shared/language/wall-clock.ts';
import { locale } from '../locale.ts';
import { number } from '../numbers.ts';

/** The language of the plan page; the only place of it that knows which one it is. */
export const words: PlanWords = planWords;

/** Without grouping, as a field shows it for editing. */
export const plainNumber = (value: number): string =>
  new Intl.NumberFormat(locale, { maximumFractionDigits: 9, useGrouping: false }).format(value);

/** How many decimals a currency has by ISO 4217, as this device knows them. */
export function minorDigits(currency: string): number {
  try {
    const { maximumFractionDigits } = new Intl.NumberFormat('en', {
      style: 'currency',
      currency,
    }).resolvedOptions();
    return maximumFractionDigits ?? 2;
  } catch {
    return 2;
  }
}

export function money(minor: number, currency: string): string {
  const digits = minorDigits(currency);
  try {
    return new Intl.NumberFormat(locale, { style: 'currency', currency }).format(minor / 10 ** digits);
  } catch {
    return `${number(minor / 10 ** digits)} ${currency}`;
  }
}

export function length(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  return words.course.hours(Math.floor(minutes / 60), minutes % 60);
}

export const dayAndTime = (epoch: number, timeZone: string): string =>
  dayAndTimeIn(epoch, locale, { weekday: 'short', day: 'numeric', month: 'short' }, timeZone);
