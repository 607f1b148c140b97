import { blankPlan, type Drink, type Plan, planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { measuresInUsOunces } from '../../shared/language/locale.ts';

/** The ways in which a new evening begins. */
export type Beginning =
  | { readonly from: 'demo' }
  | { readonly from: 'blank'; readonly drink: Drink }
  | { readonly from: 'list' };

const zone = (): string => Intl.DateTimeFormat().resolvedOptions().timeZone;

const unit = (): Plan['volumeUnit'] => (measuresInUsOunces() ? 'fl-oz-us' : 'ml');

/** The plan it begins with, in the zone of this device and in the measures of the house, or of where its owner is from. */
export function planOf(beginning: Beginning, volumeUnit = unit(), timeZone: string = zone()): Plan {
  switch (beginning.from) {
    case 'demo':
      return planSchema.parse({ ...demoEvening, timeZone, volumeUnit });
    case 'blank':
      return { ...blankPlan(beginning.drink), timeZone, volumeUnit };
    case 'list':
      return { ...blankPlan('spirit'), timeZone, volumeUnit };
    default:
      return beginning satisfies never;
  }
}
