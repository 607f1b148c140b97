import type { PlannedPour } from './axes/pour-facts.ts';
import { type LineupOptions, weighOrder } from './lineup.ts';

/** The order with one pour taken out and set down at `to` (0 = first; held to the ends). Unknown ids change nothing. */
export function movePour(order: readonly string[], id: string, to: number): readonly string[] {
  if (!order.includes(id)) return order;
  const rest = order.filter((other) => other !== id);
  const place = Math.min(Math.max(0, Math.trunc(to)), rest.length);
  return [...rest.slice(0, place), id, ...rest.slice(place)];
}

export const moveUp = (order: readonly string[], id: string): readonly string[] =>
  movePour(order, id, order.indexOf(id) - 1);

export const moveDown = (order: readonly string[], id: string): readonly string[] =>
  movePour(order, id, order.indexOf(id) + 1);

/** A missing bottle gives its place to another; both orders hold the same positions otherwise. */
export const swapPour = (order: readonly string[], missing: string, standIn: string): readonly string[] =>
  order.includes(standIn) ? order : order.map((id) => (id === missing ? standIn : id));

/**
 * Where a new pour costs least in an order that the host made and wants to keep; the earliest of equals. The
 * lineup is weighed as one flight or by groups: fixed sizes would have to grow first.
 */
export function cheapestPlace(
  order: readonly PlannedPour[],
  pour: PlannedPour,
  options: LineupOptions = {},
): { readonly position: number; readonly cost: number } {
  let best = { position: 0, cost: Number.POSITIVE_INFINITY };
  for (let position = 0; position <= order.length; position++) {
    const { cost } = weighOrder([...order.slice(0, position), pour, ...order.slice(position)], options);
    if (cost < best.cost) best = { position, cost };
  }
  return best;
}
