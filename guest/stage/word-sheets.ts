import { type LazyPart, lazyPart } from '../../shared/page/lazy-part.ts';
import type { Drink } from '../../shared/wire/views.ts';
import { loadClosingText, loadWords } from '../../shared/words/load-words.ts';
import type { WordSheet } from '../../shared/words/word-sheet.ts';

/** The word boards and the words of the closing pass, fetched once and then kept for the evening. */
export const wordSheets: Readonly<Record<Drink, LazyPart<WordSheet>>> = {
  spirit: lazyPart(() => loadWords('spirit')),
  wine: lazyPart(() => loadWords('wine')),
  beer: lazyPart(() => loadWords('beer')),
};
export const closingText = lazyPart(loadClosingText);
