import { lazyPart } from '../../../shared/page/lazy-part.ts';

/** What reads a pasted list and writes one: not every plan comes from a list. */
export const tablesPart = lazyPart(() => import('./tables.ts'));
