/**
 * A count with its noun, for languages that know one and many: `counted(3, 'Glas', 'Gläser')` is "3 Gläser". The
 * number is written as the locale writes it.
 */
export function countingIn(locale: string): (count: number, one: string, many: string) => string {
  const numbers = new Intl.NumberFormat(locale);
  const plural = new Intl.PluralRules(locale);
  return (count, one, many) => `${numbers.format(count)} ${plural.select(count) === 'one' ? one : many}`;
}

/** The same where the number is written as it is and one stands alone, as in English. */
export const several = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;
