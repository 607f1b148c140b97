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
/** Mass of ethanol over mass of the whole, 0 to 1. */
export type MassFraction = Quantity<'mass fraction'>;
/** A density in kilograms per cubic metre. */
export type KilogramsPerCubicMetre = Quantity<'kg/m3'>;
/** A temperature in degrees Celsius. */
export type DegreesCelsius = Quantity<'°C'>;
/** US customary fluid ounces (128 to the US gallon). */
export type UsFluidOunces = Quantity<'US fl oz'>;
/** Imperial fluid ounces (160 to the imperial gallon). */
export type ImperialFluidOunces = Quantity<'imperial fl oz'>;
/** Money as a whole number of a currency's smallest unit (cents, pence, yen). */
export type MinorUnits = Quantity<'minor units'>;

export const epochMs = (value: number): EpochMs => value as EpochMs;
export const durationMs = (value: number): DurationMs => value as DurationMs;
export const seconds = (value: number): Seconds => value as Seconds;
export const millilitres = (value: number): Millilitres => value as Millilitres;
export const grams = (value: number): Grams => value as Grams;
export const abvPercent = (value: number): AbvPercent => value as AbvPercent;
export const massFraction = (value: number): MassFraction => value as MassFraction;
export const kilogramsPerCubicMetre = (value: number): KilogramsPerCubicMetre =>
  value as KilogramsPerCubicMetre;
export const degreesCelsius = (value: number): DegreesCelsius => value as DegreesCelsius;
export const usFluidOunces = (value: number): UsFluidOunces => value as UsFluidOunces;
export const imperialFluidOunces = (value: number): ImperialFluidOunces => value as ImperialFluidOunces;
export const minorUnits = (value: number): MinorUnits => value as MinorUnits;

export const toMs = (value: Seconds): DurationMs => durationMs(value * 1000);
export const later = (moment: EpochMs, by: DurationMs): EpochMs => epochMs(moment + by);
export const between = (from: EpochMs, to: EpochMs): DurationMs => durationMs(to - from);
