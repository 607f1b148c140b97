/** Sheets that homes and offices print on, in mm, upright. ISO 216 (A4); Letter is 8.5 x 11 in. */
export const paperSizes = {
  A4: { widthMm: 210, heightMm: 297 },
  Letter: { widthMm: 215.9, heightMm: 279.4 },
} as const;
export type PaperSize = keyof typeof paperSizes;

/** Countries where Letter is what a printer holds (common practice, no source). */
const letterCountries = new Set(['US', 'CA', 'MX', 'PH', 'CL', 'CO', 'VE', 'CR', 'GT', 'PA', 'DO', 'PR']);

/** By the plan's country, else by the region of the browser's language. */
export function usualPaper(country: string | undefined, language: string): PaperSize {
  const region = country ?? /[-_]([A-Z]{2})\b/.exec(language)?.[1];
  return region !== undefined && letterCountries.has(region) ? 'Letter' : 'A4';
}
