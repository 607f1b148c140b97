import { lazyPart } from '../../shared/page/lazy-part.ts';

/** What the plan fetches after itself: the pours come first. */
export const furtherPart = lazyPart(() => import('./parts/further-parts.ts'));
