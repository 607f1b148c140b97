import { lazyPart } from '../../../shared/page/lazy-part.ts';

/** Fetched where a plan has guests at home. */
export const callPart = lazyPart(() => import('./call-panel.tsx'));
