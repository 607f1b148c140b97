import { recapWords as words } from '../../shared/language/en/recap.ts';
import { locale } from '../locale.ts';

const one = new Intl.NumberFormat(locale, { maximumFractionDigits: 1 });
const two = new Intl.NumberFormat(locale, { minimumFractionDigits: 2, maximumFractionDigits: 2 });
const share = new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 0 });

export const oneDecimal = (value: number): string => one.format(value);
export const twoDecimals = (value: number): string => two.format(value);
export const percent = (value: number): string => share.format(value);

/** A chance with its sign: three decimals, and never 0, which none is. */
export const chance = (p: number): string =>
  p < 0.001 ? `< ${three.format(0.001)}` : `= ${three.format(p)}`;
const three = new Intl.NumberFormat(locale, { minimumFractionDigits: 3, maximumFractionDigits: 3 });

/** A length of time in hours and minutes, to the minute; its sign is left to the words around it. */
export function lengthOf(seconds: number): string {
  const minutes = Math.round(Math.abs(seconds) / 60);
  return words.timing.hours(Math.floor(minutes / 60), minutes % 60);
}

/** By how much something took longer or shorter; in minutes. */
export function differenceOf(seconds: number): string {
  const said = lengthOf(seconds);
  if (Math.round(seconds / 60) === 0) return said;
  return seconds > 0 ? words.timing.more(said) : words.timing.less(said);
}
