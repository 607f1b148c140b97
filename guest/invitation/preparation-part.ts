import { Preparation } from './preparation.tsx';

/** What is read in the days before; on the evening itself no phone needs it. */
export const preparationPages = { Preparation };
