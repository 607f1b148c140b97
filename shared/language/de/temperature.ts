// German, not yet reviewed by a native speaker.
import type { temperatureSource as english, Range } from '../en/temperature.ts';

export const temperatures = ({ minC, maxC }: Range): string => `${minC}–${maxC}\u00A0°C`;

export const serveAt = (range: Range): string => `mit ${temperatures(range)} servieren`;

export const temperatureSource: typeof english = {
  OIV: 'Quelle: OIV-Norm für Wein- und Spirituosenwettbewerbe, 332A/2009, Artikel 10.',
  trade: 'In der Branche üblich, ohne Quelle.',
};
