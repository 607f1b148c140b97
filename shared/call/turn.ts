import { type ReadonlySignal, signal } from '@preact/signals-core';
import type { SeatId } from '../../core/ids.ts';
import type { ClockView } from '../../core/session/views/stage.ts';
import { speakersNow, talkNow, talkTime } from '../talk/speaking-order.ts';
import type { BoardView } from '../wire/board.ts';

/** Ms between two looks at the clock: a turn is tens of seconds long. */
const lookEvery = 500;

export interface Turns {
  readonly turn: ReadonlySignal<SeatId | null>;
  close(): void;
}

/**
 * Whose turn it is to speak, as every screen draws it from the board by itself.
 *
 * @param clock of the cue where that is a discussion, else null
 */
export function followTurns(
  board: ReadonlySignal<BoardView | null>,
  clock: () => ClockView | null,
  now: () => number,
): Turns {
  const turn = signal<SeatId | null>(null);
  const look = (): void => {
    turn.value = turnNow(board.peek(), clock(), now());
  };
  const looking = setInterval(look, lookEvery);
  look();
  return { turn, close: () => clearInterval(looking) };
}

function turnNow(board: BoardView | null, clock: ClockView | null, now: number): SeatId | null {
  const talk = board === null ? null : talkNow(board.pours);
  const time = talk === null ? null : talkTime(talk, clock);
  if (board === null || talk === null || time === null) return null;
  return speakersNow(board.table, talk, time, now)?.speaking.seat ?? null;
}
