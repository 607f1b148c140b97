import { type GuessWords, guessWords } from '../../shared/language/en/guess.ts';

/** The words of guesses, apart from those of the first screens: they come with them. */
export const words: GuessWords = guessWords;
