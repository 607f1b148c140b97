import type { PourId } from '../ids.ts';
import type { Plan } from '../tasting.ts';

type Numbered = Pick<Plan, 'pours' | 'numbers'>;

/** Pours in the order of their numbers, those that are not in the plan any more too: they leave a gap. */
export function pourNumbering({ pours, numbers }: Numbered): PourId[] {
  const fixed = new Set<PourId>(numbers);
  return [...fixed, ...pours.map(({ id }) => id).filter((id) => !fixed.has(id))];
}

/**
 * The number of each glass, from 1, as it stands on mats, vials and sheets [P23]. It is the order of tasting until numbers are
 * fixed; a pour that came later has the next one.
 */
export function glassNumbers(plan: Numbered): ReadonlyMap<PourId, number> {
  const here = new Set(plan.pours.map(({ id }) => id));
  return new Map(
    pourNumbering(plan).flatMap((id, index) => (here.has(id) ? [[id, index + 1] as const] : [])),
  );
}

/** Whether each pour has a number that stays; one that came after the last print has none yet. */
export const numbersFixed = ({ pours, numbers }: Numbered): boolean => {
  const fixed = new Set(numbers);
  return pours.every(({ id }) => fixed.has(id));
};

/** The plan with its numbers fixed as they are now, because they stand on paper [P23]. */
export const withFixedNumbers = (plan: Plan): Plan => ({ ...plan, numbers: pourNumbering(plan) });
