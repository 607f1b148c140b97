import { lazyPart } from '../../../shared/page/lazy-part.ts';

/** What to do when somebody is unwell: fetched ahead, like all that an evening may need. */
export const carePart = lazyPart(() => import('./care-sheet.tsx'));
