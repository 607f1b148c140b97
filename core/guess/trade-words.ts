import type { Drink } from '../drinks/drink-kinds.ts';
import { cleanLine } from '../text.ts';
import { tradeOrigins } from './trade-origins.ts';
import { blendOf, type Synonyms, tradeStyles } from './trade-styles.ts';

/** What no list of the trade has stands in the host's own words behind this; a stroke would part a path. */
const ownValue = (text: string): string => `own:${cleanLine(text).replaceAll('/', '\u2044')}`;

/** The style as the list of the trade calls it; where it knows none, or several of what is no blend, the host's own words. */
export function styleOf(text: string, drink: Drink): string {
  const found = codesIn(folded(text), tradeStyles[drink]);
  if (found.length === 1) return found[0] ?? '';
  return (found.length > 1 ? blendOf[drink] : undefined) ?? ownValue(text);
}

/** Country and region as a path; a region that stands in one country only tells the country. */
export function originOf(
  { country, region }: { readonly country?: string | undefined; readonly region?: string | undefined },
  drink: Drink,
): string | undefined {
  const written = [country, region].map((each) => folded(each ?? ''));
  const named = Object.entries(tradeOrigins)
    .filter(([, { names }]) => written.some((text) => names.some((name) => hasWord(text, name))))
    .map(([code]) => code);
  const regions = Object.entries(tradeOrigins).flatMap(([code, { regions: all }]) =>
    codesIn(written[1] ?? '', all[drink] ?? {}).map((each) => `${code}/${each}`),
  );
  const within = regions.filter(
    (path) => named.length === 0 || named.some((code) => path.startsWith(`${code}/`)),
  );
  // "United Kingdom, Islay": a country that no list has gives way to the one of the region.
  if (within.length === 1) return within[0];
  const [top = country ? ownValue(country) : undefined] = named;
  const below = region && !isNamed(region, top) ? ownValue(region) : undefined;
  return [top, below].filter((each) => each !== undefined).join('/') || undefined;
}

/** "Scotland" in the field for the region says nothing more of it. */
const isNamed = (region: string, country: string | undefined): boolean =>
  country !== undefined && (tradeOrigins[country]?.names.includes(folded(region)) ?? false);

/** The codes whose words are in a text, each word counted for the longest that has it: "imperial stout" is no "stout". */
function codesIn(text: string, synonyms: Synonyms): string[] {
  const all = Object.entries(synonyms)
    .flatMap(([code, words]) => words.map((word) => ({ code, word })))
    .toSorted((one, other) => other.word.length - one.word.length);
  let left = text;
  const found = new Set<string>();
  for (const { code, word } of all) {
    if (!hasWord(left, word)) continue;
    found.add(code);
    left = ` ${left} `.replaceAll(` ${word} `, '  ').trim();
  }
  return [...found];
}

const hasWord = (text: string, word: string): boolean => ` ${text} `.includes(` ${word} `);

/** Small letters without marks, one space between words. */
const folded = (text: string): string =>
  text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replaceAll('ß', 'ss')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
