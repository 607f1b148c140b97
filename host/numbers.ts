import { locale } from './locale.ts';

const rounded = new Map<number, Intl.NumberFormat>();

/** A number as this device writes it, with at most so many decimals. */
export function number(value: number, decimals = 2): string {
  const known = rounded.get(decimals) ?? new Intl.NumberFormat(locale, { maximumFractionDigits: decimals });
  rounded.set(decimals, known);
  return known.format(value);
}
