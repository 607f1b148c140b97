import { paperWords as inEnglish, type PaperWords } from '../../shared/language/en/paper.ts';

/** The language of what is printed; the only place of it that knows which one it is. */
export const paperWords: PaperWords = inEnglish;
