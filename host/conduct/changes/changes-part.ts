import { lazyPart } from '../../../shared/page/lazy-part.ts';

/** What changes the plan while the evening runs: it is seldom needed, and brings the sheet of a pour with it. */
export const changesPart = lazyPart(() => import('./changes.ts'));
