import { type AbsorbancePerCm, throughDepth, tristimulusUnderD65 } from './tristimulus.ts';

/**
 * The amber range of spirits, a stated model: what cask and caramel colour dissolve into a spirit absorbs less
 * and less from violet to red, close to a straight line of log absorbance over wavelength. Two parameters:
 *
 * - `a430`, absorbance of 1 cm at 430 nm: how much colour there is;
 * - `hueIndex`, 10 log10(A510/A610), the hue index used for caramel colours (J. Linner; from memory, where
 *   usual values are about 4 to 7.5): high is yellow, low is red-brown.
 *
 * A(lambda) = a430 10^(-(hueIndex/10) (lambda - 430)/100). The average beer falls the same way with an index near 5.3.
 */
export interface SpiritColour {
  readonly a430: number;
  readonly hueIndex: number;
}

/** Throws a RangeError where there is less than no colour, or no number. */
export function spiritAbsorbance({ a430, hueIndex }: SpiritColour): AbsorbancePerCm {
  if (!(a430 >= 0 && Number.isFinite(a430) && Number.isFinite(hueIndex))) {
    throw new RangeError('The colour of a spirit needs an absorbance of 0 or more and a hue index.');
  }
  return (wavelengthNm) => a430 * 10 ** ((-hueIndex * (wavelengthNm - 430)) / 1000);
}

/** How much colour a wavelength pair shows: 10 log10(A510/A610), the index that the model is built on. */
export function hueIndexOf(absorbance: AbsorbancePerCm): number {
  return 10 * Math.log10(absorbance(510) / absorbance(610));
}

/**
 * The more colour a spirit has drawn from its cask, the browner it is, by this model's own rule: the index falls
 * from 6.6 for a trace of colour to 4.6 for the darkest, in step with the logarithm of the absorbance.
 */
export function caskColour(a430: number): SpiritColour {
  const palest = 0.02;
  const darkest = 2.5;
  const share = Math.log(Math.max(a430, palest) / palest) / Math.log(darkest / palest);
  return { a430, hueIndex: 6.6 - 2 * Math.min(1, share) };
}

/** The tristimulus values of daylight through a depth of spirit. */
export const spiritColour = (colour: SpiritColour, pathCm: number) =>
  tristimulusUnderD65(throughDepth(spiritAbsorbance(colour), pathCm));
