import { readsRulesFirst } from '../seating.ts';
import type { Finished, KitItem, Seat, Signal, UnderWay } from '../state.ts';

/** What both the host and the guest are shown of a seat. */
export interface SeatShown {
  readonly name: string;
  readonly leftHanded: boolean;
  readonly remote: boolean;
  readonly presence: Seat['presence'];
  readonly cautionsRead: boolean;
  readonly groundRulesAccepted: boolean;
  /** [C4] What stands in this seat's glasses is water from now on. */
  readonly onlyWater: boolean;
  /** [S5] Came late: cautions and rules come before anything else. */
  readonly readsRulesFirst: boolean;
  readonly signal: Signal | null;
  /** What a remote guest has laid ready. */
  readonly kit: readonly KitItem[];
}

export const seatShown = (session: UnderWay | Finished, seat: Seat): SeatShown => ({
  name: seat.name,
  leftHanded: seat.leftHanded,
  remote: seat.remote,
  presence: seat.presence,
  cautionsRead: seat.cautionsRead,
  groundRulesAccepted: seat.groundRulesAccepted,
  onlyWater: seat.onlyWater,
  readsRulesFirst: readsRulesFirst(session, seat),
  signal: signalOf(session, seat),
  kit: seat.kit,
});

export const signalOf = (session: UnderWay | Finished, { id }: Seat): Signal | null =>
  session.status === 'under-way' ? (session.signals[id] ?? null) : null;
