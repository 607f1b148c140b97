import { vocabularyOf } from '../../core/planning/pour-list/list-words.ts';
import { germanListWords } from './de.ts';
import { englishListWords } from './en.ts';
import { loanListWords } from './loan.ts';

/**
 * A list is read in any language that is known here, whichever the page is in: a host in Graz pastes what a merchant in
 * Leith has sent.
 */
export const listVocabulary = vocabularyOf([englishListWords, germanListWords, loanListWords]);
