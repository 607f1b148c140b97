// Not reviewed by a native speaker yet.
import type { ChoosingWords } from '../en/choosing.ts';

export const choosingWords: ChoosingWords = {
  language: 'de',
  choose: 'Sprache',
};
