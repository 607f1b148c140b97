/** The order with one pour taken out and set down at `to` (0 = first; held to the ends). Unknown ids change nothing. */
export function movePour<Id extends string>(order: readonly Id[], id: Id, to: number): readonly Id[] {
  if (!order.includes(id)) return order;
  const rest = order.filter((other) => other !== id);
  const place = Math.min(Math.max(0, Math.trunc(to)), rest.length);
  return [...rest.slice(0, place), id, ...rest.slice(place)];
}
