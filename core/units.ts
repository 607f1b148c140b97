/**
 * Quantities that must not be mixed. A brand costs nothing at run time; the only way in is the function of
 * the same name, so that every place where a plain number becomes a quantity can be found by searching.
 */
declare const unit: unique symbol;
type Quantity<Unit extends string> = number & { readonly [unit]: Unit };

/** Milliseconds since 1970-01-01T00:00:00Z, on the server's clock. */
export type EpochMs = Quantity<'epoch ms'>;
/** A length of time in milliseconds. */
export type DurationMs = Quantity<'ms'>;
/** A length of time in seconds, as hosts speak of it. */
export type Seconds = Quantity<'s'>;
/** A volume in millilitres at 20 °C. */
export type Millilitres = Quantity<'mL'>;
/** A mass in grams. */
export type Grams = Quantity<'g'>;
/** Alcoholic strength in per cent by volume at 20 °C: 40 means 40 % vol. */
export type AbvPercent = Quantity<'% vol'>;
/** Money as a whole number of a currency's smallest unit (cents, pence, yen). */
export type MinorUnits = Quantity<'minor units'>;

export const epochMs = (value: number): EpochMs => value as EpochMs;
export const durationMs = (value: number): DurationMs => value as DurationMs;
export const seconds = (value: number): Seconds => value as Seconds;
export const millilitres = (value: number): Millilitres => value as Millilitres;
export const grams = (value: number): Grams => value as Grams;
export const abvPercent = (value: number): AbvPercent => value as AbvPercent;
export const minorUnits = (value: number): MinorUnits => value as MinorUnits;

export const toMs = (value: Seconds): DurationMs => durationMs(value * 1000);
export const later = (moment: EpochMs, by: DurationMs): EpochMs => epochMs(moment + by);
export const between = (from: EpochMs, to: EpochMs): DurationMs => durationMs(to - from);
