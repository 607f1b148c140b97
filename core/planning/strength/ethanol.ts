import {
  type AbvPercent,
  abvPercent,
  type Grams,
  grams,
  type Millilitres,
  millilitres,
} from '../../units.ts';
import { requireAmount, requireBetween, requireStrength } from '../figures/figure-errors.ts';
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

/** 100 degrees of the old British proof at 20 °C; other tables print 57.1 to 57.15. */
const UK_PROOF_SPIRIT = 57.15;

/**
 * US proof of a strength: twice the per cent by volume. (27 CFR 30.11, at 60 °F; the step from 20 °C to 60 °F
 * is below what a label shows.)
 * @throws FigureOutOfRange for a strength outside 0..100.
 */
export function usProofFromAbv(strength: AbvPercent): number {
  requireStrength(strength);
  return 2 * strength;
}

/** @throws FigureOutOfRange for a proof outside 0..200. */
export function abvFromUsProof(proof: number): AbvPercent {
  requireBetween('proof', proof, 0, 200);
  return abvPercent(proof / 2);
}

/**
 * Strength of an old British proof degree, in proportion to 100 degrees = 57.15 % vol, as labels were printed.
 * @throws FigureOutOfRange for a proof outside 0..174.9, beyond which there is no such spirit.
 */
export function abvFromUkProof(proof: number): AbvPercent {
  requireBetween('proof', proof, 0, 174.9);
  return abvPercent((proof * UK_PROOF_SPIRIT) / 100);
}

/** @throws FigureOutOfRange for a strength outside 0..100. */
export function ukProofFromAbv(strength: AbvPercent): number {
  requireStrength(strength);
  return (100 * strength) / UK_PROOF_SPIRIT;
}
