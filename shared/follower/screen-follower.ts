import { effect, type ReadonlySignal, signal } from '@preact/signals-core';
import type { ScreenShows } from '../../core/session/state.ts';
import type { ScreenView } from '../../core/session/views/screen.ts';
import type { StageView } from '../../core/session/views/stage.ts';
import type { BoardView } from '../wire/board.ts';
import { followBoard } from './board.ts';
import { connect, type FollowerOptions, type LinkState } from './connection.ts';
import { followGuesses, type ToldGuesses } from './guesses.ts';
import type { FollowerSocket } from './line.ts';
import type { ServerClock } from './server-clock.ts';
import { createStageGate } from './stage-gate.ts';
import { after as afterMs } from './timer.ts';

/** Everything a screen for the whole room follows. It asks for nothing: nobody can reach it. */
export interface ScreenFollower {
  readonly link: ReadonlySignal<LinkState>;
  readonly clock: ServerClock;
  /** For the call, which has a conversation of its own on this line. */
  readonly socket: FollowerSocket;
  /** The stage as it should show now: a new cue appears at the moment set for everybody [F4]. */
  readonly stage: ReadonlySignal<StageView | null>;
  readonly board: ReadonlySignal<BoardView | null>;
  /** What the host has given it to, in the cue that shows. */
  readonly shows: ReadonlySignal<ScreenShows>;
  /** What the room guessed of the pours whose names are told. */
  readonly guesses: ReadonlySignal<ToldGuesses>;
  wake(): void;
  close(): void;
}

export function followAsScreen(options: FollowerOptions): ScreenFollower {
  const { socket, link, clock, wake, close } = connect('screen', options, () => gate.stage.peek());
  const gate = createStageGate({ now: clock.now, after: options.after ?? afterMs });
  const board = followBoard(socket);
  const given = signal<ScreenView | null>(null);
  const shows = signal<ScreenShows>({ is: 'room' });
  // What is meant for the next cue waits until that shows [F4].
  const stopFollowing = effect(() => {
    const [stage, view] = [gate.stage.value, given.value];
    const cue = stage?.status === 'under-way' ? stage.cue.id : null;
    if (view !== null && view.cue === cue) shows.value = view.shows;
  });
  socket.on('screen', (view) => {
    given.value = view;
  });
  const guesses = followGuesses(socket);
  socket.on('rewound', gate.rewind);
  socket.on('stage', gate.receive);
  socket.on('news', gate.change);
  return {
    link,
    clock,
    socket,
    stage: gate.stage,
    board,
    shows,
    guesses,
    wake,
    close() {
      stopFollowing();
      gate.close();
      close();
    },
  };
}
