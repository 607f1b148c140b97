import { type Grams, grams } from '../../units.ts';
import type { SourceId } from '../figures/sources.ts';
import type { AgeCountry } from './legal-ages.ts';
import { gramsPerDrink } from './standard-drinks.ts';

/**
 * What a country's own public body advises grown-ups who drink, as it draws it: for any one day, for each day, or for a
 * week. A daily habit is not one evening; no advice is a permission, none a target, none says anything about driving.
 */
export type NationalAdvice =
  | {
      readonly per: 'occasion' | 'day' | 'week';
      readonly women: Grams;
      readonly men: Grams;
      readonly source: SourceId;
    }
  /** The body names no number: it says to drink less. */
  | { readonly per: 'none'; readonly source: SourceId };

const inDrinks = (
  country: AgeCountry,
  per: 'occasion' | 'day' | 'week',
  women: number,
  men: number,
  source: SourceId,
): NationalAdvice => ({
  per,
  women: grams(women * gramsPerDrink(country)),
  men: grams(men * gramsPerDrink(country)),
  source,
});

export const nationalAdvice: Readonly<Record<AgeCountry, NationalAdvice>> = {
  US: { per: 'none', source: 'us-guideline' },
  GB: { per: 'week', women: grams(112), men: grams(112), source: 'uk-guideline' },
  IE: inDrinks('IE', 'week', 11, 17, 'ie-guideline'),
  AU: inDrinks('AU', 'occasion', 4, 4, 'au-guideline'),
  NZ: inDrinks('NZ', 'occasion', 4, 5, 'nz-guideline'),
  CA: inDrinks('CA', 'occasion', 2, 2, 'ca-guidance'),
  FR: inDrinks('FR', 'day', 2, 2, 'fr-guideline'),
  DK: inDrinks('DK', 'occasion', 4, 4, 'dk-guideline'),
  SE: inDrinks('SE', 'occasion', 3, 3, 'se-guideline'),
  AT: { per: 'day', women: grams(16), men: grams(24), source: 'at-guideline' },
  DE: inDrinks('DE', 'day', 1, 2, 'de-guidance'),
  CH: inDrinks('CH', 'day', 1, 2, 'ch-guidance'),
  NL: inDrinks('NL', 'day', 1, 1, 'nl-guideline'),
  IT: inDrinks('IT', 'day', 1, 2, 'it-guideline'),
  ES: inDrinks('ES', 'day', 1, 2, 'es-guideline'),
  NO: { per: 'none', source: 'no-drink' },
  JP: { per: 'day', women: grams(20), men: grams(20), source: 'jp-guideline' },
};
