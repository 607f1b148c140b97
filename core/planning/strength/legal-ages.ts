import type { Plan } from '../../tasting.ts';
import type { SourceId } from '../figures/sources.ts';
import type { DrinkStandard } from './standard-drinks.ts';

/** One rule of one place. Laws change and differ by state: the host's local law decides, not this table. */
export interface LegalAge {
  readonly age: number;
  readonly drinks:
    | 'all'
    | 'wine and beer'
    | 'spirits'
    | 'up to 6 % vol'
    | 'above 6 % vol'
    | 'below 22 % vol'
    | 'from 22 % vol';
  readonly where: 'everywhere' | 'shops' | 'served';
  /** Parts of the country that the rule holds in, ISO 3166-2; the rest of the country where absent. */
  readonly regions?: readonly string[];
  readonly source: SourceId;
}

export type AgeCountry = Exclude<DrinkStandard, 'WHO'>;

const everywhere = (age: number, source: SourceId): LegalAge => ({
  age,
  drinks: 'all',
  where: 'everywhere',
  source,
});

export const legalAges: Readonly<Record<AgeCountry, readonly LegalAge[]>> = {
  US: [everywhere(21, 'us-age')],
  GB: [everywhere(18, 'gb-age')],
  IE: [everywhere(18, 'ie-age')],
  AU: [everywhere(18, 'au-age')],
  NZ: [everywhere(18, 'nz-age')],
  CA: [
    { ...everywhere(18, 'ca-age'), regions: ['CA-AB', 'CA-MB', 'CA-QC'] },
    { ...everywhere(19, 'ca-nunavut-age'), regions: ['CA-NU'] },
    everywhere(19, 'ca-age'),
  ],
  FR: [everywhere(18, 'fr-age')],
  DE: [
    { age: 16, drinks: 'wine and beer', where: 'everywhere', source: 'de-age' },
    { age: 18, drinks: 'spirits', where: 'everywhere', source: 'de-age' },
  ],
  AT: [
    { age: 16, drinks: 'wine and beer', where: 'everywhere', source: 'at-age' },
    { age: 18, drinks: 'spirits', where: 'everywhere', source: 'at-age' },
  ],
  DK: [
    { age: 16, drinks: 'up to 6 % vol', where: 'shops', source: 'dk-age' },
    { age: 18, drinks: 'above 6 % vol', where: 'shops', source: 'dk-age' },
    { age: 18, drinks: 'all', where: 'served', source: 'dk-age' },
  ],
  SE: [
    { age: 20, drinks: 'all', where: 'shops', source: 'se-age' },
    { age: 18, drinks: 'all', where: 'served', source: 'se-age' },
  ],
  JP: [everywhere(20, 'jp-age')],
  CH: [
    { ...everywhere(18, 'ch-age'), regions: ['CH-TI'] },
    { age: 16, drinks: 'wine and beer', where: 'everywhere', source: 'ch-age' },
    { age: 18, drinks: 'spirits', where: 'everywhere', source: 'ch-age' },
  ],
  NL: [everywhere(18, 'nl-age')],
  IT: [everywhere(18, 'it-age')],
  ES: [everywhere(18, 'es-age')],
  NO: [
    { age: 18, drinks: 'below 22 % vol', where: 'everywhere', source: 'no-age' },
    { age: 20, drinks: 'from 22 % vol', where: 'everywhere', source: 'no-age' },
  ],
};

export const isAgeCountry = (code: string | undefined): code is AgeCountry =>
  code !== undefined && Object.hasOwn(legalAges, code);

/** As `ageToAsk`, for a plan; null where its country is not known, or nothing that it pours holds alcohol. */
export const minimumAge = ({ lawOf, pours }: Pick<Plan, 'lawOf' | 'pours'>): number | null =>
  isAgeCountry(lawOf) && !(pours.length > 0 && pours.every(({ abv }) => abv === 0))
    ? ageToAsk(lawOf).age
    : null;

/**
 * The age to ask guests for: the highest that any rule of the country names, so that whoever is admitted is
 * old enough for every drink and every part of the country.
 */
export function ageToAsk(country: AgeCountry): LegalAge {
  return legalAges[country].reduce((highest, rule) => (rule.age > highest.age ? rule : highest));
}
