import { recapWords as inEnglish, type RecapWords } from '../../shared/language/en/recap.ts';

/** The language of the look back; the only place of it that knows which one it is. */
export const recapWords: RecapWords = inEnglish;
