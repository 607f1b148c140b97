import { waysOf } from '../../../core/drinks/drink-ways.ts';
import { canadianOccasion } from '../../../core/planning/strength/drinking-guidance.ts';
import { type EveningStrength, eveningStrength } from '../../../core/planning/strength/evening-strength.ts';
import { type DrinkStandard, standardDrinks } from '../../../core/planning/strength/standard-drinks.ts';
import { suggestedPours } from '../../../core/planning/strength/suggested-pours.ts';
import type { Drink, Plan, Pour } from '../../../core/tasting.ts';
import { abvPercent, type Millilitres, millilitres } from '../../../core/units.ts';

/** What a pour is taken for until its strength is known, in % vol (common practice, no source). */
const usualStrength: Readonly<Record<Drink, number>> = { spirit: 46, wine: 14, beer: 6 };

/** Glasses of a pour for one person: its own, and two at the most in each odd-one-out. */
const glassesOf = (plan: Plan, { id }: Pour): number =>
  1 + 2 * plan.trials.filter(({ a, b }) => a === id || b === id).length;

/** The size that the plan suggests for a pour, and whether it is less than usual, so that the evening stays below the line. */
export function suggestionOf({ pourMl: _, ...pour }: Pour, plan: Plan) {
  const suggested = pourVolume(pour, plan);
  return { volume: suggested, less: suggested < waysOf[pour.drink].pour };
}

/**
 * The volume in one glass: the pour's own, else what is usual for its drink, or as much less that all pours together
 * stay below the lowest line that a public body draws for one occasion.
 */
export function pourVolume(pour: Pour, plan: Plan): Millilitres {
  if (pour.pourMl !== undefined) return millilitres(pour.pourMl);
  const known = plan.pours.some(({ id }) => id === pour.id);
  // The pour as it is being written, which the plan may not have yet.
  const pours = known ? plan.pours.map((each) => (each.id === pour.id ? pour : each)) : [...plan.pours, pour];
  const planned = pours.map((each) => ({
    own: each.pourMl === undefined ? undefined : millilitres(each.pourMl),
    usual: waysOf[each.drink].pour,
    strength: abvPercent(each.abv ?? usualStrength[each.drink]),
    glasses: glassesOf(plan, each),
  }));
  const at = pours.findIndex(({ id }) => id === pour.id);
  return suggestedPours(planned, canadianOccasion.ethanol)[at] ?? waysOf[pour.drink].pour;
}

export interface StrengthFigures {
  readonly evening: EveningStrength;
  /**
   * What is in each glass that is counted: the pours in order, then the glasses of odd-ones-out; pours without a
   * strength are not among them.
   */
  readonly counted: readonly Pour[];
  /** Where in `counted` the glasses of odd-ones-out begin. */
  readonly trialsFrom: number;
  readonly unknown: readonly Pour[];
  /** The plan's country has no standard drink in the table, so that of the World Health Organization is used. */
  readonly standIn: boolean;
}

const isStandard = (code: string): code is DrinkStandard => Object.hasOwn(standardDrinks, code);

const ethanolIn = (plan: Plan, pour: Pour): number => pourVolume(pour, plan) * (pour.abv ?? 0);

/**
 * The three glasses of each odd-one-out as the seat meets them that is poured the most: two of the drink with more
 * ethanol and one of the other.
 */
function trialGlasses(plan: Plan): Pour[] {
  return plan.trials.flatMap(({ a, b }) => {
    const pair = plan.pours.filter(({ id }) => id === a || id === b);
    const [more, less] = pair.toSorted((one, other) => ethanolIn(plan, other) - ethanolIn(plan, one));
    return more === undefined || less === undefined ? [] : [more, more, less];
  });
}

/** What is poured to one person in the whole evening, were all of it swallowed. */
export function strengthOf(plan: Plan): StrengthFigures {
  const known = ({ abv }: Pour) => abv !== undefined;
  const pours = plan.pours.filter(known);
  const counted = [...pours, ...trialGlasses(plan).filter(known)];
  const own = plan.lawOf;
  const standard = own !== undefined && isStandard(own) ? own : 'WHO';
  const poured = counted.map((pour) => ({
    volume: pourVolume(pour, plan),
    strength: abvPercent(pour.abv ?? 0),
  }));
  return {
    evening: eveningStrength(poured, standard),
    counted,
    trialsFrom: pours.length,
    unknown: plan.pours.filter((pour) => pour.abv === undefined),
    standIn: standard === 'WHO',
  };
}

/** The plan with the offered volumes for the pours that were counted. */
export function withSmallerPours(plan: Plan, counted: readonly Pour[], volumes: readonly number[]): Plan {
  const offered = new Map(counted.map((pour, index) => [pour.id, volumes[index]]));
  return {
    ...plan,
    pours: plan.pours.map((pour) => {
      const ml = offered.get(pour.id);
      return ml === undefined || ml === pourVolume(pour, plan) ? pour : { ...pour, pourMl: ml };
    }),
  };
}
