import type { PourId } from '../ids.ts';
import { pourOf } from '../running-order/cue.ts';
import { cueNow, type Evening, type Seat, type UnderWay } from './state.ts';

export const seated = (evening: Pick<Evening, 'seats'>): Seat[] =>
  Object.values(evening.seats).filter((seat) => seat.presence === 'seated');

/** [F3] What somebody who sits down now has missed: every pour the room has behind it. */
export function missedBy(session: UnderWay): PourId[] {
  const current = pourOf(cueNow(session));
  return session.reached.filter((pour) => pour !== current && !session.dropped.includes(pour));
}
