import { PourCards } from './pour-cards.tsx';
import { ScreenDesk } from './screen-desk.tsx';

/** What is fetched for the talk and the names. */
export const storyPages = { PourCards, ScreenDesk };
