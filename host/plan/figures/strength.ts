import { waysOf } from '../../../core/drinks/ways.ts';
import { type EveningStrength, eveningStrength } from '../../../core/planning/evening-strength.ts';
import { type DrinkStandard, standardDrinks } from '../../../core/planning/standard-drinks.ts';
import type { Plan, Pour } from '../../../core/tasting.ts';
import { abvPercent, type Millilitres, millilitres } from '../../../core/units.ts';

/** The volume in one glass: the pour's own, else what is usual for its drink. */
export const pourVolume = (pour: Pour): Millilitres =>
  pour.pourMl === undefined ? waysOf[pour.drink].pour : millilitres(pour.pourMl);

export interface StrengthFigures {
  readonly evening: EveningStrength;
  /** The pours that are counted, in order; those without a strength are not. */
  readonly counted: readonly Pour[];
  readonly unknown: readonly Pour[];
  /** The plan's country has no standard drink in the table, so that of the World Health Organization is used. */
  readonly standIn: boolean;
}

const isStandard = (code: string): code is DrinkStandard => Object.hasOwn(standardDrinks, code);

/** What is poured to one person in the whole evening, were all of it swallowed. */
export function strengthOf(plan: Plan): StrengthFigures {
  const counted = plan.pours.filter((pour) => pour.abv !== undefined);
  const own = plan.lawOf;
  const standard = own !== undefined && isStandard(own) ? own : 'WHO';
  const poured = counted.map((pour) => ({ volume: pourVolume(pour), strength: abvPercent(pour.abv ?? 0) }));
  return {
    evening: eveningStrength(poured, standard),
    counted,
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
