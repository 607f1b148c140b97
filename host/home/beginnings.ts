import { blankPlan, type Drink, type Plan, planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';

/** The ways in which a new evening begins. */
export type Beginning =
  | { readonly from: 'demo' }
  | { readonly from: 'blank'; readonly drink: Drink }
  | { readonly from: 'list' };

const zone = (): string => Intl.DateTimeFormat().resolvedOptions().timeZone;

/** The plan it begins with, in the zone of this device. */
export function planOf(beginning: Beginning, timeZone: string = zone()): Plan {
  switch (beginning.from) {
    case 'demo':
      return planSchema.parse({ ...demoEvening, timeZone });
    case 'blank':
      return { ...blankPlan(beginning.drink), timeZone };
    case 'list':
      return { ...blankPlan('spirit'), timeZone };
    default:
      return beginning satisfies never;
  }
}
