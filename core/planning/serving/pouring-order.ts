import type { PourId } from '../../ids.ts';
import { glassNumbers } from '../../running-order/glass-numbers.ts';
import { servedInOwnOrders, servedTo, trialGlasses } from '../../session/serving.ts';
import { flightsOf, type Plan } from '../../tasting.ts';

/** Glasses that stand together in front of one guest. */
export type GlassSet =
  | { readonly kind: 'flight'; readonly flight: number; readonly pours: readonly PourId[] }
  /** An odd-one-out after a flight: its three coded glasses from the left. */
  | {
      readonly kind: 'trial';
      readonly flight: number;
      readonly trial: PourId;
      readonly glasses: readonly { readonly pour: PourId; readonly code: string }[];
    };

/** Whether places differ: each has an order of its own, or an odd-one-out is served in its six orders. */
export const placesDiffer = (plan: Plan): boolean => servedInOwnOrders(plan) || plan.trials.length > 0;

/** In a common order glasses stand by their numbers, in whatever order they are tasted now. */
function asLaid(plan: Plan, pours: readonly PourId[]): readonly PourId[] {
  if (servedInOwnOrders(plan)) return pours;
  const numbers = glassNumbers(plan);
  return pours.toSorted((one, other) => (numbers.get(one) ?? 0) - (numbers.get(other) ?? 0));
}

/**
 * What is poured at a place, from 1, set by set in the order of tasting. Places are numbered as seats are taken, so the
 * guest who sits down third meets the orders of place 3.
 */
export function glassesAt(plan: Plan, place: number): GlassSet[] {
  const seat = { row: place - 1 };
  const served = servedTo({ plan, dropped: [] }, seat);
  let from = 0;
  return flightsOf(plan).flatMap(({ index, pours }): GlassSet[] => {
    const here = asLaid(plan, served.slice(from, from + pours.length));
    from += pours.length;
    const trials = plan.trials.filter((trial) => trial.flight === index);
    return [
      { kind: 'flight', flight: index, pours: here },
      ...trials.map(
        (trial): GlassSet => ({
          kind: 'trial',
          flight: index,
          trial: trial.id,
          glasses: trialGlasses(trial, seat).map(({ drink, code }) => ({ pour: trial[drink], code })),
        }),
      ),
    ];
  });
}

/**
 * The number of a glass on a sheet of one place: as on mats and vials [P23]; where each seat has an order of its own, as they come.
 *
 * @param index from 0, in the order of that place
 */
export const numberAt = (plan: Plan, pour: PourId, index: number): number =>
  (servedInOwnOrders(plan) ? undefined : glassNumbers(plan).get(pour)) ?? index + 1;
