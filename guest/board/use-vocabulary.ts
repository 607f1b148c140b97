import type { Vocabulary } from '../../shared/notes/in-words.ts';
import { useLater } from '../../shared/ui/later.ts';
import type { Drink } from '../../shared/wire/views.ts';
import { closingText, wordSheets } from '../stage/word-sheets.ts';
import { likingWords } from './language.ts';

/** What turns the codes of a page into words; undefined until it has been fetched. */
export function useVocabulary(drink: Drink): Vocabulary | undefined {
  const sheet = useLater(wordSheets[drink]);
  const closing = useLater(closingText);
  return sheet && closing && { sheet, closing, liking: likingWords };
}
