import { type Millilitres, millilitres } from '../../units.ts';

/** US gallon of 231 cubic inches (27 CFR 30.11) of 16.387064 mL, in 128 parts. */
export const US_FLUID_OUNCE: Millilitres = millilitres((231 * 16.387064) / 128);
/** Imperial gallon of 4546.09 mL (Weights and Measures Act 1985, from memory), in 160 parts. */
export const IMPERIAL_FLUID_OUNCE: Millilitres = millilitres(4546.09 / 160);
