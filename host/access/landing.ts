import type { Route } from '../route.ts';
import type { KeyLink } from './key-link.ts';

/** Where a link with a key leads. */
export const landingOf = (link: KeyLink): Route =>
  link.to === 'house'
    ? { page: 'home' }
    : { page: link.to === 'helper' ? 'help' : 'doors', tasting: link.tasting };
