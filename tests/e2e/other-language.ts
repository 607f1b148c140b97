import { choosingWords } from '../../shared/language/en/choosing.ts';
import type { CueWordSheet } from '../../shared/language/en/cues.ts';
import type { GuestWords } from '../../shared/language/en/guest.ts';
import type { HostWords } from '../../shared/language/en/host.ts';
import type { SeatWords } from '../../shared/language/en/seat.ts';
import { exportsOf } from '../support/languages.ts';

/** The language that somebody changes to: German, or English where this run is in German. */
export async function otherLanguage() {
  const language = choosingWords.language === 'de' ? 'en' : 'de';
  const from = (file: string) => exportsOf('shared/language', language, file);
  const [{ guestWords }, { hostWords }, { seatWords }, { cueWords }] = [
    await from('guest.ts'),
    await from('host.ts'),
    await from('seat.ts'),
    await from('cues.ts'),
  ];
  return {
    language,
    /** As the language calls itself. */
    name: language === 'de' ? 'Deutsch' : 'English',
    guest: guestWords as GuestWords,
    host: hostWords as HostWords,
    seat: seatWords as SeatWords,
    cues: cueWords as CueWordSheet,
  };
}
