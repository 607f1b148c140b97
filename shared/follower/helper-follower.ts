import { type ReadonlySignal, signal } from '@preact/signals-core';
import type { CommandId, SeatId } from '../../core/ids.ts';
import type { NoAnswer } from '../wire/answer.ts';
import type { HelperView } from '../wire/helper.ts';
import type { PouringCommand, PouringView } from '../wire/pouring.ts';
import type { CommandAnswer } from '../wire/protocol.ts';
import { connect, envelope, type LinkState } from './connection.ts';
import type { HostFollowerOptions } from './host-follower.ts';

/** Everything a helper's phone follows, and everything it may ask [S6]. */
export interface HelperFollower {
  readonly link: ReadonlySignal<LinkState>;
  readonly view: ReadonlySignal<HelperView | null>;
  readonly pouring: ReadonlySignal<PouringView | null>;
  answer(seat: SeatId): Promise<CommandAnswer | NoAnswer>;
  /** `id` becomes the tick's, by which it can be undone. */
  sendPouringCommand(id: CommandId, command: PouringCommand): Promise<CommandAnswer | NoAnswer>;
  wake(): void;
  close(): void;
}

export function followAsHelper(options: HostFollowerOptions): HelperFollower {
  const view = signal<HelperView | null>(null);
  const pouring = signal<PouringView | null>(null);
  const { socket, link, ...connection } = connect('helper', options, () => view.peek());
  socket.on('rewound', () => {
    view.value = null;
    pouring.value = null;
  });
  socket.on('helper', (next) => {
    if (next.version >= (view.peek()?.version ?? 0)) view.value = next;
  });
  socket.on('pouring', (next) => {
    if (next.version >= (pouring.peek()?.version ?? 0)) pouring.value = next;
  });
  return {
    link,
    view,
    pouring,
    answer: (seat) => connection.ask('helper:ask', envelope(options.newId(), { type: 'AnswerSeat', seat })),
    sendPouringCommand: (id, command) => connection.ask('pouring:ask', envelope(id, command)),
    wake: connection.wake,
    close: connection.close,
  };
}
