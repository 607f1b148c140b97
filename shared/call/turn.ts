import { type ReadonlySignal, signal } from '@preact/signals-core';
import type { SeatId } from '../../core/ids.ts';
import type { ClockView } from '../../core/session/views/stage.ts';
import { turnNow } from '../talk/speaking-order.ts';
import type { BoardView } from '../wire/board.ts';

/** Ms between two looks at the clock: a turn is tens of seconds long. */
const lookEvery = 500;

export interface Turns {
  readonly turn: ReadonlySignal<SeatId | null>;
  close(): void;
}

/** @param clock see `turnsClock` */
export function followTurns(
  board: ReadonlySignal<BoardView | null>,
  clock: () => ClockView | null,
  now: () => number,
): Turns {
  const turn = signal<SeatId | null>(null);
  const look = (): void => {
    turn.value = turnNow(board.peek(), clock(), now())?.speaking.seat ?? null;
  };
  const looking = setInterval(look, lookEvery);
  look();
  return { turn, close: () => clearInterval(looking) };
}
