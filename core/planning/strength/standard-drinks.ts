import { type Grams, grams, type Millilitres, millilitres } from '../../units.ts';
import { requireAmount, requireBetween } from '../figures/figure-errors.ts';
import { figure, type Reckoning, step } from '../figures/reckoning.ts';
import type { SourceId } from '../figures/sources.ts';
import { ETHANOL_DENSITY, type EthanolAmount } from './ethanol.ts';

/** Countries by ISO 3166-1 alpha-2, and the drink of the World Health Organization's questionnaire. */
export type DrinkStandard =
  | 'US'
  | 'GB'
  | 'AU'
  | 'NZ'
  | 'IE'
  | 'CA'
  | 'FR'
  | 'DK'
  | 'AT'
  | 'JP'
  | 'DE'
  | 'CH'
  | 'NL'
  | 'IT'
  | 'ES'
  | 'NO'
  | 'SE'
  | 'WHO';

/** Some countries count grams, others a volume of pure ethanol; the difference shows in the third digit. */
export type StandardDrink =
  | { readonly by: 'mass'; readonly ethanol: Grams; readonly source: SourceId }
  | { readonly by: 'volume'; readonly ethanol: Millilitres; readonly source: SourceId };

const byMass = (value: number, source: SourceId): StandardDrink => ({
  by: 'mass',
  ethanol: grams(value),
  source,
});

export const standardDrinks: Readonly<Record<DrinkStandard, StandardDrink>> = {
  US: byMass(14, 'us-drink'),
  GB: { by: 'volume', ethanol: millilitres(10), source: 'uk-guideline' },
  AU: byMass(10, 'au-guideline'),
  NZ: byMass(10, 'anz-food-standard'),
  IE: byMass(10, 'drinks-of-37-countries'),
  CA: byMass(13.45, 'ca-guidance'),
  FR: byMass(10, 'drinks-of-37-countries'),
  DK: byMass(12, 'drinks-of-37-countries'),
  AT: byMass(20, 'drinks-of-37-countries'),
  JP: byMass(19.75, 'drinks-of-37-countries'),
  // Germany says 10 to 12 g and draws its lines in glasses of 12 g; Norway says 12 to 15 g, most often 12.
  DE: byMass(12, 'de-guidance'),
  CH: byMass(10, 'ch-drink'),
  NL: byMass(10, 'nl-guideline'),
  IT: byMass(12, 'it-guideline'),
  ES: byMass(10, 'es-guideline'),
  NO: byMass(12, 'no-drink'),
  SE: byMass(12, 'se-guideline'),
  WHO: byMass(10, 'audit'),
};

/** The mass of ethanol in one standard drink of a country. */
export function gramsPerDrink(standard: DrinkStandard): Grams {
  const drink = standardDrinks[standard];
  return drink.by === 'mass' ? drink.ethanol : grams(drink.ethanol * ETHANOL_DENSITY);
}

/**
 * Standard drinks of any size by mass.
 * @throws FigureOutOfRange for a negative mass or a drink outside 0.1..1000 g.
 */
export function drinksOfMass(mass: Grams, perDrink: Grams): number {
  requireAmount('mass', mass);
  requireBetween('mass', perDrink, 0.1, 1000);
  return mass / perDrink;
}

export interface DrinkCount {
  readonly drinks: number;
  readonly reckoning: Reckoning;
}

/**
 * An amount of ethanol in the standard drinks of a country.
 * @throws FigureOutOfRange for a negative amount.
 */
export function standardDrinksIn(ethanol: EthanolAmount, standard: DrinkStandard): DrinkCount {
  const drink = standardDrinks[standard];
  if (drink.by === 'mass') {
    const drinks = drinksOfMass(ethanol.mass, drink.ethanol);
    const inputs = { ethanol: figure(ethanol.mass, 'g'), perDrink: figure(drink.ethanol, 'g') };
    return {
      drinks,
      reckoning: [step('drinks-by-mass', inputs, figure(drinks, 'drinks'), drink.source)],
    };
  }
  requireAmount('volume', ethanol.volume);
  const drinks = ethanol.volume / drink.ethanol;
  const inputs = { ethanol: figure(ethanol.volume, 'mL'), perDrink: figure(drink.ethanol, 'mL') };
  return { drinks, reckoning: [step('drinks-by-volume', inputs, figure(drinks, 'drinks'), drink.source)] };
}
