import { MySeat } from './my-seat.tsx';
import { ToneTest } from './tone-test.tsx';

/** What a guest may change about their own place. */
export const seatPages = { MySeat, ToneTest };
