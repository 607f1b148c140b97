import { type AbsorbancePerCm, throughDepth, tristimulusUnderD65 } from './tristimulus.ts';

/**
 * The white, rosé and red ranges of wine, a stated model of three bands, each given by the absorbance of 1 cm
 * that it adds at its own wavelength:
 *
 * - `yellow` at 420 nm: flavonols and what browns with age, a fall by e every 60 nm;
 * - `red` at 520 nm: the red form of grape pigment, a bell of standard deviation 42 nm;
 * - `blue` at 620 nm: its blue form in young wine, a bell of standard deviation 38 nm.
 *
 * The three wavelengths are those at which wine colour is measured (OIV-MA-AS2-07B: intensity
 * A420 + A520 + A620, hue A420/A520). Widths are this model's own, chosen so that readings of young and old
 * wines come out in the usual range; it draws swatches and measures no wine.
 */
export interface WineColour {
  readonly yellow: number;
  readonly red: number;
  readonly blue: number;
}

const bell = (wavelengthNm: number, centre: number, deviation: number) =>
  Math.exp(-(((wavelengthNm - centre) / deviation) ** 2) / 2);

/** Throws a RangeError where a band is negative or no number. */
export function wineAbsorbance({ yellow, red, blue }: WineColour): AbsorbancePerCm {
  if (![yellow, red, blue].every((band) => band >= 0 && Number.isFinite(band))) {
    throw new RangeError('Each band of a wine colour must be an absorbance of 0 or more.');
  }
  return (wavelengthNm) =>
    yellow * Math.exp(-(wavelengthNm - 420) / 60) +
    red * bell(wavelengthNm, 520, 42) +
    blue * bell(wavelengthNm, 620, 38);
}

export interface WineReadings {
  readonly a420: number;
  readonly a520: number;
  readonly a620: number;
  /** A420 + A520 + A620 at 1 cm. */
  readonly intensity: number;
  /** A420/A520: low is violet, high is brick and brown. */
  readonly hue: number;
}

/** What a laboratory would read from the model's wine at 1 cm. Source: OIV-MA-AS2-07B. */
export function wineReadings(colour: WineColour): WineReadings {
  const absorbance = wineAbsorbance(colour);
  const [a420, a520, a620] = [absorbance(420), absorbance(520), absorbance(620)];
  return { a420, a520, a620, intensity: a420 + a520 + a620, hue: a520 > 0 ? a420 / a520 : 0 };
}

/** The tristimulus values of daylight through a depth of wine. */
export const wineColour = (colour: WineColour, pathCm: number) =>
  tristimulusUnderD65(throughDepth(wineAbsorbance(colour), pathCm));
