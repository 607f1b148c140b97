import { type CueWordSheet, cueWords } from '../shared/language/en/cues.ts';
import { type GuestWords, guestWords } from '../shared/language/en/guest.ts';
import { localeFor } from '../shared/language/locale.ts';

/** The one place where the language of the page is chosen. */
export const words: GuestWords = guestWords;
export const sheet: CueWordSheet = cueWords;

/** How this phone writes dates and times, where it speaks the language of the page. */
export const locale: string = localeFor(words.language);
