import { BeforeTheEvening } from './before-the-evening.tsx';

/** What is read in the days before; on the evening itself no phone needs it. */
export const beforePages = { BeforeTheEvening };
