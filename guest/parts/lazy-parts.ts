import { lazyPart } from '../../shared/page/lazy-part.ts';
import type { Drink } from '../../shared/wire/views.ts';
import { guessPart } from '../guess/guess-place.tsx';
import { closingText, wordSheets } from '../stage/word-sheets.ts';

/** What a guest needs once the first glass is in hand, and the way home. */
export const notebookPart = lazyPart(() => import('../notebook/notebook-part.ts'));
export const boardPart = lazyPart(() => import('../board/board-part.ts'));
export const keepsakePart = lazyPart(() => import('../keepsake/keepsake-part.ts'));
export const seatPart = lazyPart(() => import('../seat/seat-part.ts'));

/** While everybody finds their place: what is here then works without a network for the rest of the evening. */
export function fetchParts(drink: Drink, guesses: boolean): void {
  for (const part of [notebookPart, wordSheets[drink], closingText, seatPart, boardPart, keepsakePart])
    part.fetch();
  if (guesses) guessPart.fetch();
}
