import type { PourId } from '../../ids.ts';
import { type TriangleOrder, triangleOrdersForSeats } from '../../panel/presentation-orders.ts';
import { flightsOf, limits, type Plan, type Trial } from '../../tasting.ts';
import { drawBlindCodes } from './blind-codes.ts';

/** How many an evening may hold. */
export const mostTrials = 3;

/** The six orders are balanced in whole sixes only. */
const SIX = 6;

/** What a host decides of an odd-one-out: two drinks of the lineup, and the flight after whose glasses it comes. */
export type TrialChoice = Pick<Trial, 'id' | 'flight' | 'a' | 'b'>;

/** Orders for every seat at the table and at home, in whole sixes, as far as a plan holds. */
function ordersWanted(plan: Plan): number {
  const sixes = Math.ceil(Math.max(1, plan.guests + plan.remoteGuests) / SIX);
  return Math.min(sixes, Math.floor((limits.guests * 2) / SIX)) * SIX;
}

/** Whole sixes that are there stay, because glasses may stand by them already; more are drawn behind them. */
function orders(plan: Plan, drawn: readonly TriangleOrder[], random: () => number): TriangleOrder[] {
  const wanted = ordersWanted(plan);
  const kept = drawn.slice(0, Math.min(wanted, drawn.length - (drawn.length % SIX)));
  return [...kept, ...triangleOrdersForSeats(wanted - kept.length, random)];
}

const codesOf = ({ codes }: Trial): string[] => [...codes.a, ...codes.b];

/** Every code in use: one code never stands for two glasses of one evening. */
export const codesInUse = (plan: Plan): string[] => [
  ...Object.values(plan.codes),
  ...plan.trials.flatMap(codesOf),
];

/** An odd-one-out with codes and orders drawn. `random` gives numbers from 0 up to but not including 1. */
export function drawTrial(plan: Plan, choice: TrialChoice, random: () => number): Trial {
  const others = { ...plan, trials: plan.trials.filter(({ id }) => id !== choice.id) };
  const [a1 = '', a2 = '', b1 = '', b2 = ''] = drawBlindCodes(4, random, codesInUse(others));
  return { ...choice, codes: { a: [a1, a2], b: [b1, b2] }, orders: orders(plan, [], random) };
}

/**
 * The plan with odd-ones-out that can be served: of two different pours that are there, after a flight that is there,
 * with orders for everybody who comes.
 */
export function withTrials(plan: Plan, random: () => number): Plan {
  const here = new Set<PourId>(plan.pours.map(({ id }) => id));
  const last = Math.max(0, flightsOf(plan).length - 1);
  const wanted = ordersWanted(plan);
  let changed = false;
  const trials = plan.trials.flatMap((trial) => {
    if (trial.a === trial.b || !here.has(trial.a) || !here.has(trial.b)) {
      changed = true;
      return [];
    }
    if (trial.flight <= last && trial.orders.length === wanted) return [trial];
    changed = true;
    const flight = Math.min(trial.flight, last);
    return [{ ...trial, flight, orders: orders(plan, trial.orders, random) }];
  });
  return changed ? { ...plan, trials } : plan;
}
