import { type AbsorbancePerCm, throughDepth, tristimulusUnderD65 } from './tristimulus.ts';

/**
 * The colour of beer by its published scales. Both measure the absorbance A430 of 1 cm at 430 nm:
 * SRM = 12.7 A430, EBC = 25 A430. Sources: ASBC Beer-10, EBC 9.6.
 */
const srmPerA430 = 12.7;
const ebcPerA430 = 25;

export const srmFromA430 = (a430: number): number => srmPerA430 * a430;
export const a430FromSrm = (srm: number): number => srm / srmPerA430;
/** Throws a RangeError where SRM is negative or no number. */
export const srmToEbc = (srm: number): number => a430FromSrm(aColour(srm)) * ebcPerA430;
/** Throws a RangeError where EBC is negative or no number. */
export const ebcToSrm = (ebc: number): number => srmFromA430(aColour(ebc) / ebcPerA430);

function aColour(value: number): number {
  if (value >= 0 && value < Number.POSITIVE_INFINITY) return value;
  throw new RangeError('A beer colour must be a number of 0 or more.');
}

/** Degrees Lovibond to SRM, a line fitted to malts (value from memory). Below 0.56 °L it is not valid: 0. */
export const lovibondToSrm = (lovibond: number): number => Math.max(0, 1.3546 * lovibond - 0.76);

/** Two falling exponentials from 430 nm: shares (1 in sum) and the wavelengths in nm over which each falls by e. */
export type BeerSpectrum = readonly [share1: number, fall1Nm: number, share2: number, fall2Nm: number];

/**
 * The mean spectrum of 99 beers. Source: A. J. deLange, Color, in C. Bamforth (ed.), Brewing Materials and
 * Processes, Elsevier 2016, pp. 199-249.
 */
export const averageBeer: BeerSpectrum = [0.02465, 17.591, 0.97535, 82.122];

/** Throws a RangeError where SRM is negative or no number. */
export function beerAbsorbance(srm: number, spectrum: BeerSpectrum = averageBeer): AbsorbancePerCm {
  aColour(srm);
  const [share1, fall1, share2, fall2] = spectrum;
  return (wavelengthNm) => {
    const beyond = wavelengthNm - 430;
    return a430FromSrm(srm) * (share1 * Math.exp(-beyond / fall1) + share2 * Math.exp(-beyond / fall2));
  };
}

/** The share of light (0 to 1) that a depth of an average beer lets through at a wavelength. */
export function beerTransmittance(srm: number, pathCm: number, wavelengthNm: number): number {
  return throughDepth(beerAbsorbance(srm), pathCm)(wavelengthNm);
}

/** The tristimulus values of daylight through a depth of beer. */
export const beerColour = (srm: number, pathCm: number, spectrum: BeerSpectrum = averageBeer) =>
  tristimulusUnderD65(throughDepth(beerAbsorbance(srm, spectrum), pathCm));
