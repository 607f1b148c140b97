import {
  type AbvPercent,
  type Grams,
  grams,
  type Millilitres,
  massFraction,
  millilitres,
} from '../../units.ts';
import { FigureOutOfRange, requireAmount, requireStrength } from '../figures/figure-errors.ts';
import { figure, type Reckoning, step } from '../figures/reckoning.ts';
import {
  abvFromMassFraction,
  densityFromAbv,
  densityFromMassFraction,
  massFractionFromAbv,
} from './alcoholometry.ts';
import type { Poured } from './ethanol.ts';

/** Density at 20 °C in g/mL. */
export const gramsPerMillilitre = (strength: AbvPercent): number => densityFromAbv(strength) / 1000;
export const massOf = (part: Poured): Grams => grams(part.volume * gramsPerMillilitre(part.strength));

export interface Mixture {
  readonly strength: AbvPercent;
  readonly finalVolume: Millilitres;
  /**
   * Volume that the parts lose by mixing. Ethanol and water shrink together, but below about 30 % vol a mixture
   * may grow by up to 0.16 % of its volume, and then this is negative.
   */
  readonly contraction: Millilitres;
  readonly reckoning: Reckoning;
}

/** The last step of every mixing. */
export const contractionStep = (poured: number, finalVolume: Millilitres) =>
  step(
    'contraction',
    { parts: figure(poured, 'mL'), finalVolume: figure(finalVolume, 'mL') },
    figure(poured - finalVolume, 'mL'),
    'definition',
  );

/**
 * What becomes of liquids poured together, by mass balance at 20 °C: masses and ethanol add up, volumes do not.
 * Source of the densities: OIML R 22. Sugar and extract are not counted, so it is for spirits and dry drinks.
 * @throws FigureOutOfRange for a bad volume or strength, or when there is nothing to mix.
 */
export function blend(parts: readonly Poured[]): Mixture {
  for (const part of parts) {
    requireAmount('volume', part.volume);
    requireStrength(part.strength);
  }
  const filled = parts.filter((part) => part.volume > 0);
  const [only] = filled;
  if (only === undefined) {
    throw new FigureOutOfRange('volume', 0, 'There is nothing to mix. Give a volume above 0.');
  }
  const poured = filled.reduce((sum, part) => sum + part.volume, 0);
  const masses = filled.map((part) => ({ part, mass: massOf(part) }));
  const mass = masses.reduce((sum, each) => sum + each.mass, 0);
  const ethanol = masses.reduce((sum, each) => sum + each.mass * massFractionFromAbv(each.part.strength), 0);
  const fraction = massFraction(Math.min(1, ethanol / mass));
  const mixedDensity = densityFromMassFraction(fraction) / 1000;
  // Liquids of one strength stay what they are; going through the inverse would shake the last digits.
  const alike = filled.every((part) => part.strength === only.strength);
  const strength = alike ? only.strength : abvFromMassFraction(fraction);
  const finalVolume = millilitres(alike ? poured : mass / mixedDensity);
  const contraction = millilitres(poured - finalVolume);
  return {
    strength,
    finalVolume,
    contraction,
    reckoning: [
      ...masses.map((each) =>
        step(
          'source-mass',
          {
            volume: figure(each.part.volume, 'mL'),
            strength: figure(each.part.strength, '% vol'),
            density: figure(1000 * gramsPerMillilitre(each.part.strength), 'kg/m3'),
          },
          figure(each.mass, 'g'),
          'oiml-r22',
        ),
      ),
      step(
        'mixed-mass-fraction',
        { ethanol: figure(ethanol, 'g'), mass: figure(mass, 'g') },
        figure(fraction, '1'),
        'definition',
      ),
      step(
        'mixed-strength',
        { fraction: figure(fraction, '1'), density: figure(1000 * mixedDensity, 'kg/m3') },
        figure(strength, '% vol'),
        'oiml-r22',
      ),
      step(
        'final-volume',
        { mass: figure(mass, 'g'), density: figure(1000 * mixedDensity, 'kg/m3') },
        figure(finalVolume, 'mL'),
        'oiml-r22',
      ),
      contractionStep(poured, finalVolume),
    ],
  };
}
