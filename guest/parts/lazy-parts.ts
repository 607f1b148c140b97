import { isSettled, lazyComponent, lazyPart } from '../../shared/page/lazy-part.ts';
import type { Drink } from '../../shared/wire/views.ts';
import { guessPart } from '../guess/guess-place.tsx';
import { closingText, wordSheets } from '../stage/word-sheets.ts';

/** What a guest needs once the first glass is in hand, and the way home. */
export const notebookPart = lazyPart(() => import('../notebook/notebook-part.ts'));
export const boardPart = lazyPart(() => import('../board/board-part.ts'));
export const keepsakePart = lazyPart(() => import('../keepsake/keepsake-part.ts'));
export const seatPart = lazyPart(() => import('../seat/seat-part.ts'));

/** Four words that were not looked at yet. */
export const FirstWords = lazyComponent(seatPart, ({ seatPages }) => seatPages.FirstWords);

const partsOf = (drink: Drink, guesses: boolean) => [
  notebookPart,
  wordSheets[drink],
  closingText,
  seatPart,
  boardPart,
  keepsakePart,
  ...(guesses ? [guessPart] : []),
];

/** While everybody finds their place: what is here then works without a network for the rest of the evening. */
export function fetchParts(drink: Drink, guesses: boolean): void {
  for (const part of partsOf(drink, guesses)) part.fetch();
}

/** Whether all that may come into the page by itself has come. */
export const partsSettled = (drink: Drink, guesses: boolean): boolean =>
  partsOf(drink, guesses).every(isSettled);
