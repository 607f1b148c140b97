import { setAsideWords as inEnglish, type SetAsideWords } from '../../shared/language/en/set-aside.ts';

/** What is said of evenings that cannot go on; the only place of it that knows which language it is. */
export const setAsideWords: SetAsideWords = inEnglish;
