import { type CueWordSheet, cueWords } from '../shared/language/en/cues.ts';
import { type GuestWords, guestWords } from '../shared/language/en/guest.ts';

/** The one place where the language of the page is chosen. */
export const words: GuestWords = guestWords;
export const sheet: CueWordSheet = cueWords;

/** How this phone writes dates and times, where it speaks the language of the page. */
export const locale: string =
  navigator.languages.find((each) => each.split('-')[0] === words.language) ?? words.language;
