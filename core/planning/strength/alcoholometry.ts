import {
  type AbvPercent,
  abvPercent,
  type DegreesCelsius,
  degreesCelsius,
  type KilogramsPerCubicMetre,
  kilogramsPerCubicMetre,
  type MassFraction,
  massFraction,
} from '../../units.ts';
import { FigureOutOfRange, requireBetween, requireStrength } from '../figures/figure-errors.ts';
import { A, B, C } from './oiml-r22-coefficients.ts';

/** The temperature at which strength by volume is declared in OIML R 22 and in the European Union. */
export const REFERENCE_TEMPERATURE: DegreesCelsius = degreesCelsius(20);

/** Horner's scheme; the first coefficient belongs to power 0. */
const polynomial = (coefficients: readonly number[], x: number): number =>
  coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);

function requireTemperature(temperature: DegreesCelsius): void {
  requireBetween('temperature', temperature, -20, 40);
}

/**
 * Density of an ethanol-water mixture, kg/m3. Source: OIML R 22 (1975), the general formula.
 * @throws FigureOutOfRange for a mass fraction outside 0..1 or a temperature outside -20..40 °C.
 */
export function densityFromMassFraction(
  fraction: MassFraction,
  temperature: DegreesCelsius = REFERENCE_TEMPERATURE,
): KilogramsPerCubicMetre {
  requireBetween('mass fraction', fraction, 0, 1);
  requireTemperature(temperature);
  const above20 = temperature - 20;
  const water = above20 * polynomial(B, above20);
  const mixed = C.map((row) => fraction * polynomial(row, fraction));
  return kilogramsPerCubicMetre(polynomial(A, fraction) + water + above20 * polynomial(mixed, above20));
}

/**
 * The x in 0..1 where an increasing function reaches the target: halving until the two ends are neighbours,
 * which needs no derivative and cannot run away.
 */
function whereReaches(increasing: (x: number) => number, target: number): number {
  let low = 0;
  let high = 1;
  for (;;) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) return high;
    if (increasing(middle) < target) low = middle;
    else high = middle;
    // Near 0 the neighbours are a thousand halvings away and all the same to a liquid.
    if (high < Number.EPSILON) return high;
  }
}

/**
 * Strength by volume of a mixture: 100 p rho(p, t) / rho(1, t), the volumes of mixture and ethanol both taken
 * at the given temperature (20 °C unless the law of the place counts at another, as the USA does at 60 °F).
 * @throws FigureOutOfRange as densityFromMassFraction.
 */
export function abvFromMassFraction(
  fraction: MassFraction,
  temperature: DegreesCelsius = REFERENCE_TEMPERATURE,
): AbvPercent {
  const pure = densityFromMassFraction(massFraction(1), temperature);
  return abvPercent((100 * fraction * densityFromMassFraction(fraction, temperature)) / pure);
}

/**
 * Inverse of abvFromMassFraction.
 * @throws FigureOutOfRange for a strength outside 0..100 or a temperature outside -20..40 °C.
 */
export function massFractionFromAbv(
  strength: AbvPercent,
  temperature: DegreesCelsius = REFERENCE_TEMPERATURE,
): MassFraction {
  requireStrength(strength);
  requireTemperature(temperature);
  if (strength === 0) return massFraction(0);
  if (strength === 100) return massFraction(1);
  const strengthAt = (fraction: number) => abvFromMassFraction(massFraction(fraction), temperature);
  return massFraction(whereReaches(strengthAt, strength));
}

/**
 * Density in kg/m3 at a temperature of a mixture whose strength by volume is declared at 20 °C.
 * @throws FigureOutOfRange as massFractionFromAbv.
 */
export const densityFromAbv = (
  strength: AbvPercent,
  temperature: DegreesCelsius = REFERENCE_TEMPERATURE,
): KilogramsPerCubicMetre => densityFromMassFraction(massFractionFromAbv(strength), temperature);

/** Tables print densities to 0.01 kg/m3, so the ends may be read as much outside the formula. */
const AS_PRINTED = 0.01;

/**
 * Inverse of densityFromMassFraction: density falls all the way from water to ethanol at every temperature.
 * @throws FigureOutOfRange for a density that no mixture has at that temperature.
 */
export function massFractionFromDensity(
  density: KilogramsPerCubicMetre,
  temperature: DegreesCelsius = REFERENCE_TEMPERATURE,
): MassFraction {
  const water = densityFromMassFraction(massFraction(0), temperature);
  const pure = densityFromMassFraction(massFraction(1), temperature);
  if (!(density > pure - AS_PRINTED && density < water + AS_PRINTED)) {
    throw new FigureOutOfRange(
      'density',
      density,
      `The density is ${density} kg/m3. At ${temperature} °C, give a number from ${pure.toFixed(2)} to ${water.toFixed(2)}.`,
    );
  }
  if (density >= water) return massFraction(0);
  if (density <= pure) return massFraction(1);
  const falling = (fraction: number) => -densityFromMassFraction(massFraction(fraction), temperature);
  return massFraction(whereReaches(falling, -density));
}

/**
 * Strength by volume at 20 °C of a mixture of known density, as an alcoholometer reads it.
 * @throws FigureOutOfRange as massFractionFromDensity.
 */
export const abvFromDensity = (
  density: KilogramsPerCubicMetre,
  temperature: DegreesCelsius = REFERENCE_TEMPERATURE,
): AbvPercent => abvFromMassFraction(massFractionFromDensity(density, temperature));

/**
 * Volumes of water that go into 100 volumes of a mixture, strength and all volumes at the given temperature.
 * With the strength itself they make more than 100: the surplus is the contraction. (27 CFR 30.66, Table 6.)
 * @throws FigureOutOfRange as massFractionFromAbv.
 */
export function waterInHundredVolumes(
  strength: AbvPercent,
  temperature: DegreesCelsius = REFERENCE_TEMPERATURE,
): number {
  const fraction = massFractionFromAbv(strength, temperature);
  const water = densityFromMassFraction(massFraction(0), temperature);
  return (100 * (1 - fraction) * densityFromMassFraction(fraction, temperature)) / water;
}
