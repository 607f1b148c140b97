import {
  type AbvPercent,
  abvPercent,
  type Grams,
  grams,
  type MassFraction,
  type Millilitres,
  millilitres,
} from '../../units.ts';
import {
  requireAmount,
  requireBetween,
  requireHeadCount,
  requireStrength,
} from '../figures/figure-errors.ts';
import { figure, type Reckoning, step } from '../figures/reckoning.ts';
import { massFractionFromAbv } from './alcoholometry.ts';
import { blend, contractionStep, gramsPerMillilitre, type Mixture, massOf } from './blending.ts';
import type { Poured } from './ethanol.ts';

/** 20 drops of water to the millilitre. Droppers differ: a host may count their own. */
export const MEDICINE_DROP: Millilitres = millilitres(0.05);

/** Far below what a label can say; beneath it the sum would ask for a lake. */
const LEAST_TARGET = abvPercent(0.01);

const WATER: AbvPercent = abvPercent(0);

/** Strength and volume after water. @throws FigureOutOfRange as blend. */
export const abvAfterWater = (drink: Poured, water: Millilitres): Mixture =>
  blend([drink, { volume: water, strength: WATER }]);

/**
 * Volume of a whole number of drops.
 * @throws FigureOutOfRange for drops that are not a whole number from 0, or a drop without volume.
 */
export function waterOfDrops(drops: number, drop: Millilitres = MEDICINE_DROP): Millilitres {
  requireHeadCount('drops', drops);
  requireBetween('drop volume', drop, 0.001, 1);
  return millilitres(drops * drop);
}

/** Drops in a volume of water, with its fraction: round it where it is shown. @throws FigureOutOfRange */
export function dropsOfWater(water: Millilitres, drop: Millilitres = MEDICINE_DROP): number {
  requireAmount('volume', water);
  requireBetween('drop volume', drop, 0.001, 1);
  return water / drop;
}

export interface MixtureWithDrops extends Mixture {
  readonly water: Millilitres;
}

/** Strength and volume after drops of water. @throws FigureOutOfRange as waterOfDrops and blend. */
export function abvAfterDrops(drink: Poured, drops: number, drop = MEDICINE_DROP): MixtureWithDrops {
  const water = waterOfDrops(drops, drop);
  const inputs = { drops: figure(drops, 'drops'), perDrop: figure(drop, 'mL') };
  const source = drop === MEDICINE_DROP ? 'medicine-dropper' : 'definition';
  const mixture = abvAfterWater(drink, water);
  return {
    ...mixture,
    water,
    reckoning: [step('drop-water', inputs, figure(water, 'mL'), source), ...mixture.reckoning],
  };
}

/**
 * Water by mass, in the unit of the given mass, that brings a liquid from one mass fraction of ethanol down to
 * another: m (from / to - 1).
 * @throws FigureOutOfRange unless 0.000001 <= to <= from <= 1.
 */
export function waterMassToReach(mass: Grams, from: MassFraction, to: MassFraction): Grams {
  requireAmount('mass', mass);
  requireBetween('mass fraction', from, 0, 1);
  requireBetween('mass fraction', to, 0.000001, from);
  return grams(mass * (from / to - 1));
}

export type WaterToReach =
  | {
      readonly kind: 'add-water';
      readonly water: Millilitres;
      readonly finalVolume: Millilitres;
      readonly contraction: Millilitres;
      /** What the cross-multiplication without contraction would have said. */
      readonly naiveWater: Millilitres;
      readonly reckoning: Reckoning;
    }
  /** The target is above the drink: water cannot raise strength. */
  | { readonly kind: 'target-above-drink' }
  /** A drink with ethanol never comes down to 0; a target below 0.01 % vol is taken as 0. */
  | { readonly kind: 'never-reached' };

/**
 * Water at 20 °C that brings a drink down to a target strength.
 * @throws FigureOutOfRange for a volume below 0 or a strength outside 0..100.
 */
export function waterToReach(drink: Poured, target: AbvPercent): WaterToReach {
  requireAmount('volume', drink.volume);
  requireStrength(drink.strength);
  requireStrength(target);
  if (target > drink.strength) return { kind: 'target-above-drink' };
  if (target < LEAST_TARGET && target < drink.strength) return { kind: 'never-reached' };
  const from = massFractionFromAbv(drink.strength);
  const to = massFractionFromAbv(target);
  const ratio = drink.strength === target ? 1 : drink.strength / target;
  const sourceMass = massOf(drink);
  const waterMass = drink.strength === target ? grams(0) : waterMassToReach(sourceMass, from, to);
  const water = millilitres(waterMass / gramsPerMillilitre(WATER));
  const finalVolume = millilitres(drink.volume * ratio);
  return {
    kind: 'add-water',
    water,
    finalVolume,
    contraction: millilitres(drink.volume + water - finalVolume),
    naiveWater: millilitres(drink.volume * (ratio - 1)),
    reckoning: [
      step(
        'source-mass',
        {
          volume: figure(drink.volume, 'mL'),
          strength: figure(drink.strength, '% vol'),
          density: figure(1000 * gramsPerMillilitre(drink.strength), 'kg/m3'),
        },
        figure(sourceMass, 'g'),
        'oiml-r22',
      ),
      step(
        'source-mass-fraction',
        { strength: figure(drink.strength, '% vol') },
        figure(from, '1'),
        'oiml-r22',
      ),
      step('target-mass-fraction', { strength: figure(target, '% vol') }, figure(to, '1'), 'oiml-r22'),
      step(
        'water-mass',
        {
          sourceMass: figure(sourceMass, 'g'),
          sourceFraction: figure(from, '1'),
          targetFraction: figure(to, '1'),
        },
        figure(waterMass, 'g'),
        'definition',
      ),
      step(
        'water-volume',
        { mass: figure(waterMass, 'g'), density: figure(1000 * gramsPerMillilitre(WATER), 'kg/m3') },
        figure(water, 'mL'),
        'oiml-r22',
      ),
      step(
        'final-volume-by-strength',
        {
          volume: figure(drink.volume, 'mL'),
          strength: figure(drink.strength, '% vol'),
          target: figure(target, '% vol'),
        },
        figure(finalVolume, 'mL'),
        'definition',
      ),
      contractionStep(drink.volume + water, finalVolume),
    ],
  };
}
