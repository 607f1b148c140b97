import type { Allergen } from '../../drinks/allergens.ts';
import type { Drink } from '../../drinks/drink-kinds.ts';
import type { WineColour, WineKind } from '../order/axes/pour-facts.ts';
import type { Meaning } from './meanings.ts';

/** Words that lists of pours use in one language, parted by `|`; what each is for, by the word of this house. */
export interface ListWords {
  readonly headings: Partial<Readonly<Record<Meaning, string>>>;
  /** Words of a heading that only one drink has. */
  readonly drinkHeadings: Partial<Readonly<Record<Drink, string>>>;
  readonly drinks: Partial<Readonly<Record<Drink, string>>>;
  readonly colours: Partial<Readonly<Record<WineColour, string>>>;
  readonly wineKinds: Partial<Readonly<Record<WineKind, string>>>;
  readonly allergens: Partial<Readonly<Record<Allergen, string>>>;
  /** From light to full, 1 to 5. */
  readonly levels: readonly [string, string, string, string, string];
  /** From none to heavy, 0 to 3. */
  readonly peat: readonly [string, string, string, string];
  readonly yes: string;
  readonly no: string;
  /** In place of something that is not known. */
  readonly nothing: string;
  /** In the place of an age. */
  readonly noAge: string;
  /** What a line that counts up others begins with. */
  readonly total: string;
  /** In headings, what tells how a column is measured and not what it tells. */
  readonly measures: string;
  /** Between the parts of an enumeration. */
  readonly and: string;
}

/** The words of several languages, folded and by what they say. */
export interface ListVocabulary {
  readonly headings: ReadonlyMap<string, Meaning>;
  readonly drinkHeadings: ReadonlyMap<string, Drink>;
  readonly drinks: ReadonlyMap<string, Drink>;
  readonly colours: ReadonlyMap<string, WineColour>;
  readonly wineKinds: ReadonlyMap<string, WineKind>;
  readonly allergens: ReadonlyMap<string, Allergen>;
  readonly levels: ReadonlyMap<string, number>;
  readonly peat: ReadonlyMap<string, number>;
  readonly flags: ReadonlyMap<string, boolean>;
  readonly nothing: ReadonlySet<string>;
  readonly noAge: ReadonlySet<string>;
  readonly measures: ReadonlySet<string>;
  readonly total: RegExp;
  readonly and: RegExp;
}

/** Lower case without accents; what stands between words becomes one space. */
export const fold = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/ß/g, 'ss')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

const wordsIn = (words: string): string[] => words.split('|').map(fold).filter(Boolean);

function byWord<Said extends string>(
  told: readonly Partial<Readonly<Record<Said, string>>>[],
): ReadonlyMap<string, Said> {
  return new Map(
    told.flatMap((one) =>
      Object.entries<string | undefined>(one).flatMap(([said, words = '']) =>
        wordsIn(words).map((word): [string, Said] => [word, said as Said]),
      ),
    ),
  );
}

const byPlace = (scales: readonly (readonly string[])[], first: number): ReadonlyMap<string, number> =>
  new Map(
    scales.flatMap((scale) =>
      scale.flatMap((words, place) => wordsIn(words).map((word) => [word, first + place] as const)),
    ),
  );

const anyOf = (words: readonly string[]): string =>
  [...new Set(words)].sort((one, other) => other.length - one.length).join('|');

/** One vocabulary of several languages. Where two claim a word, the later one has it. */
export function vocabularyOf(languages: readonly ListWords[]): ListVocabulary {
  const all = (pick: (words: ListWords) => string): string[] =>
    languages.flatMap((each) => wordsIn(pick(each)));
  return {
    headings: byWord(languages.map(({ headings }) => headings)),
    drinkHeadings: byWord(languages.map(({ drinkHeadings }) => drinkHeadings)),
    drinks: byWord(languages.map((each) => each.drinks)),
    colours: byWord(languages.map(({ colours }) => colours)),
    wineKinds: byWord(languages.map(({ wineKinds }) => wineKinds)),
    allergens: byWord(languages.map((each) => each.allergens)),
    levels: byPlace(
      languages.map(({ levels }) => levels),
      1,
    ),
    peat: byPlace(
      languages.map(({ peat }) => peat),
      0,
    ),
    flags: new Map([
      ...all(({ yes }) => yes).map((word) => [word, true] as const),
      ...all(({ no }) => no).map((word) => [word, false] as const),
    ]),
    nothing: new Set(all(({ nothing }) => nothing)),
    noAge: new Set(all(({ noAge }) => noAge)),
    measures: new Set(all(({ measures }) => measures)),
    total: new RegExp(`^(?:${anyOf(all(({ total }) => total))})\\b`),
    and: new RegExp(` (?:${anyOf(all(({ and }) => and))}) `),
  };
}
