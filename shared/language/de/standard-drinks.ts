// German, not yet reviewed by a native speaker.
import type { DrinkStandard } from '../../../core/planning/strength/standard-drinks.ts';

/** What several of a country's standard drinks are called, in German. */
export const standards: Record<DrinkStandard, string> = {
  US: 'Standardgläser (USA)',
  GB: 'britische Einheiten',
  AU: 'Standardgläser (Australien)',
  NZ: 'Standardgläser (Neuseeland)',
  IE: 'Standardgläser (Irland)',
  CA: 'Standardgläser (Kanada)',
  FR: 'Standardgläser (Frankreich)',
  DK: 'Standardgläser (Dänemark)',
  AT: 'Standardgläser (Österreich)',
  JP: 'japanische Einheiten',
  DE: 'Standardgläser (Deutschland)',
  CH: 'Standardgläser (Schweiz)',
  NL: 'Standardgläser (Niederlande)',
  IT: 'Standardgläser (Italien)',
  ES: 'Standardgläser (Spanien)',
  NO: 'norwegische Einheiten',
  SE: 'Standardgläser (Schweden)',
  WHO: 'Gläser zu 10\u00a0g',
};

/** And one of them. */
export const oneStandard: Record<DrinkStandard, string> = {
  US: 'Standardglas (USA)',
  GB: 'britische Einheit',
  AU: 'Standardglas (Australien)',
  NZ: 'Standardglas (Neuseeland)',
  IE: 'Standardglas (Irland)',
  CA: 'Standardglas (Kanada)',
  FR: 'Standardglas (Frankreich)',
  DK: 'Standardglas (Dänemark)',
  AT: 'Standardglas (Österreich)',
  JP: 'japanische Einheit',
  DE: 'Standardglas (Deutschland)',
  CH: 'Standardglas (Schweiz)',
  NL: 'Standardglas (Niederlande)',
  IT: 'Standardglas (Italien)',
  ES: 'Standardglas (Spanien)',
  NO: 'norwegische Einheit',
  SE: 'Standardglas (Schweden)',
  WHO: 'Glas zu 10\u00a0g',
};
