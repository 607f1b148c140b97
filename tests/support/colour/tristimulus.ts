import { d65, firstWavelengthNm, wavelengthStepNm, xBar, yBar, zBar } from './cie-1931.ts';

/** The share of light let through at a wavelength in nm: 1 is an empty glass, 0 is opaque. */
export type Transmittance = (wavelengthNm: number) => number;

/** The decadic absorbance of one centimetre of a liquid at a wavelength in nm (Beer-Lambert law). */
export type AbsorbancePerCm = (wavelengthNm: number) => number;

/** CIE 1931 tristimulus values, scaled so that Y = 1 for the light that passes an empty glass. */
export interface Tristimulus {
  readonly X: number;
  readonly Y: number;
  readonly Z: number;
}

/** What a depth of a liquid lets through: 10^(-A l). Path in cm; throws a RangeError on a negative one. */
export function throughDepth(absorbance: AbsorbancePerCm, pathCm: number): Transmittance {
  if (!(pathCm >= 0) || pathCm === Number.POSITIVE_INFINITY) {
    throw new RangeError('The depth of the drink must be a length of 0 cm or more.');
  }
  return (wavelengthNm) => 10 ** (-absorbance(wavelengthNm) * pathCm);
}

const whiteY = yBar.reduce((sum, y, index) => sum + y * (d65[index] ?? 0), 0);

/**
 * The colour of daylight (D65) seen through a liquid by the 1931 2° observer: sums at 5 nm, 380 to 780 nm.
 * Source: CIE 15, Colorimetry.
 */
export function tristimulusUnderD65(transmittance: Transmittance): Tristimulus {
  let X = 0;
  let Y = 0;
  let Z = 0;
  d65.forEach((power, index) => {
    const light = power * transmittance(firstWavelengthNm + index * wavelengthStepNm);
    X += light * (xBar[index] ?? 0);
    Y += light * (yBar[index] ?? 0);
    Z += light * (zBar[index] ?? 0);
  });
  return { X: X / whiteY, Y: Y / whiteY, Z: Z / whiteY };
}

/** The white that everything is judged against: daylight through an empty glass. */
export const d65White: Tristimulus = tristimulusUnderD65(() => 1);

/** CIE 1931 chromaticity. Black has none: it is given the white's, so that no NaN leaves this file. */
export function chromaticity(colour: Tristimulus): { readonly x: number; readonly y: number } {
  const sum = colour.X + colour.Y + colour.Z;
  return sum > 0 ? { x: colour.X / sum, y: colour.Y / sum } : chromaticity(d65White);
}
