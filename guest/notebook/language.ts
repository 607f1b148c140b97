import { type NotebookWords, notebookWords } from '../../shared/language/en/notebook.ts';

/** The notebook's words, apart from those of the first screens: they come with it. */
export const words: NotebookWords = notebookWords;
