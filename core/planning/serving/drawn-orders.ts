import { pourId } from '../../ids.ts';
import { flightsOf, type Plan } from '../../tasting.ts';
import { designServingOrders } from './serving-orders.ts';

type Orders = Plan['servingOrders'];

const covers = (rows: readonly (readonly string[])[], pours: readonly string[]): boolean =>
  rows.length > 0 &&
  rows.every((row) => row.length === pours.length && pours.every((pour) => row.includes(pour)));

/**
 * The plan with an order for every seat in every flight, where each seat has an order of its own; without any
 * otherwise. A flight whose pours are the same as when its orders were drawn keeps them, because glasses may stand by
 * them already; a flight that changed is drawn anew. `random` gives numbers from 0 up to but not including 1.
 */
export function withServingOrders(plan: Plan, random: () => number): Plan {
  if (!plan.blind || !plan.ownOrders) {
    return plan.servingOrders.length === 0 ? plan : { ...plan, servingOrders: [] };
  }
  const flights = flightsOf(plan);
  let changed = flights.length !== plan.servingOrders.length;
  const servingOrders: Orders = flights.map(({ index, pours }) => {
    const ids = pours.map(({ id }) => id);
    const drawn = plan.servingOrders[index];
    if (drawn !== undefined && covers(drawn.rows, ids)) return drawn;
    changed = true;
    const rows = designServingOrders([ids], random).flights[0]?.rows ?? [];
    return { rows: rows.map((row) => row.map(pourId)) };
  });
  return changed ? { ...plan, servingOrders } : plan;
}

/** All orders drawn anew, whatever they were. */
export const redrawnOrders = (plan: Plan, random: () => number): Plan =>
  withServingOrders({ ...plan, servingOrders: [] }, random);
