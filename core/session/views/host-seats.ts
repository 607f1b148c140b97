import type { SeatId } from '../../ids.ts';
import { lastTakenAt } from '../seating.ts';
import type { Evening, Finished, Seat, UnderWay } from '../state.ts';
import { type SeatShown, seatShown, seatsSignalledAnew, signalOf } from './seat-shown.ts';

export interface HostSeat extends SeatShown {
  readonly id: SeatId;
  /** How many glasses this guest has missed. */
  readonly missed: number;
}

export type HostSeats = ReadonlyMap<SeatId, HostSeat>;

/**
 * Everybody's seat as the host sees it, in the order in which they were taken.
 * @param known what was shown of an evening before: who has not changed since is the same object, and where nobody has, so is
 * the whole
 */
export function hostSeats(
  session: UnderWay | Finished,
  known?: { readonly session: UnderWay | Finished; readonly seats: HostSeats },
): HostSeats {
  const before = known && staysAlike(known.session, session) ? known.session : undefined;
  const since = before && session.timeline[before.timeline.length];
  if (known && before?.seats === session.seats && (since === undefined || since.at > lastTakenAt(session))) {
    const anew = seatsSignalledAnew(before, session).flatMap((id) => session.seats[id] ?? []);
    if (anew.length === 0) return known.seats;
    return new Map([...known.seats, ...anew.map((seat) => [seat.id, hostSeat(session, seat)] as const)]);
  }
  return new Map(
    Object.values(session.seats).map((seat) => {
      const same =
        before?.seats[seat.id] === seat &&
        signalOf(before, seat) === signalOf(session, seat) &&
        // Where the room stood when they sat down is what it was [S5].
        (since === undefined || since.at > seat.takenAt);
      return [seat.id, (same ? known?.seats.get(seat.id) : undefined) ?? hostSeat(session, seat)];
    }),
  );
}

/** Whether nothing else that seats are shown by is another than it was; what came behind does not count. */
const staysAlike = (before: Evening, after: Evening): boolean =>
  before.cues === after.cues &&
  before.dropped === after.dropped &&
  before.timeline.every((entry, index) => after.timeline[index] === entry);

function hostSeat(session: UnderWay | Finished, seat: Seat): HostSeat {
  return {
    id: seat.id,
    ...seatShown(session, seat),
    missed: seat.missed.filter((pour) => !session.dropped.includes(pour)).length,
  };
}
