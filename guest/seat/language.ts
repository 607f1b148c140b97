import { type SeatWords, seatWords as seatInEnglish } from '../../shared/language/en/seat.ts';

/** The words about the own place, apart from those of the first screens: they come with it. */
export const seatWords: SeatWords = seatInEnglish;
