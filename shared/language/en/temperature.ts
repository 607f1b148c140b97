/** A range of temperatures, in °C. */
export interface Range {
  readonly minC: number;
  readonly maxC: number;
}

const fahrenheit = (celsius: number): number => Math.round((celsius * 9) / 5 + 32);

/** `10–12 °C (50–54 °F)` */
export const temperatures = ({ minC, maxC }: Range): string =>
  `${minC}–${maxC}\u00A0°C (${fahrenheit(minC)}–${fahrenheit(maxC)}\u00A0°F)`;

/** At what temperature a pour is served, in English. */
export const serveAt = (range: Range): string => `serve at ${temperatures(range)}`;

/** Who says so. */
export const temperatureSource = {
  OIV: 'Source: OIV standard for wine and spirit competitions, 332A/2009, article 10.',
  trade: 'Common practice, no source.',
};
