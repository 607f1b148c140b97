import type { PourId, SeatId } from '../../ids.ts';
import type { Finished, Seat, Signal, UnderWay } from '../state.ts';

/** What differs from guest to guest: their own seat. Sent on joining and when it changes, to its own devices only. */
export interface SeatView {
  readonly version: number;
  readonly seat: SeatId;
  readonly name: string;
  readonly leftHanded: boolean;
  readonly remote: boolean;
  readonly presence: Seat['presence'];
  readonly groundRulesAccepted: boolean;
  readonly signal: Signal | null;
  /** Glasses that the room had behind it when this guest sat down, and that they have not caught up with [F3]. */
  readonly missed: readonly PourId[];
}

export function seatView(session: UnderWay | Finished, id: SeatId, version: number): SeatView | undefined {
  const seat = session.seats[id];
  if (seat === undefined) return undefined;
  return {
    version,
    seat: seat.id,
    name: seat.name,
    leftHanded: seat.leftHanded,
    remote: seat.remote,
    presence: seat.presence,
    groundRulesAccepted: seat.groundRulesAccepted,
    signal: session.status === 'under-way' ? (session.signals[id] ?? null) : null,
    missed: seat.missed.filter((pour) => !session.dropped.includes(pour)),
  };
}
