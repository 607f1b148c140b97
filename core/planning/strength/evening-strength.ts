import type { Grams } from '../../units.ts';
import type { Reckoning } from '../figures/reckoning.ts';
import {
  canadianOccasion,
  type DayMark,
  type GuidanceMark,
  guidanceMarks,
  loudMark,
} from './drinking-guidance.ts';
import { type EthanolAmount, ethanolInPours, type Poured } from './ethanol.ts';
import { type PourOffer, type PourSizes, smallerPours, USUAL_POUR_SIZES } from './smaller-pours.ts';
import { type DrinkStandard, standardDrinksIn } from './standard-drinks.ts';

/** Ethanol poured, in grams and in the drinks of the chosen country. */
interface CountedEthanol extends EthanolAmount {
  readonly drinks: number;
  readonly reckoning: Reckoning;
}

interface PourStrength {
  readonly pour: CountedEthanol;
  /** This pour and all before it. */
  readonly soFar: CountedEthanol;
}

/**
 * How loudly the evening's sum is said, were all of it swallowed. 'quiet' is not a permission: the standing
 * cautions hold at every level.
 */
type StrengthCaution =
  | { readonly level: 'quiet' }
  | { readonly level: 'notice' | 'loud'; readonly line: DayMark; readonly offer: PourOffer };

export interface EveningStrength {
  readonly standard: DrinkStandard;
  readonly pours: readonly PourStrength[];
  readonly total: CountedEthanol;
  /** Every published line that the total crosses, rising. */
  readonly crossed: readonly GuidanceMark[];
  readonly caution: StrengthCaution;
}

/** A total that equals a line up to the last digits is on it, not above it. */
const SAME = 1e-9;

const crosses = (mass: Grams, mark: GuidanceMark): boolean =>
  mark.crossed === 'above' ? mass > mark.ethanol + SAME : mass >= mark.ethanol - SAME;

function counted(pours: readonly Poured[], standard: DrinkStandard): CountedEthanol {
  const ethanol = ethanolInPours(pours);
  const count = standardDrinksIn(ethanol, standard);
  return {
    volume: ethanol.volume,
    mass: ethanol.mass,
    drinks: count.drinks,
    reckoning: [...ethanol.reckoning, ...count.reckoning],
  };
}

function cautionFor(
  pours: readonly Poured[],
  total: CountedEthanol,
  standard: DrinkStandard,
  sizes: PourSizes,
): StrengthCaution {
  const loud = loudMark(standard);
  const level = crosses(total.mass, loud)
    ? 'loud'
    : crosses(total.mass, canadianOccasion)
      ? 'notice'
      : 'quiet';
  if (level === 'quiet') return { level };
  const line = level === 'loud' ? loud : canadianOccasion;
  return { level, line, offer: smallerPours(pours, line.ethanol, sizes) };
}

/**
 * The ethanol poured to one person, drink by drink and in sum, and the caution that goes with the sum. It
 * counts what is poured; it makes no estimate of what becomes of it in anybody.
 * @throws FigureOutOfRange for a volume below 0 or a strength outside 0..100.
 */
export function eveningStrength(
  pours: readonly Poured[],
  standard: DrinkStandard,
  sizes: PourSizes = USUAL_POUR_SIZES,
): EveningStrength {
  const total = counted(pours, standard);
  return {
    standard,
    pours: pours.map((pour, index) => ({
      pour: counted([pour], standard),
      soFar: counted(pours.slice(0, index + 1), standard),
    })),
    total,
    crossed: guidanceMarks.filter((mark) => crosses(total.mass, mark)),
    caution: cautionFor(pours, total, standard, sizes),
  };
}
