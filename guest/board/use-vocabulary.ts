import type { Vocabulary } from '../../shared/notes/in-words.ts';
import { useLazyPart } from '../../shared/page/lazy-part.ts';
import type { Drink } from '../../shared/wire/views.ts';
import { inTerms } from '../../shared/words/word-sheet.ts';
import { useRoom } from '../room/room.ts';
import { closingText, wordSheets } from '../stage/word-sheets.ts';
import { likingWords } from './language.ts';

/** What turns the codes of a page into words; undefined until it has been fetched. */
export function useVocabulary(drink: Drink): Vocabulary | undefined {
  const sheet = useLazyPart(wordSheets[drink]);
  const closing = useLazyPart(closingText);
  const terms = useRoom().follower.stage.value?.terms ?? 'plain';
  return sheet && closing && { sheet: inTerms(sheet, terms), closing, liking: likingWords };
}
