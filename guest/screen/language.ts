import { type CueWordSheet, cueWords } from '../../shared/language/en/cues.ts';
import { type GuestWords, guestWords as guestWordsInEnglish } from '../../shared/language/en/guest.ts';
import { type ScreenWords, screenWords } from '../../shared/language/en/screen.ts';
import { localeFor } from '../../shared/language/locale.ts';
import { timeOfDay as timeIn } from '../../shared/language/wall-clock.ts';

/** The one place where the language of the room screen is chosen. */
export const words: ScreenWords = screenWords;
export const sheet: CueWordSheet = cueWords;
/** What the guests read on their phones is called the same here: senses, facts of a pour, the rules. */
export const guestWords: GuestWords = guestWordsInEnglish;

export const timeOfDay = (moment: number): string => timeIn(moment, localeFor(guestWords.language));
