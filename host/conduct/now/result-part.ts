import { lazyPart } from '../../../shared/page/lazy-part.ts';

/** What a result looks like is fetched behind the room's page, well before the first one is told. */
export const resultPart = lazyPart(() => import('./told-now.tsx'));
