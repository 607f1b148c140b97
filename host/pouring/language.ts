import { pouringWords as inEnglish, type PouringWords } from '../../shared/language/en/pouring.ts';

/** The language of the pour run; the only place of it that knows which one it is. */
export const pouringWords: PouringWords = inEnglish;
