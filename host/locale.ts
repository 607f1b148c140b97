import { choosingWords } from '../shared/language/en/choosing.ts';
import { localeFor } from '../shared/language/locale.ts';

/** How this page writes dates, times and numbers. */
export const locale: string = localeFor(choosingWords.language);
