import { type AbvPercent, abvPercent } from '../../units.ts';
import { requireStrength } from '../figures/figure-errors.ts';

/**
 * The part of the general formula of OIML R 22 (1975) that counts at 20 °C, the temperature at which strength is
 * declared there and in the European Union; the same numbers stand in Council Directive 76/766/EEC, annex.
 */
const densityCoefficients = [
  998.201_23, -192.976_949_5, 389.123_895_8, -1668.103_923, 13_522.154_41, -88_292.783_88, 306_287.404_2,
  -613_838.123_4, 747_017.299_8, -547_846.135_4, 223_446.033_4, -39_032.854_26,
] as const;

/** Density at 20 °C, kg/m3, of ethanol and water; `fraction` is mass of ethanol over mass of the whole, 0 to 1. */
export const densityOfMixture = (fraction: number): number =>
  densityCoefficients.reduceRight((sum, coefficient) => sum * fraction + coefficient, 0);

/** Strength by volume at 20 °C: 100 p rho(p) / rho(1), with p the mass fraction, 0 to 1. */
export const abvFromMassFraction = (fraction: number): AbvPercent =>
  abvPercent((100 * fraction * densityOfMixture(fraction)) / densityOfMixture(1));

/**
 * Inverse of abvFromMassFraction: halving until the two ends are neighbours, which needs no derivative and cannot
 * run away.
 * @throws FigureOutOfRange for a strength outside 0..100.
 */
export function massFractionFromAbv(strength: AbvPercent): number {
  requireStrength(strength);
  if (strength === 0 || strength === 100) return strength / 100;
  let low = 0;
  let high = 1;
  for (;;) {
    const middle = (low + high) / 2;
    // Near 0 the neighbours are a thousand halvings away and all the same to a liquid.
    if (middle <= low || middle >= high || high < Number.EPSILON) return high;
    if (abvFromMassFraction(middle) < strength) low = middle;
    else high = middle;
  }
}

/** Density at 20 °C, kg/m3. @throws FigureOutOfRange as massFractionFromAbv. */
export const densityFromAbv = (strength: AbvPercent): number =>
  densityOfMixture(massFractionFromAbv(strength));
