import type { WordField } from '../../shared/notes/entry.ts';
import type { WordSense } from '../../shared/words/word-board.ts';

const senses: Readonly<Record<WordField, WordSense>> = {
  'nose-words': 'nose',
  'palate-words': 'palate',
  'finish-words': 'finish',
};

export const senseOf = (field: WordField): WordSense => senses[field];
