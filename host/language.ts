import { type HostWords, hostWords } from '../shared/language/en/host.ts';
import { refusals } from '../shared/language/en/refusals.ts';
import type { FailureCode } from '../shared/wire/answer.ts';
import { locale } from './locale.ts';

/** The language of this page; each part that is fetched later has its own beside it. */
export const words: HostWords = hostWords;

/** The sentence that says what to do about a failure. */
export function sentenceFor(code: FailureCode): string {
  if (code === 'no-answer') return words.noAnswer;
  return code === 'wrong-key' ? words.key.wrong : refusals[code];
}

const clockFace = new Intl.DateTimeFormat(locale, { hour: 'numeric', minute: '2-digit' });
const day = new Intl.DateTimeFormat(locale, {
  weekday: 'short',
  day: 'numeric',
  month: 'short',
  year: 'numeric',
});

/** Hours and minutes on this device's clock. */
export const timeOfDay = (epoch: number): string => clockFace.format(epoch);

/** The same without morning or afternoon, for a narrow column where the hours follow each other anyway. */
export const clockFigures = (epoch: number): string =>
  clockFace
    .formatToParts(epoch)
    .filter(({ type }) => type === 'hour' || type === 'minute' || type === 'literal')
    .map(({ value }) => value)
    .join('')
    .trim();
export const dayOf = (epoch: number): string => day.format(epoch);
