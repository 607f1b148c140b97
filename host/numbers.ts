import { locale } from './locale.ts';

const rounded = new Map<number, Intl.NumberFormat>();

/** A number as this device writes it, with at most so many decimals. */
export function number(value: number, decimals = 2): string {
  const known = rounded.get(decimals) ?? new Intl.NumberFormat(locale, { maximumFractionDigits: decimals });
  rounded.set(decimals, known);
  return known.format(value);
}

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

/** An amount in minor units as this device writes it. */
export function money(minor: number, currency: string): string {
  const digits = minorDigits(currency);
  try {
    return new Intl.NumberFormat(locale, { style: 'currency', currency }).format(minor / 10 ** digits);
  } catch {
    return `${number(minor / 10 ** digits)} ${currency}`;
  }
}
