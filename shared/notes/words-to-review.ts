import { mostMarks, type WordField, type WordMarks, wordFields } from './entry.ts';

/** A word of a page, with every sense that it was put down for. */
export interface WordToReview {
  readonly code: string;
  readonly fields: readonly WordField[];
}

/**
 * The words of a page from top to bottom, each once: a word that is in the nose and in the mouth is asked for in the
 * glass. As many as there is room for answers.
 */
export function wordsToReview(marksOf: (field: WordField) => WordMarks): WordToReview[] {
  const found = new Map<string, WordField[]>();
  for (const field of wordFields) {
    for (const code of Object.keys(marksOf(field))) found.set(code, [...(found.get(code) ?? []), field]);
  }
  return [...found].map(([code, fields]) => ({ code, fields })).slice(0, mostMarks);
}
