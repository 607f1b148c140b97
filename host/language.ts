import type { InvitationWords } from '../core/planning/invitation.ts';
import { type HostWords, hostWords } from '../shared/language/en/host.ts';
import {
  type InviteWords,
  invitationWords as invitationInEnglish,
  inviteWords as inviteInEnglish,
} from '../shared/language/en/invite.ts';
import { type PaperWords, paperWords as paperInEnglish } from '../shared/language/en/paper.ts';
import { type PouringWords, pouringWords as pouringInEnglish } from '../shared/language/en/pouring.ts';
import { type RecapWords, recapWords as recapInEnglish } from '../shared/language/en/recap.ts';
import { refusals } from '../shared/language/en/refusals.ts';
import { say } from '../shared/language/en/say.ts';
import type { SayBook } from '../shared/language/say.ts';
import type { FailureCode } from './api.ts';

/** The language of this page; the only place of the host's app that knows which one it is. */
export const words: HostWords = hostWords;
export const sayBook: SayBook = say;
export const invitationWords: InvitationWords = invitationInEnglish;
export const inviteWords: InviteWords = inviteInEnglish;
export const paperWords: PaperWords = paperInEnglish;
export const pouringWords: PouringWords = pouringInEnglish;
export const recapWords: RecapWords = recapInEnglish;

/** The sentence that says what to do about a failure. */
export function sentenceFor(code: FailureCode): string {
  if (code === 'no-answer') return words.noAnswer;
  return code === 'wrong-key' ? words.key.wrong : refusals[code];
}

const clockFace = new Intl.DateTimeFormat(undefined, { hour: 'numeric', minute: '2-digit' });
const day = new Intl.DateTimeFormat(undefined, {
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
