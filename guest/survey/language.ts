import { refusals } from '../../shared/language/en/refusals.ts';
import { type SurveyWords, surveyWords } from '../../shared/language/en/survey.ts';
import type { RefusalCode } from '../../shared/wire/protocol.ts';
import type { Question } from './answer-storage.ts';

/** The one place where the language of this page is chosen. */
export const words: SurveyWords = surveyWords;

export const questions = Object.keys(words.questions) as readonly Question[];

export const refusalSentence = (code: string): string => refusals[code as RefusalCode] ?? words.noAnswer;
