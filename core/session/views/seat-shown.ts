import { type SeatId, seatId } from '../../ids.ts';
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

const noSignals: UnderWay['signals'] = {};
const signalsOf = (session: UnderWay | Finished | undefined): UnderWay['signals'] =>
  session?.status === 'under-way' ? session.signals : noSignals;

/** Whose signal is another one than it was. */
export function seatsSignalledAnew(
  before: UnderWay | Finished | undefined,
  after: UnderWay | Finished,
): SeatId[] {
  const [was, is] = [signalsOf(before), signalsOf(after)];
  if (was === is) return [];
  const all = new Set([...Object.keys(was), ...Object.keys(is)].map(seatId));
  return [...all].filter((seat) => was[seat] !== is[seat]);
}

export const signalOf = (session: UnderWay | Finished, { id }: Seat): Signal | null =>
  signalsOf(session)[id] ?? null;
