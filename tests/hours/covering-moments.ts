import { locales, moments, zones } from '../support/moment.ts';

/**
 * So few moments that still every time of day meets every zone and every locale, and every zone every locale: 32 of 96.
 * A fault that needs all three at once is left to the draws of `npm test`, and to `--all`.
 *
 * @returns seeds, as MOMENT takes them
 */
export function coveringMoments(): readonly number[] {
  const times = moments.length / (zones.length * locales.length);
  return Array.from({ length: times }, (_, time) =>
    zones.map(
      (_zone, zone) => (time * zones.length + zone) * locales.length + ((time + zone) % locales.length),
    ),
  ).flat();
}
