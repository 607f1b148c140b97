import type { SeatId } from '../../core/ids.ts';
import type { SessionEvent } from '../../core/session/event.ts';
import { servedInOwnOrders } from '../../core/session/serving.ts';
import type { Evening, Finished, UnderWay } from '../../core/session/state.ts';
import { seatsSignalledAnew } from '../../core/session/views/seat-shown.ts';

/**
 * The seats whose own view may have become another one: in a full room that is one at a time, and at most taps none.
 * `connected` are those that somebody would be told about when it may be any of them.
 */
export function seatsTouched(
  before: UnderWay | Finished | undefined,
  after: UnderWay | Finished,
  events: readonly SessionEvent[],
  connected: () => Iterable<SeatId>,
): Iterable<SeatId> {
  if (touchesAll(before, after)) return connected();
  return new Set([...seatsIn(events), ...seatsSignalledAnew(before, after)]);
}

/** Whether the running order may have become another one: it is by far the largest view, and few changes reach it. */
export const runningOrderTouched = (before: Evening | undefined, after: Evening): boolean =>
  differs(before, after, ['cues', 'dropped', 'closingDropped', 'fitted', 'shortTalks']);

/** Whether a part of the evening is another one now; every change makes a new one. */
const differs = (before: Evening | undefined, after: Evening, parts: readonly (keyof Evening)[]): boolean =>
  parts.some((part) => before?.[part] !== after[part]);

/** Whether something changed that stands in everybody's seat view: with a common order that is only a dropped pour. */
function touchesAll(before: Evening | undefined, after: Evening): boolean {
  const ownPours = servedInOwnOrders(after.plan) || after.plan.trials.length > 0;
  return differs(before, after, ownPours ? ['dropped', 'plan', 'reached', 'revealed'] : ['dropped']);
}

const seatsIn = (events: readonly SessionEvent[]): SeatId[] =>
  events.flatMap((event) => {
    if (!('seat' in event)) return [];
    return typeof event.seat === 'string' ? event.seat : event.seat.id;
  });
