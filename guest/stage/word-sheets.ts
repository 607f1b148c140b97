import { type Later, later } from '../../shared/ui/later.ts';
import type { Drink } from '../../shared/wire/views.ts';
import { loadClosingText, loadWords } from '../../shared/words/load-words.ts';
import type { WordSheet } from '../../shared/words/word-sheet.ts';

/** The word boards and the words of the closing pass, fetched once and then kept for the evening. */
export const wordSheets: Readonly<Record<Drink, Later<WordSheet>>> = {
  spirit: later(() => loadWords('spirit')),
  wine: later(() => loadWords('wine')),
  beer: later(() => loadWords('beer')),
};
export const closingText = later(loadClosingText);
