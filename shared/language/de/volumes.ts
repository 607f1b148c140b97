// German, not yet reviewed by a native speaker.
import type { volumeUnits as english } from '../en/volumes.ts';

export const volumeUnits: typeof english = {
  ml: 'ml',
  'fl-oz-us': 'fl\u00a0oz',
  'fl-oz-imperial': 'fl\u00a0oz',
};
