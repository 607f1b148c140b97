import { lazyPart } from '../../shared/page/lazy-part.ts';

/** All that a host says is in it, which only a phone at home needs. */
export const captionsPart = lazyPart(() => import('./host-says.tsx'));
