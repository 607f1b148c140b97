import { type Grams, grams, type Millilitres, millilitres } from '../../units.ts';
import { ethanolInPours, type Poured } from './ethanol.ts';
import { smallerPours, USUAL_POUR_SIZES } from './smaller-pours.ts';

/** One pour of an evening, with as many glasses of it as one person gets. */
export interface PlannedPour {
  /** The host's own size; undefined where the plan suggests one. */
  readonly own: Millilitres | undefined;
  /** The size that is usual for the drink. */
  readonly usual: Millilitres;
  readonly strength: Poured['strength'];
  readonly glasses: number;
}

const glassesOf = (pour: PlannedPour, volume: Millilitres): Poured[] =>
  Array.from({ length: pour.glasses }, () => ({ volume, strength: pour.strength }));

/**
 * A size for each pour, in mL and in the order given: the host's own, else the usual one; where all glasses together
 * would be above the limit (g of ethanol), all suggested ones less by one share, in whole millilitres and never below
 * the smallest pour that can be nosed. Sizes of the host's own are left alone, and count.
 * @throws FigureOutOfRange for a bad pour or a negative limit.
 */
export function suggestedPours(pours: readonly PlannedPour[], limit: Grams): readonly Millilitres[] {
  const own = ethanolInPours(
    pours.flatMap((pour) => (pour.own === undefined ? [] : glassesOf(pour, pour.own))),
  );
  const suggested = pours.filter((pour) => pour.own === undefined);
  const offer = smallerPours(
    suggested.flatMap((pour) => glassesOf(pour, pour.usual)),
    grams(Math.max(0, limit - own.mass)),
  );
  let glass = 0;
  return pours.map((pour) => {
    if (pour.own !== undefined) return pour.own;
    const offered = offer.kind === 'smaller-pours' ? offer.volumes[glass] : undefined;
    glass += pour.glasses;
    const least = pour.strength === 0 ? pour.usual : USUAL_POUR_SIZES.smallest;
    return offered ?? millilitres(Math.min(pour.usual, least));
  });
}
