import { type ConsentWords, consentWords } from '../../shared/language/en/consents.ts';

/** What is asked before anything leaves a guest's page: it comes with the parts that ask it. */
export const words: ConsentWords = consentWords;
