import type { DrinkStandard } from '../../../core/planning/strength/standard-drinks.ts';

/** What several of a country's standard drinks are called, in English. */
export const standards: Record<DrinkStandard, string> = {
  US: 'US standard drinks',
  GB: 'UK units',
  AU: 'Australian standard drinks',
  NZ: 'New Zealand standard drinks',
  IE: 'Irish standard drinks',
  CA: 'Canadian standard drinks',
  FR: 'French standard glasses',
  DK: 'Danish standard drinks',
  AT: 'Austrian standard drinks',
  JP: 'Japanese units',
  DE: 'German standard glasses',
  CH: 'Swiss standard glasses',
  NL: 'Dutch standard glasses',
  IT: 'Italian units',
  ES: 'Spanish standard drinks',
  NO: 'Norwegian units',
  SE: 'Swedish standard glasses',
  WHO: 'drinks of 10\u00a0g',
};

/** And one of them. */
export const oneStandard: Record<DrinkStandard, string> = {
  US: 'US standard drink',
  GB: 'UK unit',
  AU: 'Australian standard drink',
  NZ: 'New Zealand standard drink',
  IE: 'Irish standard drink',
  CA: 'Canadian standard drink',
  FR: 'French standard glass',
  DK: 'Danish standard drink',
  AT: 'Austrian standard drink',
  JP: 'Japanese unit',
  DE: 'German standard glass',
  CH: 'Swiss standard glass',
  NL: 'Dutch standard glass',
  IT: 'Italian unit',
  ES: 'Spanish standard drink',
  NO: 'Norwegian unit',
  SE: 'Swedish standard glass',
  WHO: 'drink of 10\u00a0g',
};
