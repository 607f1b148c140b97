import { sheetFor } from '../../guess/guess-sheet.ts';
import type { PourId, SeatId } from '../../ids.ts';
import type { GuessSheet } from '../../panel/guess/guess.ts';
import type { Level } from '../../tasting.ts';
import { numbersServed, ownPourAt, placesOf, servedInOwnOrders, servedTo, trialGlasses } from '../serving.ts';
import type { Finished, Seat, UnderWay } from '../state.ts';
import { cardOf, type PourCard } from './pour-card.ts';
import { type SeatShown, seatShown } from './seat-shown.ts';

/** What differs from guest to guest: their own seat. Sent on joining and when it changes, to its own devices only. */
export interface SeatView extends SeatShown {
  readonly version: number;
  readonly seat: SeatId;
  /** With own orders: this seat's pours by place, null where it has not been reached. Null in a common order. */
  readonly served: readonly (PourCard | null)[] | null;
  /** The numbers on this seat's mat at which those stand; null in a common order, and absent from servers of before. */
  readonly servedAt?: readonly number[] | null;
  /** The three glasses of each odd-one-out that has been served, by their codes, in this seat's order. */
  readonly trials: readonly TrialView[];
  /** Glasses that the room had behind it when this guest sat down, and that they have not caught up with [F3]. */
  readonly missed: readonly PourId[];
  /** At home: for how used a table the host's words are, which stand there as text. */
  readonly crowd?: Level;
  /** What there is to guess from, in an order of this seat's own [Q12]; null where nothing is guessed. */
  readonly guess: { readonly choices: GuessSheet; readonly currency: string } | null;
}

interface TrialView {
  readonly id: PourId;
  readonly glasses: readonly string[];
}

export function seatView(session: UnderWay | Finished, id: SeatId, version: number): SeatView | undefined {
  const seat = session.seats[id];
  if (seat === undefined) return undefined;
  return {
    version,
    seat: seat.id,
    ...seatShown(session, seat),
    served: servedInOwnOrders(session.plan) ? ownCards(session, seat) : null,
    servedAt: servedInOwnOrders(session.plan) ? numbersServed(session, seat) : null,
    trials: trialsOf(session, seat),
    missed: seat.missed
      .filter((pour) => !session.dropped.includes(pour))
      .map((pour) => ownPourAt(session, seat, pour)),
    ...(seat.remote ? { crowd: session.plan.level } : {}),
    guess: session.guess && {
      choices: sheetFor(session.guess, seat.id),
      currency: session.plan.currency,
    },
  };
}

function ownCards(session: UnderWay | Finished, seat: Seat): (PourCard | null)[] {
  const served = servedTo(session, seat);
  return placesOf(session).map(({ named }, index) => {
    const pour = served[index];
    return pour !== undefined && session.reached.includes(named) ? cardOf(session, pour) : null;
  });
}

const trialsOf = (session: UnderWay | Finished, seat: Seat): TrialView[] =>
  session.plan.trials
    .filter((trial) => session.reached.includes(trial.id))
    .map((trial) => ({ id: trial.id, glasses: trialGlasses(trial, seat).map((glass) => glass.code) }));
