import { type Plan, type PlanInput, planSchema } from '../../core/tasting.ts';

/** Names for pours that say nothing of their place in the order. */
export const pourNames = ['ash', 'birch', 'cedar', 'dogwood', 'elm', 'fir', 'gorse', 'hazel', 'ivy'];

/** A plan with `pours` invented spirits in flights of three; everything else as asked. */
export function planOf(pours: number, more: Omit<PlanInput, 'pours'> = {}): Plan {
  return planSchema.parse({
    title: 'An evening at the Old Weighhouse',
    ...more,
    pours: Array.from({ length: pours }, (_, index) => {
      const id = pourNames[index] ?? `tree${index + 1}`;
      return { id, drink: more.drink ?? 'spirit', name: `The ${id} cask`, abv: 40 + index };
    }),
  });
}
