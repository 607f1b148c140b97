import { AtHome } from '../call/at-home.tsx';
import { GlassPage } from './glass-page.tsx';

/** What is fetched while the line to the room opens: the screen that is locked to it. */
export const glassPages = { GlassPage, AtHome };
