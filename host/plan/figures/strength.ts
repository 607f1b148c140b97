import { waysOf } from '../../../core/drinks/drink-ways.ts';
import { type EveningStrength, eveningStrength } from '../../../core/planning/strength/evening-strength.ts';
import { type DrinkStandard, standardDrinks } from '../../../core/planning/strength/standard-drinks.ts';
import type { Plan, Pour } from '../../../core/tasting.ts';
import { abvPercent, type Millilitres, millilitres } from '../../../core/units.ts';

/** The volume in one glass: the pour's own, else what is usual for its drink. */
export const pourVolume = (pour: Pour): Millilitres =>
  pour.pourMl === undefined ? waysOf[pour.drink].pour : millilitres(pour.pourMl);

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

const ethanolIn = (pour: Pour): number => pourVolume(pour) * (pour.abv ?? 0);

/**
 * The three glasses of each odd-one-out as the seat meets them that is poured the most: two of the drink with more
 * ethanol and one of the other.
 */
function trialGlasses(plan: Plan): Pour[] {
  return plan.trials.flatMap(({ a, b }) => {
    const pair = plan.pours.filter(({ id }) => id === a || id === b);
    const [more, less] = pair.toSorted((one, other) => ethanolIn(other) - ethanolIn(one));
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
  const poured = counted.map((pour) => ({ volume: pourVolume(pour), strength: abvPercent(pour.abv ?? 0) }));
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
      return ml === undefined || ml === pourVolume(pour) ? pour : { ...pour, pourMl: ml };
    }),
  };
}
