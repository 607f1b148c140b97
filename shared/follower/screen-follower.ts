import { type ReadonlySignal, signal } from '@preact/signals-core';
import type { TastingId } from '../../core/ids.ts';
import type { StageView } from '../../core/session/views/stage.ts';
import type { BoardView } from '../wire/board.ts';
import { protocolVersion } from '../wire/protocol.ts';
import { type ConnectionOptions, connect, type LinkState } from './connection.ts';
import { createServerClock, type LocalClock, type ServerClock } from './server-clock.ts';
import { createStageGate } from './stage-gate.ts';
import { type After, after as afterMs } from './timer.ts';

/** Everything a screen for the whole room follows. It asks for nothing: nobody can reach it. */
export interface ScreenFollower {
  readonly link: ReadonlySignal<LinkState>;
  readonly clock: ServerClock;
  /** The stage as it should show now: a new cue appears at the moment set for everybody [F4]. */
  readonly stage: ReadonlySignal<StageView | null>;
  readonly board: ReadonlySignal<BoardView | null>;
  wake(): void;
  close(): void;
}

export interface ScreenFollowerOptions {
  readonly origin?: string;
  readonly tasting: TastingId;
  readonly key: string;
  readonly local?: LocalClock;
  readonly after?: After;
  /** See `ConnectionOptions`. */
  readonly open?: ConnectionOptions['open'];
}

export function followAsScreen(options: ScreenFollowerOptions): ScreenFollower {
  const clock = createServerClock(options.local);
  const { socket, link, wake, close } = connect({
    ...(options.origin === undefined ? {} : { origin: options.origin }),
    credentials: { protocol: protocolVersion, role: 'screen', tasting: options.tasting, key: options.key },
    clock,
    ...(options.local === undefined ? {} : { local: options.local }),
    ...(options.after === undefined ? {} : { after: options.after }),
    ...(options.open === undefined ? {} : { open: options.open }),
  });
  const gate = createStageGate({ now: clock.now, after: options.after ?? afterMs });
  const board = signal<BoardView | null>(null);
  socket.on('stage', gate.receive);
  socket.on('board', (view) => {
    if (view.version >= (board.peek()?.version ?? 0)) board.value = view;
  });
  return {
    link,
    clock,
    stage: gate.stage,
    board,
    wake,
    close() {
      gate.close();
      close();
    },
  };
}
