import { fold, type ListVocabulary } from './list-words.ts';
import type { Meaning } from './meanings.ts';

/** Units that a heading may name for the bare numbers below it. */
export type HeadingUnit = 'proof' | 'ml' | 'cl' | 'l' | 'oz';

const unitWords: Readonly<Record<string, HeadingUnit>> = {
  proof: 'proof',
  ml: 'ml',
  milliliter: 'ml',
  millilitres: 'ml',
  cl: 'cl',
  zentiliter: 'cl',
  centilitres: 'cl',
  l: 'l',
  liter: 'l',
  litre: 'l',
  litres: 'l',
  oz: 'oz',
};

/** Signs, units and currencies that say in what a column is measured and not what it tells. */
const measures = new Set([
  ...Object.keys(unitWords),
  ...'fl us vol ppm g gl eur usd gbp chf jpy dkk sek nok czk pln aud cad nzd 0 3 5 10'.split(' '),
]);

export interface Heading {
  readonly meaning: Meaning;
  readonly unit?: HeadingUnit;
  /** ISO 4217, where the heading names a currency. */
  readonly currency?: string;
}

/** By all its words; else without its units; else without every word of measure. */
function meaningOf(words: readonly string[], known: ListVocabulary): Meaning | undefined {
  const shorter = [
    words.filter((word) => !Object.hasOwn(unitWords, word)),
    words.filter((word) => !measures.has(word) && !known.measures.has(word)),
  ];
  return [words, ...shorter].flatMap((some) => known.headings.get(some.join(' ')) ?? [])[0];
}

/** What a heading means, in whichever language that is known; undefined where it says nothing that a pour has. */
export function headingOf(text: string, known: ListVocabulary): Heading | undefined {
  // A percentage sign tells strength as surely as a word; "vol." beside a volume's unit tells a size.
  const words = fold(text.replace(/%/g, ' percent ')).split(' ').filter(Boolean);
  if (words.length === 0 || words.length > 6) return undefined;
  const unitWord = words.find((word) => Object.hasOwn(unitWords, word));
  const unit = unitWord === undefined ? undefined : unitWords[unitWord];
  const volume = unit !== undefined && unit !== 'proof';
  const priced = /\b[A-Z]{3}\b/.exec(text)?.[0];
  const found =
    meaningOf(words, known) ??
    percentHeading(words, known) ??
    (priced &&
    meaningOf(
      words.filter((word) => word !== fold(priced)),
      known,
    ) === 'price'
      ? 'price'
      : undefined);
  if (found === undefined) return undefined;
  const meaning = found === 'strength' && volume && !words.includes('percent') ? 'bottle' : found;
  const currency = meaning === 'price' ? (currencyIn(text) ?? priced) : undefined;
  return { meaning, ...(unit && { unit }), ...(currency && { currency }) };
}

/** Strength said in several ways at once: Alc. % by vol. */
const percentHeading = (words: readonly string[], known: ListVocabulary): Meaning | undefined =>
  words.includes('percent') && words.every((word) => word === 'by' || known.headings.get(word) === 'strength')
    ? 'strength'
    : undefined;

const symbols: Readonly<Record<string, string>> = { '€': 'EUR', '£': 'GBP', '¥': 'JPY' };
const codes = /\b(EUR|USD|GBP|CHF|JPY|DKK|SEK|NOK|CZK|PLN|AUD|CAD|NZD|HUF|INR|CNY|KRW|ZAR|BRL|MXN|ISK)\b/i;

/** The currency that a text names; a dollar sign alone names none of the many dollars. */
export function currencyIn(text: string): string | undefined {
  const code = codes.exec(text)?.[1]?.toUpperCase();
  if (code !== undefined) return code;
  for (const symbol of text) if (Object.hasOwn(symbols, symbol)) return symbols[symbol];
  return undefined;
}
