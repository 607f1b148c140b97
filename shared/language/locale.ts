/**
 * How dates, times and numbers are written on a page in this language: as this device's own variant of it (`en-GB`) where
 * it has one, so that hours, commas and the order of a date are what its owner is used to; else as the language itself
 * does. BCP 47 tags.
 */
export function localeFor(language: string, preferred: readonly string[] = devicePrefers()): string {
  const [base] = language.split('-');
  const variant = preferred.find((each) => each === language || each.startsWith(`${language}-`));
  return variant ?? preferred.find((each) => each.split('-')[0] === base) ?? language;
}

/** Where only one region of all measures drink by US fluid ounces, a plan begins with those. */
export const measuresInUsOunces = (preferred: readonly string[] = devicePrefers()): boolean =>
  /^[a-z]{2,3}(-[A-Za-z]{4})?-US\b/.test(preferred[0] ?? '');

/** Outside a browser there is nobody to prefer anything. */
const devicePrefers = (): readonly string[] => globalThis.navigator?.languages ?? [];
