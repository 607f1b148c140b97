import type { ClosingText } from './closing.ts';
import type { WordSheet } from './word-sheet.ts';

export type WordDrink = 'spirit' | 'wine' | 'beer';

/**
 * A phone fetches the one drink that it needs. Another language is one more folder beside `en`, held to the same codes by
 * the compiler; its files take the place of these where a page is built in that language.
 */
const sheets: Readonly<Record<WordDrink, () => Promise<WordSheet>>> = {
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
};

/** Rejects when the device is offline and has not fetched it before: ask again when it is back. */
export const loadWords = (drink: WordDrink): Promise<WordSheet> => sheets[drink]();

export const loadClosingText = async (): Promise<ClosingText> =>
  (await import('./en/closing.ts')).closingText;
