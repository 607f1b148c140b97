import { lazyPart } from '../../../shared/page/lazy-part.ts';

/** The cards of the pours and the desk of the room's screens: not needed before the first talk. */
export const storyPart = lazyPart(() => import('./story-pages.ts'));
