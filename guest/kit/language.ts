import { type KitWords, kitWords } from '../../shared/language/en/kit.ts';
import { refusals } from '../../shared/language/en/refusals.ts';
import { surveyWords } from '../../shared/language/en/survey.ts';
import type { RefusalCode } from '../../shared/wire/protocol.ts';

/** The one place where the language of this page is chosen. */
export const words: KitWords = kitWords;
/** What every page before the evening says while it looks for the tasting of its link. */
export const doorWords = surveyWords;

export const refusalSentence = (code: string): string => refusals[code as RefusalCode] ?? doorWords.noAnswer;
