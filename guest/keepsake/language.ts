import { type KeepsakeWords, keepsakeWords } from '../../shared/language/en/keepsake.ts';
import { type NotebookWords, notebookWords } from '../../shared/language/en/notebook.ts';
import { words } from '../language.ts';
import type { KeepsakeLanguage } from './keepsake-language.ts';

/** The words of what is taken home, apart from those of the first screens: they come with it. */
export const homeWords: KeepsakeWords = keepsakeWords;
const notebook: NotebookWords = notebookWords;

export const language: KeepsakeLanguage = {
  home: homeWords,
  guest: words,
  fields: notebook.fields,
  liking: notebook.liking.steps,
};
