import { refusals } from '../../shared/language/en/refusals.ts';
import { surveyWords } from '../../shared/language/en/survey.ts';
import type { RefusalCode } from '../../shared/wire/protocol.ts';

/** What every page before the evening says while it looks for the tasting of its link. */
export const doorWords = surveyWords;

export const refusalSentence = (code: string): string => refusals[code as RefusalCode] ?? doorWords.noAnswer;
