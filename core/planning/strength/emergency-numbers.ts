import type { SourceId } from '../figures/sources.ts';
import type { AgeCountry } from './legal-ages.ts';

/** Who is called when somebody is in danger: the number for an ambulance first, then others that lead there as well. */
export interface EmergencyNumbers {
  readonly numbers: readonly [string, ...string[]];
  readonly source: SourceId;
}

const one = (source: SourceId, ...numbers: readonly [string, ...string[]]): EmergencyNumbers => ({
  numbers,
  source,
});

export const emergencyNumbers: Readonly<Record<AgeCountry, EmergencyNumbers>> = {
  US: one('us-911', '911'),
  CA: one('us-911', '911'),
  GB: one('gb-999', '999', '112'),
  IE: one('eu-112', '112', '999'),
  AU: one('local-numbers', '000'),
  NZ: one('nz-111', '111'),
  JP: one('local-numbers', '119'),
  CH: one('ch-144', '144', '112'),
  NO: one('local-numbers', '113'),
  AT: one('eu-112', '112', '144'),
  FR: one('eu-112', '112', '15'),
  DE: one('eu-112', '112'),
  NL: one('eu-112', '112'),
  IT: one('eu-112', '112'),
  ES: one('eu-112', '112'),
  DK: one('eu-112', '112'),
  SE: one('eu-112', '112'),
};
