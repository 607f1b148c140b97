import { useEffect, useState } from 'preact/hooks';
import type { Drink, StageView } from '../../../shared/wire/views.ts';
import { loadWords } from '../../../shared/words/load-words.ts';
import { inTerms, type WordSheet } from '../../../shared/words/word-sheet.ts';

/** The words of a drink; null until they are here. Without them the screen shows what people wrote. */
export function useWordSheet(drink: Drink, terms: StageView['terms']): WordSheet | null {
  const [sheet, setSheet] = useState<{ readonly drink: Drink; readonly sheet: WordSheet } | null>(null);
  useEffect(() => {
    let gone = false;
    loadWords(drink).then(
      (loaded) => {
        if (!gone) setSheet({ drink, sheet: loaded });
      },
      () => undefined,
    );
    return () => {
      gone = true;
    };
  }, [drink]);
  return sheet?.drink === drink ? inTerms(sheet.sheet, terms) : null;
}
