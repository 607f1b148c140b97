import type { PlanInput } from '../../core/tasting.ts';
import { limits } from '../../core/tasting.ts';
import { planOf } from '../support/plans.ts';

/** The demo evening, laid for as many as come. */
export const rehearsedPlan = (guests: number): PlanInput => ({
  ...planOf(6, { blind: true }),
  guests: Math.min(guests, limits.guests),
});
