import { type ReadonlySignal, signal } from '@preact/signals-core';
import { type BoardPart, type BoardView, boardOfParts } from '../wire/board.ts';
import { type Parts, withChange } from '../wire/parts.ts';
import type { FollowerSocket } from './line.ts';

/** The board, put together from what the server sends of it; null until it has sent any. */
export function followBoard(socket: FollowerSocket): ReadonlySignal<BoardView | null> {
  const board = signal<BoardView | null>(null);
  let parts: Parts<BoardPart> = new Map();
  // A connection keeps the order, and each new one begins anew: nothing can be missing in between [F2].
  socket.on('board-change', (change) => {
    parts = withChange(change.anew ? new Map() : parts, change);
    board.value = boardOfParts(parts, change.version);
  });
  return board;
}
