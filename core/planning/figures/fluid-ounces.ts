import {
  type ImperialFluidOunces,
  imperialFluidOunces,
  type Millilitres,
  millilitres,
  type UsFluidOunces,
  usFluidOunces,
} from '../../units.ts';
import { requireAmount } from './figure-errors.ts';

/** US gallon of 231 cubic inches (27 CFR 30.11) of 16.387064 mL, in 128 parts. */
export const US_FLUID_OUNCE: Millilitres = millilitres((231 * 16.387064) / 128);
/** Imperial gallon of 4546.09 mL (Weights and Measures Act 1985, from memory), in 160 parts. */
export const IMPERIAL_FLUID_OUNCE: Millilitres = millilitres(4546.09 / 160);

// All four throw FigureOutOfRange for a negative, infinite or missing volume.

export function millilitresOfUs(ounces: UsFluidOunces): Millilitres {
  requireAmount('volume', ounces);
  return millilitres(ounces * US_FLUID_OUNCE);
}

export function usOf(volume: Millilitres): UsFluidOunces {
  requireAmount('volume', volume);
  return usFluidOunces(volume / US_FLUID_OUNCE);
}

export function millilitresOfImperial(ounces: ImperialFluidOunces): Millilitres {
  requireAmount('volume', ounces);
  return millilitres(ounces * IMPERIAL_FLUID_OUNCE);
}

export function imperialOf(volume: Millilitres): ImperialFluidOunces {
  requireAmount('volume', volume);
  return imperialFluidOunces(volume / IMPERIAL_FLUID_OUNCE);
}
