import { IMPERIAL_FLUID_OUNCE, US_FLUID_OUNCE } from '../../core/planning/figures/fluid-ounces.ts';
import type { Plan } from '../../core/tasting.ts';
import { volumeUnits } from '../../shared/language/en/volumes.ts';
import { number } from '../numbers.ts';

type Unit = Plan['volumeUnit'];

const inOne: Readonly<Record<Unit, number>> = {
  ml: 1,
  'fl-oz-us': US_FLUID_OUNCE,
  'fl-oz-imperial': IMPERIAL_FLUID_OUNCE,
};

/** In the plan's unit, for a field: ounces to a hundredth. */
export const inUnit = (ml: number, unit: Unit): number =>
  unit === 'ml' ? ml : Math.round((ml / inOne[unit]) * 100) / 100;

export const inMl = (value: number, unit: Unit): number => Number((value * inOne[unit]).toFixed(6));

/** As it is read; with whole millilitres or hundredths of an ounce where no other decimals are wanted. */
export const volume = (ml: number, unit: Unit, decimals = unit === 'ml' ? 0 : 2): string =>
  `${number(ml / inOne[unit], decimals)}\u00a0${volumeUnits[unit]}`;
