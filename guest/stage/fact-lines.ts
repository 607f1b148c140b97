import type { GuestWords } from '../../shared/language/en/guest.ts';
import { serveAt } from '../../shared/language/en/temperature.ts';
import type { NamedPour } from '../../shared/wire/views.ts';

/** What may be known of a pour, in the order in which people ask. */
export function factLines(words: GuestWords, pour: NamedPour): string[] {
  return [
    pour.producer,
    pour.region,
    pour.country,
    pour.style,
    pour.ageYears === null ? null : words.pour.years(pour.ageYears),
    pour.vintage === null ? null : String(pour.vintage),
    pour.abv === null ? null : words.pour.abv(pour.abv),
    pour.cask,
    // A page that was kept on a phone may be older than this fact.
    pour.serve ? serveAt(pour.serve) : null,
  ].filter((fact) => fact !== null);
}
