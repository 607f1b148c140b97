import type { PlanInput } from '../../core/tasting.ts';
import { limits } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';

/** The demo evening, laid for as many as come, who are also asked which glasses they like best. */
export const rehearsedPlan = (guests: number): PlanInput => ({
  ...demoEvening,
  guests: Math.min(guests, limits.guests),
  ranking: 'each-flight',
  liking: true,
});
