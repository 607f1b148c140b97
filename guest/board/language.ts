import { type BoardWords, boardWords } from '../../shared/language/en/board.ts';
import { notebookWords } from '../../shared/language/en/notebook.ts';

/** The table's words, apart from those of the first screens: they come with it. */
export const words: BoardWords = boardWords;
export const fieldNames = notebookWords.fields;
export const likingWords: readonly string[] = notebookWords.liking.steps;
