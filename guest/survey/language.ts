import { type SurveyWords, surveyWords } from '../../shared/language/en/survey.ts';
import type { Question } from './answer-storage.ts';

/** The one place where the language of this page is chosen. */
export const words: SurveyWords = surveyWords;

export const questions = Object.keys(words.questions) as readonly Question[];
