import { later } from '../../shared/ui/later.ts';

/** What the plan fetches after itself: the pours come first. */
export const furtherPart = later(() => import('./parts/further-parts.ts'));
