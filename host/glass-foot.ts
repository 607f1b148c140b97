import { keepText, keptText } from '../shared/page/device-storage.ts';

const place = 'quietpour.glass-foot';

/** A usual foot of a tasting glass in mm (common practice, no source). */
const usualMm = 60;

/** From the smallest foot of a glass to the largest, in mm. */
export const footRange = { least: 20, most: 150 } as const;

/** The foot of the host's glasses in mm: measured once, asked for on the plan and on paper, the same in both. */
export function readGlassFoot(): number {
  const mm = Number(keptText(place) ?? usualMm);
  return mm >= footRange.least && mm <= footRange.most ? mm : usualMm;
}

/** Where storage is refused it holds on the page on which it was written. */
export function keepGlassFoot(mm: number): void {
  if (mm >= footRange.least && mm <= footRange.most) keepText(place, String(mm));
}
