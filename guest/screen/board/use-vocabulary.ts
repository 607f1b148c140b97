import { useEffect, useState } from 'preact/hooks';
import { notebookWords } from '../../../shared/language/en/notebook.ts';
import type { Vocabulary } from '../../../shared/notes/in-words.ts';
import type { Drink, StageView } from '../../../shared/wire/views.ts';
import type { ClosingText } from '../../../shared/words/closing.ts';
import { loadClosingText } from '../../../shared/words/load-words.ts';
import { useWordSheet } from './use-word-sheet.ts';

/** What turns the codes of a page into words; undefined until it is here. */
export function useVocabulary(drink: Drink, terms: StageView['terms']): Vocabulary | undefined {
  const sheet = useWordSheet(drink, terms);
  const [closing, setClosing] = useState<ClosingText | null>(null);
  useEffect(() => {
    let gone = false;
    loadClosingText().then(
      (loaded) => {
        if (!gone) setClosing(loaded);
      },
      () => undefined,
    );
    return () => {
      gone = true;
    };
  }, []);
  return sheet === null || closing === null
    ? undefined
    : { sheet, closing, liking: notebookWords.liking.steps };
}
