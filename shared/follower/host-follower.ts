import { type ReadonlySignal, signal } from '@preact/signals-core';
import type { CommandId } from '../../core/ids.ts';
import type { HostView, RunningOrderView } from '../../core/session/views/host.ts';
import type { NoAnswer } from '../wire/answer.ts';
import type { BoardView } from '../wire/board.ts';
import type { SentHostCommand } from '../wire/commands.ts';
import type { PouringCommand, PouringView } from '../wire/pouring.ts';
import type { CommandAnswer, PresenceView, TalkView } from '../wire/protocol.ts';
import { followBoard } from './board.ts';
import { connect, envelope, type FollowerOptions, type LinkState } from './connection.ts';
import { followGuesses, type ToldGuesses } from './guesses.ts';
import { createHostGate } from './host-gate.ts';
import { joinRoomAndSeats } from './host-room.ts';
import type { FollowerSocket } from './line.ts';
import type { ServerClock } from './server-clock.ts';
import { after as afterMs } from './timer.ts';

/** Everything a host's device follows, and everything it may ask. */
export interface HostFollower {
  readonly link: ReadonlySignal<LinkState>;
  readonly clock: ServerClock;
  /** For the call, which has a conversation of its own on this line. */
  readonly socket: FollowerSocket;
  /** The room as it should show now: a new cue appears at the moment set for everybody [F4]. Null before the doors are open. */
  readonly view: ReadonlySignal<HostView | null>;
  readonly runningOrder: ReadonlySignal<RunningOrderView | null>;
  readonly presence: ReadonlySignal<PresenceView>;
  readonly board: ReadonlySignal<BoardView | null>;
  /** How many have said what goes to the table; null while no talk is open. */
  readonly talk: ReadonlySignal<TalkView | null>;
  /** What the room guessed of the pours whose names are told. */
  readonly guesses: ReadonlySignal<ToldGuesses>;
  readonly pouring: ReadonlySignal<PouringView | null>;
  /** How many of the last things that were acknowledged are missing from the server's log; 0 when all is well [F7]. */
  readonly lostEnd: ReadonlySignal<number>;
  send(command: SentHostCommand): Promise<CommandAnswer | NoAnswer>;
  /** `id` becomes the tick's, by which it can be undone. */
  sendPouringCommand(id: CommandId, command: PouringCommand): Promise<CommandAnswer | NoAnswer>;
  wake(): void;
  close(): void;
}

export interface HostFollowerOptions extends FollowerOptions {
  readonly newId: () => CommandId;
}

export function followAsHost(options: HostFollowerOptions): HostFollower {
  const connection = connect('host', options, () => gate.view.peek());
  const { socket, clock } = connection;
  const gate = createHostGate({ now: clock.now, after: options.after ?? afterMs });
  const joined = joinRoomAndSeats(gate.receiveView);
  const presence = signal<PresenceView>({ hosts: 0, seats: [], screens: 0, screensAsking: [] });
  const board = followBoard(socket);
  const talk = signal<TalkView | null>(null);
  const guesses = followGuesses(socket);
  const pouring = signal<PouringView | null>(null);
  const lostEnd = signal(0);

  socket.on('rewound', () => {
    gate.rewind();
    pouring.value = null;
  });
  socket.on('lost-end', ({ missing }) => {
    lostEnd.value = missing;
  });
  socket.on('room', joined.room);
  socket.on('room-seats', joined.seats);
  socket.on('running-order', gate.receiveOrder);
  socket.on('presence', (next) => {
    presence.value = next;
  });

  socket.on('talk', (next) => {
    talk.value = next;
  });
  socket.on('pouring', (next) => {
    if (next.version >= (pouring.peek()?.version ?? 0)) pouring.value = next;
  });

  return {
    link: connection.link,
    clock,
    socket,
    view: gate.view,
    runningOrder: gate.runningOrder,
    presence,
    board,
    talk,
    guesses,
    pouring,
    lostEnd,
    send: (command) => connection.ask('host:ask', envelope(options.newId(), command)),
    sendPouringCommand: (id, command) => connection.ask('pouring:ask', envelope(id, command)),
    wake: connection.wake,
    close() {
      gate.close();
      connection.close();
    },
  };
}
