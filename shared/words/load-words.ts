import type { ClosingText } from './closing.ts';
import type { WordSheet } from './word-sheet.ts';

export type WordDrink = 'spirit' | 'wine' | 'beer';

/** Another language is one more folder beside `en`, held to the same codes by the compiler, and one line here. */
export type WordLanguage = 'en';

type Loader<Loaded> = () => Promise<Loaded>;

/** A phone fetches the one drink and the one language that it needs. */
const sheets: Readonly<Record<WordLanguage, Readonly<Record<WordDrink, Loader<WordSheet>>>>> = {
  en: {
    spirit: async () => ({
      board: (await import('./spirit.ts')).spiritBoard,
      text: (await import('./en/spirit.ts')).spiritText,
    }),
    wine: async () => ({
      board: (await import('./wine.ts')).wineBoard,
      text: (await import('./en/wine.ts')).wineText,
    }),
    beer: async () => ({
      board: (await import('./beer.ts')).beerBoard,
      text: (await import('./en/beer.ts')).beerText,
    }),
  },
};

const closings: Readonly<Record<WordLanguage, Loader<ClosingText>>> = {
  en: async () => (await import('./en/closing.ts')).closingText,
};

/** Rejects when the device is offline and has not fetched it before: ask again when it is back. */
export const loadWords = (drink: WordDrink, language: WordLanguage = 'en'): Promise<WordSheet> =>
  sheets[language][drink]();

export const loadClosingText = (language: WordLanguage = 'en'): Promise<ClosingText> => closings[language]();
