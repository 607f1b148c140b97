import { type AbvPercent, abvPercent, type Millilitres, millilitres } from '../../units.ts';
import {
  FigureOutOfRange,
  requireAmount,
  requireHeadCount,
  requireStrength,
} from '../figures/figure-errors.ts';
import { figure, type Reckoning, step } from '../figures/reckoning.ts';
import {
  abvFromMassFraction,
  densityFromAbv,
  densityOfMixture,
  massFractionFromAbv,
} from './alcoholometry.ts';
import type { Poured } from './ethanol.ts';

/** 20 drops of water to the millilitre (United States Pharmacopeia, medicine dropper; from memory). Droppers differ. */
export const dropOfWater: Millilitres = millilitres(0.05);

/** Far below what a label can say; beneath it the sum would ask for a lake. */
const leastTarget = abvPercent(0.01);

/** Density of water at 20 °C, g/mL. */
const waterDensity = densityOfMixture(0) / 1000;

export interface Diluted {
  readonly strength: AbvPercent;
  /** Less than the parts together: ethanol and water shrink as they mix. */
  readonly volume: Millilitres;
  readonly reckoning: Reckoning;
}

function massStep({ volume, strength }: Poured) {
  const density = densityFromAbv(strength);
  return step(
    'source-mass',
    {
      volume: figure(volume, 'mL'),
      strength: figure(strength, '% vol'),
      density: figure(density, 'kg/m3'),
    },
    figure((volume * density) / 1000, 'g'),
    'oiml-r22',
  );
}

/**
 * Strength and volume after water, by mass balance at 20 °C: masses add up, volumes do not. Source of the densities:
 * OIML R 22. Sugar and extract are not counted, so it is for spirits and dry drinks.
 * @throws FigureOutOfRange for a bad volume or strength, or when there is nothing in the glass.
 */
export function afterWater(drink: Poured, water: Millilitres): Diluted {
  requireAmount('volume', drink.volume);
  requireAmount('volume', water);
  requireStrength(drink.strength);
  if (drink.volume + water === 0) {
    throw new FigureOutOfRange('volume', 0, 'There is nothing to mix. Give a volume above 0.');
  }
  // What is not mixed stays what it is; going through the inverse would shake the last digits.
  if (water === 0) return { strength: drink.strength, volume: drink.volume, reckoning: [] };
  const source = massStep(drink);
  const mass = source.result.value + water * waterDensity;
  const ethanol = source.result.value * massFractionFromAbv(drink.strength);
  const fraction = Math.min(1, ethanol / mass);
  const density = figure(densityOfMixture(fraction), 'kg/m3');
  // Water never raises it; a drop in pure ethanol would, by the last digits.
  const strength = abvPercent(Math.min(drink.strength, abvFromMassFraction(fraction)));
  const volume = millilitres((1000 * mass) / density.value);
  return {
    strength,
    volume,
    reckoning: [
      source,
      step(
        'mixed-mass-fraction',
        { ethanol: figure(ethanol, 'g'), mass: figure(mass, 'g') },
        figure(fraction, '1'),
        'definition',
      ),
      step(
        'mixed-strength',
        { fraction: figure(fraction, '1'), density },
        figure(strength, '% vol'),
        'oiml-r22',
      ),
      step('final-volume', { mass: figure(mass, 'g'), density }, figure(volume, 'mL'), 'oiml-r22'),
    ],
  };
}

/** The same after whole drops. @throws FigureOutOfRange as afterWater, and for drops that are not whole or below 0. */
export function afterDrops(drink: Poured, drops: number): Diluted {
  requireHeadCount('drops', drops);
  const water = millilitres(drops * dropOfWater);
  const diluted = afterWater(drink, water);
  const inputs = { drops: figure(drops, 'drops'), perDrop: figure(dropOfWater, 'mL') };
  return {
    ...diluted,
    reckoning: [step('drop-water', inputs, figure(water, 'mL'), 'medicine-dropper'), ...diluted.reckoning],
  };
}

export type WaterToReach =
  | {
      readonly kind: 'add-water';
      readonly water: Millilitres;
      readonly volume: Millilitres;
      readonly reckoning: Reckoning;
    }
  /** The target is above the drink: water cannot raise strength. */
  | { readonly kind: 'target-above-drink' }
  /** A drink with ethanol never comes down to 0; a target below 0.01 % vol is taken as 0. */
  | { readonly kind: 'never-reached' };

/**
 * Water at 20 °C that brings a drink down to a target strength: its mass is m (from / to - 1), with the mass fractions
 * of ethanol before and after.
 * @throws FigureOutOfRange for a volume below 0 or a strength outside 0..100.
 */
export function waterToReach(drink: Poured, target: AbvPercent): WaterToReach {
  requireAmount('volume', drink.volume);
  requireStrength(drink.strength);
  requireStrength(target);
  if (target > drink.strength) return { kind: 'target-above-drink' };
  if (target === drink.strength) {
    return { kind: 'add-water', water: millilitres(0), volume: drink.volume, reckoning: [] };
  }
  if (target < leastTarget) return { kind: 'never-reached' };
  const from = figure(massFractionFromAbv(drink.strength), '1');
  const to = figure(massFractionFromAbv(target), '1');
  const source = massStep(drink);
  const mass = figure(source.result.value * (from.value / to.value - 1), 'g');
  const water = millilitres(mass.value / waterDensity);
  const volume = millilitres((drink.volume * drink.strength) / target);
  const strength = figure(drink.strength, '% vol');
  return {
    kind: 'add-water',
    water,
    volume,
    reckoning: [
      source,
      step('source-mass-fraction', { strength }, from, 'oiml-r22'),
      step('target-mass-fraction', { strength: figure(target, '% vol') }, to, 'oiml-r22'),
      step(
        'water-mass',
        { sourceMass: source.result, sourceFraction: from, targetFraction: to },
        mass,
        'definition',
      ),
      step(
        'water-volume',
        { mass, density: figure(1000 * waterDensity, 'kg/m3') },
        figure(water, 'mL'),
        'oiml-r22',
      ),
      step(
        'final-volume-by-strength',
        { volume: figure(drink.volume, 'mL'), strength, target: figure(target, '% vol') },
        figure(volume, 'mL'),
        'definition',
      ),
    ],
  };
}
