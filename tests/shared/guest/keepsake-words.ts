import type { KeepsakeLanguage } from '../../../guest/keepsake/keepsake-language.ts';
import type { VocabularyOf } from '../../../guest/keepsake/keepsake-text.ts';
import { guestWords } from '../../../shared/language/en/guest.ts';
import { keepsakeWords } from '../../../shared/language/en/keepsake.ts';
import { notebookWords } from '../../../shared/language/en/notebook.ts';
import { loadClosingText, loadWords } from '../../../shared/words/load-words.ts';

/** What a keepsake is written with, as the guest's page has it. */
export const language: KeepsakeLanguage = {
  home: keepsakeWords,
  guest: guestWords,
  fields: notebookWords.fields,
  liking: notebookWords.liking.steps,
};

const closing = await loadClosingText();
const sheets = {
  spirit: await loadWords('spirit'),
  wine: await loadWords('wine'),
  beer: await loadWords('beer'),
};

export const vocabularyOf: VocabularyOf = (drink) => ({
  sheet: sheets[drink],
  closing,
  liking: language.liking,
});
