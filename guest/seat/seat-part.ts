import { MySeat } from './my-seat.tsx';
import { TryTone } from './try-tone.tsx';

/** What a guest may change about their own place. */
export const seatPages = { MySeat, TryTone };
