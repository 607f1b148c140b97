import { type HostWords, hostWords } from '../shared/language/en/host.ts';
import { refusals } from '../shared/language/en/refusals.ts';
import { faceOf, figuresOfDay, timeOfDay as timeIn } from '../shared/language/wall-clock.ts';
import type { FailureCode } from '../shared/wire/answer.ts';
import { locale } from './locale.ts';

/** The language of this page; each part that is fetched later has its own beside it. */
export const words: HostWords = hostWords;

/** The sentence that says what to do about a failure. */
export function sentenceFor(code: FailureCode): string {
  if (code === 'no-answer') return words.noAnswer;
  return code === 'wrong-key' ? words.key.wrong : refusals[code];
}

/** Hours and minutes on this device's clock, or on that of a zone. */
export const timeOfDay = (epoch: number, timeZone?: string): string => timeIn(epoch, locale, timeZone);

/** The same for a narrow column. */
export const clockFigures = (epoch: number): string => figuresOfDay(epoch, locale);

export const dayOf = (epoch: number): string =>
  faceOf(locale, { weekday: 'short', day: 'numeric', month: 'short', year: 'numeric' }).format(epoch);
