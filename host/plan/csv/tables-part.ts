import { later } from '../../../shared/ui/later.ts';

/** What reads a pasted list and writes one: not every plan comes from a list. */
export const tablesPart = later(() => import('./tables.ts'));
