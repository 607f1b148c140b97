import { lazyPart } from '../../shared/page/lazy-part.ts';

/** For hosts who made a house by themselves. */
export const ownHousePart = lazyPart(() => import('./own-house.tsx'));
