import { type ReadonlySignal, signal } from '@preact/signals-core';
import type { CommandId, PourId } from '../../core/ids.ts';
import type { SeatView } from '../../core/session/views/seat.ts';
import type { StageView } from '../../core/session/views/stage.ts';
import type { NoAnswer } from '../wire/answer.ts';
import type { BoardView } from '../wire/board.ts';
import type { SentGuestCommand } from '../wire/commands.ts';
import type { DeviceAsk, DevicesView } from '../wire/devices.ts';
import type { CommandAnswer, DeviceAck } from '../wire/protocol.ts';
import type { Consents } from '../wire/sharing.ts';
import { followBoard } from './board.ts';
import { connect, envelope, type FollowerOptions, type LinkState } from './connection.ts';
import { createConsents } from './consents.ts';
import { followGuesses, type ToldGuesses } from './guesses.ts';
import type { FollowerSocket } from './line.ts';
import { createNotebook, type Notebook, type NoteKeep } from './notebook.ts';
import type { ServerClock } from './server-clock.ts';
import { createStageGate } from './stage-gate.ts';
import { after as afterMs } from './timer.ts';

/** Everything a guest's device follows, and everything it may ask. Free of any screen, so that stand-ins use it too. */
export interface GuestFollower {
  readonly link: ReadonlySignal<LinkState>;
  readonly clock: ServerClock;
  /** For the call, which has a conversation of its own on this line. */
  readonly socket: FollowerSocket;
  /** The stage as it should show now: a new cue appears at the moment set for everybody [F4]. */
  readonly stage: ReadonlySignal<StageView | null>;
  readonly seat: ReadonlySignal<SeatView | null>;
  readonly board: ReadonlySignal<BoardView | null>;
  /** What the room guessed of the pours whose names are told. */
  readonly guesses: ReadonlySignal<ToldGuesses>;
  /** The devices of this seat; null before the first word of them. */
  readonly devices: ReadonlySignal<DevicesView | null>;
  readonly notebook: Notebook;
  /** What the guest has answered about each page; a choice moves at once and is sent again until answered [Q2]. */
  readonly consents: ReadonlySignal<ReadonlyMap<PourId, Consents>>;
  send(command: SentGuestCommand): Promise<CommandAnswer | NoAnswer>;
  /** Whether the server has told them. */
  readonly consentsTold: ReadonlySignal<boolean>;
  /** One answer for all of these pages. */
  consent(pours: readonly PourId[], consents: Consents): Promise<CommandAnswer | NoAnswer>;
  askAboutDevices(ask: DeviceAsk): Promise<DeviceAck | NoAnswer>;
  wake(): void;
  close(): void;
}

export interface GuestFollowerOptions extends FollowerOptions {
  readonly keep: NoteKeep;
  readonly newId: () => CommandId;
}

export function followAsGuest(options: GuestFollowerOptions): GuestFollower {
  const connection = connect('guest', options, () => gate.stage.peek());
  const { socket, clock } = connection;
  const after = options.after ?? afterMs;
  const gate = createStageGate({ now: clock.now, after });
  const seat = signal<SeatView | null>(null);
  const board = followBoard(socket);
  const guesses = followGuesses(socket);
  const devices = signal<DevicesView | null>(null);
  const consents = createConsents({
    send: (giving) => connection.ask('note:consent', giving),
    newId: options.newId,
    after,
  });
  const notebook = createNotebook({
    keep: options.keep,
    send: (save) => connection.ask('note:save', save),
    newId: options.newId,
    after,
  });

  socket.on('rewound', () => {
    gate.rewind();
    seat.value = null;
  });
  socket.on('stage', gate.receive);
  socket.on('news', gate.change);
  socket.on('seat', (view) => {
    if (view.version >= (seat.peek()?.version ?? 0)) seat.value = view;
  });
  socket.on('devices', (view) => {
    devices.value = view;
  });
  socket.on('notebook', (view) => {
    notebook.level(view);
    consents.level(view);
  });

  return {
    link: connection.link,
    clock,
    socket,
    stage: gate.stage,
    seat,
    board,
    guesses,
    devices,
    notebook,
    consents: consents.given,
    consentsTold: consents.told,
    send: (command) => connection.ask('guest:ask', envelope(options.newId(), command)),
    consent: consents.give,
    askAboutDevices: (ask) => connection.ask('device:ask', ask),
    wake() {
      connection.wake();
      notebook.flush();
    },
    close() {
      gate.close();
      consents.close();
      connection.close();
    },
  };
}
