import type { Vocabulary } from '../../shared/notes/in-words.ts';
import { useLazyPart } from '../../shared/page/lazy-part.ts';
import type { Drink } from '../../shared/wire/views.ts';
import { closingText, wordSheets } from '../stage/word-sheets.ts';
import { likingWords } from './language.ts';

/** What turns the codes of a page into words; undefined until it has been fetched. */
export function useVocabulary(drink: Drink): Vocabulary | undefined {
  const sheet = useLazyPart(wordSheets[drink]);
  const closing = useLazyPart(closingText);
  return sheet && closing && { sheet, closing, liking: likingWords };
}
