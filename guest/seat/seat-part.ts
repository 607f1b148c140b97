import { MySeat } from './my-seat.tsx';

/** What a guest may change about their own place. */
export const seatPages = { MySeat };
