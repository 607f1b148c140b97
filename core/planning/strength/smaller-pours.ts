import { type Grams, type Millilitres, millilitres } from '../../units.ts';
import { requireAmount, requireBetween } from '../figures/figure-errors.ts';
import { figure, type Reckoning, step } from '../figures/reckoning.ts';
import { ethanolInPours, type Poured } from './ethanol.ts';

export interface PourSizes {
  /** Pours are offered in multiples of this. */
  readonly step: Millilitres;
  /** Below this there is nothing left to nose. */
  readonly smallest: Millilitres;
}

/** A jigger or syringe marks whole millilitres; 5 mL still wets a nosing glass. Common practice, no source. */
export const USUAL_POUR_SIZES: PourSizes = { step: millilitres(1), smallest: millilitres(5) };

export type PourOffer =
  | {
      readonly kind: 'smaller-pours';
      /** One volume for each pour, in the order given; drinks without ethanol keep theirs. */
      readonly volumes: readonly Millilitres[];
      readonly ethanol: Grams;
      readonly reckoning: Reckoning;
    }
  /** Even the smallest pours of all drinks are too much: so many of the first ones fit. */
  | {
      readonly kind: 'fewer-pours';
      readonly keep: number;
      readonly volumes: readonly Millilitres[];
      readonly ethanol: Grams;
      readonly reckoning: Reckoning;
    };

/** Rounds down, so that an offer never creeps over the limit it was made for. */
const downToStep = (volume: number, size: Millilitres): number => Math.floor(volume / size) * size;

const least = (pour: Poured, sizes: PourSizes): Poured =>
  pour.strength === 0 ? pour : { ...pour, volume: millilitres(Math.min(pour.volume, sizes.smallest)) };

interface Reduced {
  readonly pours: readonly Poured[];
  /** The share that the pours above the smallest were reduced to. */
  readonly share: number;
}

/**
 * All pours by one share; a pour that would fall below the smallest stays at the smallest, and the others give
 * the more. Each round keeps at least one further pour there, so it ends. Undefined when even all of the
 * smallest are too much.
 */
function reduceTo(limit: Grams, pours: readonly Poured[], sizes: PourSizes): Reduced | undefined {
  const held = new Set<number>();
  for (;;) {
    const heldMass = ethanolInPours(
      pours.filter((_, at) => held.has(at)).map((each) => least(each, sizes)),
    ).mass;
    const freeMass = ethanolInPours(pours.filter((_, at) => !held.has(at))).mass;
    if (heldMass > limit) return undefined;
    const share = freeMass > 0 ? Math.min(1, (limit - heldMass) / freeMass) : 1;
    const reduced = pours.map((pour, at): Poured => {
      if (held.has(at)) return least(pour, sizes);
      if (share === 1) return pour;
      return { ...pour, volume: millilitres(downToStep(pour.volume * share, sizes.step)) };
    });
    const below = reduced.flatMap((pour, at) =>
      !held.has(at) && pour.volume < least(pours[at] ?? pour, sizes).volume ? [at] : [],
    );
    if (below.length === 0) return { pours: reduced, share };
    for (const at of below) held.add(at);
  }
}

/**
 * Pours that together stay within a limit of ethanol: the same drinks, less of each; where that would leave
 * nothing to nose, fewer drinks.
 * @throws FigureOutOfRange for a bad pour, a negative limit, or sizes outside 0.1..1000 mL.
 */
export function smallerPours(
  pours: readonly Poured[],
  limit: Grams,
  sizes: PourSizes = USUAL_POUR_SIZES,
): PourOffer {
  requireAmount('limit', limit);
  requireBetween('pour step', sizes.step, 0.1, 1000);
  requireBetween('smallest pour', sizes.smallest, 0.1, 1000);
  const now = ethanolInPours(pours).mass;
  const reduced = reduceTo(limit, pours, sizes);
  const limitInputs = { limit: figure(limit, 'g'), ethanol: figure(now, 'g') };
  if (reduced !== undefined) {
    const ethanol = ethanolInPours(reduced.pours).mass;
    const share = figure(reduced.share, '1');
    const inputs = { pours: figure(pours.length, 'pours'), share };
    return {
      kind: 'smaller-pours',
      volumes: reduced.pours.map((pour) => pour.volume),
      ethanol,
      reckoning: [
        step('share-of-limit', limitInputs, share, 'definition'),
        step('smaller-pours', inputs, figure(ethanol, 'g'), 'definition'),
      ],
    };
  }
  const smallest = pours.map((pour) => least(pour, sizes));
  let keep = 0;
  while (keep < smallest.length && ethanolInPours(smallest.slice(0, keep + 1)).mass <= limit) keep += 1;
  const kept = smallest.slice(0, keep);
  const inputs = { limit: figure(limit, 'g'), smallest: figure(sizes.smallest, 'mL') };
  return {
    kind: 'fewer-pours',
    keep,
    volumes: kept.map((pour) => pour.volume),
    ethanol: ethanolInPours(kept).mass,
    reckoning: [step('fewer-pours', inputs, figure(keep, 'pours'), 'common-practice')],
  };
}
