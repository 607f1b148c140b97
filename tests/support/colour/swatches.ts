import { beerColour } from './beer-colour.ts';
import { textOnSwatch } from './contrast.ts';
import { caskColour, spiritColour } from './spirit-colour.ts';
import { toScreen } from './srgb.ts';
import type { Tristimulus } from './tristimulus.ts';
import { type WineColour, wineColour } from './wine-colour.ts';

/** A step of a drink's colour range as a screen shows it on neutral white. */
export interface Swatch {
  /** Code of the word that goes with it: a colour is never shown without its word. */
  readonly word: string;
  readonly hex: string;
  /** The colour of text that reads on it. */
  readonly text: 'white' | 'black';
  /** Which range of wine it belongs to. */
  readonly range?: 'white' | 'rose' | 'red';
}

/**
 * How deep one looks into a usual tasting glass, in cm, held against a white ground (common practice, no source):
 * through the whole bowl, but for red wine at the thin rim of the tilted glass.
 */
const lookedThroughCm = { spirit: 4, beer: 5, white: 5, rose: 4, red: 0.5 } as const;

/** Absorbance of 1 cm at 430 nm, from unaged to the darkest casks: steps of about equal difference to the eye. */
const spiritSteps: readonly (readonly [word: string, a430: number])[] = [
  ['clear', 0],
  ['breath', 0.012],
  ['ivory', 0.03],
  ['hay', 0.06],
  ['butter', 0.1],
  ['light-honey', 0.16],
  ['honey', 0.24],
  ['brass', 0.34],
  ['marmalade', 0.47],
  ['amber', 0.64],
  ['copper', 0.87],
  ['fox', 1.18],
  ['strong-tea', 1.6],
];

/** In SRM. Words that spirits share stand for the same colour. */
const beerSteps: readonly (readonly [word: string, srm: number])[] = [
  ['light-honey', 1.5],
  ['honey', 2.5],
  ['brass', 3.5],
  ['marmalade', 5],
  ['amber', 7],
  ['copper', 9],
  ['cinnamon', 12],
  ['fox', 15],
  ['strong-tea', 19],
  ['mahogany', 24],
  ['coffee', 31],
  ['black', 45],
];

/** Bands of the wine model; within each range from young to old or from pale to deep. */
const wineSteps: readonly (readonly [word: string, range: 'white' | 'rose' | 'red', bands: WineColour])[] = [
  ['breath', 'white', { yellow: 0.015, red: 0, blue: 0.002 }],
  ['green-grape', 'white', { yellow: 0.045, red: 0, blue: 0.005 }],
  ['butter', 'white', { yellow: 0.1, red: 0, blue: 0.002 }],
  ['light-honey', 'white', { yellow: 0.18, red: 0.004, blue: 0 }],
  ['gold', 'white', { yellow: 0.3, red: 0.012, blue: 0 }],
  ['dried-apricot', 'white', { yellow: 0.54, red: 0.045, blue: 0 }],
  ['onion-skin', 'rose', { yellow: 0.09, red: 0.03, blue: 0 }],
  ['petal', 'rose', { yellow: 0.05, red: 0.05, blue: 0.002 }],
  ['pink', 'rose', { yellow: 0.07, red: 0.11, blue: 0.004 }],
  ['raspberry', 'rose', { yellow: 0.11, red: 0.26, blue: 0.02 }],
  ['violet', 'red', { yellow: 2, red: 6.8, blue: 1.9 }],
  ['black-cherry', 'red', { yellow: 2.4, red: 6.4, blue: 1 }],
  ['ruby', 'red', { yellow: 2.6, red: 4.8, blue: 0.45 }],
  ['pomegranate', 'red', { yellow: 4.2, red: 4.4, blue: 0.6 }],
  ['brick', 'red', { yellow: 5.2, red: 3.2, blue: 0.5 }],
  ['rust', 'red', { yellow: 5.6, red: 1.9, blue: 0.5 }],
];

function swatch(word: string, colour: Tristimulus): Swatch {
  const { hex } = toScreen(colour);
  return { word, hex, text: textOnSwatch(hex).better };
}

export const spiritSwatches: readonly Swatch[] = spiritSteps.map(([word, a430]) =>
  swatch(word, spiritColour(caskColour(a430), lookedThroughCm.spirit)),
);

export const beerSwatches: readonly Swatch[] = beerSteps.map(([word, srm]) =>
  swatch(word, beerColour(srm, lookedThroughCm.beer)),
);

export const wineSwatches: readonly Swatch[] = wineSteps.map(([word, range, bands]) => ({
  ...swatch(word, wineColour(bands, lookedThroughCm[range])),
  range,
}));

/** The swatch of a beer whose colour is known in SRM: the step nearest by ratio. Throws a RangeError below 0. */
export function nearestBeerSwatch(srm: number): Swatch | undefined {
  if (!(srm >= 0)) throw new RangeError('A beer colour must be a number of 0 SRM or more.');
  const away = (step: number) => Math.abs(Math.log((srm + 0.1) / (step + 0.1)));
  const index = beerSteps.reduce(
    (best, [, step], each) => (away(step) < away(beerSteps[best]?.[1] ?? 0) ? each : best),
    0,
  );
  return beerSwatches[index];
}
