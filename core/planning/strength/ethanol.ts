import { type AbvPercent, type Grams, grams, type Millilitres, millilitres } from '../../units.ts';
import { requireAmount, requireStrength } from '../figures/figure-errors.ts';
import { figure, type Reckoning, step } from '../figures/reckoning.ts';

/** Density of ethanol at 20 °C, g/mL. Source: OIML R 22, row 100 % vol. */
export const ETHANOL_DENSITY = 0.78924;

/** A drink in a glass. */
export interface Poured {
  readonly volume: Millilitres;
  readonly strength: AbvPercent;
}

export interface EthanolAmount {
  readonly volume: Millilitres;
  readonly mass: Grams;
}

export interface ReckonedEthanol extends EthanolAmount {
  readonly reckoning: Reckoning;
}

/** @throws FigureOutOfRange for a volume outside 0..1,000,000 mL. */
export function gramsOfEthanol(ethanol: Millilitres): Grams {
  requireAmount('volume', ethanol);
  return grams(ethanol * ETHANOL_DENSITY);
}

/**
 * The ethanol in one pour: volume x strength / 100, and its mass at 20 °C.
 * @throws FigureOutOfRange for a volume below 0 or a strength outside 0..100.
 */
export function ethanolInPour(pour: Poured): ReckonedEthanol {
  requireAmount('volume', pour.volume);
  requireStrength(pour.strength);
  const volume = millilitres((pour.volume * pour.strength) / 100);
  const mass = gramsOfEthanol(volume);
  return {
    volume,
    mass,
    reckoning: [
      step(
        'ethanol-volume',
        { pour: figure(pour.volume, 'mL'), strength: figure(pour.strength, '% vol') },
        figure(volume, 'mL'),
        'definition',
      ),
      step(
        'ethanol-mass',
        { ethanol: figure(volume, 'mL'), density: figure(1000 * ETHANOL_DENSITY, 'kg/m3') },
        figure(mass, 'g'),
        'oiml-r22',
      ),
    ],
  };
}

/**
 * The ethanol in all pours of one person; none for no pours.
 * @throws FigureOutOfRange as ethanolInPour.
 */
export function ethanolInPours(pours: readonly Poured[]): ReckonedEthanol {
  const each = pours.map(ethanolInPour);
  const volume = millilitres(each.reduce((sum, one) => sum + one.volume, 0));
  const mass = gramsOfEthanol(volume);
  const count = figure(pours.length, 'pours');
  return {
    volume,
    mass,
    reckoning: [
      ...each.flatMap((one) => one.reckoning),
      step('ethanol-sum', { pours: count }, figure(mass, 'g'), 'definition'),
    ],
  };
}
