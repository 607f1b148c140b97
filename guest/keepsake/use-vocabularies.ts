import type { Vocabulary } from '../../shared/notes/in-words.ts';
import { useLazyPart } from '../../shared/page/lazy-part.ts';
import type { Drink } from '../../shared/wire/views.ts';
import { inTerms } from '../../shared/words/word-sheet.ts';
import { useRoom } from '../room/room.ts';
import { closingText, wordSheets } from '../stage/word-sheets.ts';
import type { VocabularyOf } from './keepsake-text.ts';
import { language } from './language.ts';

/** The words of all these drinks; undefined until all have been fetched. */
export function useVocabularies(drinks: readonly Drink[]): VocabularyOf | undefined {
  const closing = useLazyPart(closingText);
  const known = [...new Set(drinks)].map((drink) => ({ drink, sheet: useLazyPart(wordSheets[drink]) }));
  const terms = useRoom().follower.stage.value?.terms ?? 'plain';
  const sheets = new Map<Drink, Vocabulary>();
  for (const { drink, sheet } of known) {
    if (sheet !== undefined && closing !== undefined) {
      sheets.set(drink, { sheet: inTerms(sheet, terms), closing, liking: language.liking });
    }
  }
  const [any] = sheets.values();
  if (sheets.size < known.length || any === undefined) return undefined;
  return (drink) => sheets.get(drink) ?? any;
}
