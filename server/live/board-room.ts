import type { TastingId } from '../../core/ids.ts';
import type { Session } from '../../core/session/state.ts';
import { durationMs } from '../../core/units.ts';
import type { BoardView } from '../../shared/wire/board.ts';
import type { Clock } from '../clock.ts';
import type { Store } from '../store/store.ts';
import { boardOf, openBoards, tableOf } from './board.ts';
import { Coalescer } from './coalescer.ts';
import { followersOf, hostsOf, type LiveServer } from './rooms.ts';

/** A table that talks and types at once must not make a message of every word. */
const pause = durationMs(500);

/** Keeps the board of one tasting the same on all devices, and empty while no discussion is open [Q1]. */
export class BoardRoom {
  readonly #io: LiveServer;
  readonly #tasting: TastingId;
  readonly #store: Store;
  readonly #session: () => Session;
  readonly #sending: Coalescer;
  /** Begins at the time of loading, so that it also grows over restarts. */
  #version: number;
  #shown: Shown;

  constructor(
    parts: {
      readonly io: LiveServer;
      readonly tasting: TastingId;
      readonly store: Store;
      readonly clock: Clock;
    },
    session: () => Session,
  ) {
    this.#io = parts.io;
    this.#tasting = parts.tasting;
    this.#store = parts.store;
    this.#session = session;
    this.#version = parts.clock.now();
    this.#shown = this.#read();
    this.#sending = new Coalescer(parts.clock, pause, () => this.#send());
  }

  /** As it was last sent: a device that joins sees what the others see. */
  view(): BoardView {
    return { version: this.#version, ...this.#shown };
  }

  /** After a change of the session: what is opened or closed shows at once, a changed name soon. */
  follow(before: Session, after: Session): void {
    const [was, is] = [openBoards(before), openBoards(after)];
    if (was.join() !== is.join()) this.#sending.now();
    else if (is.length > 0 && seatsOf(before) !== seatsOf(after)) this.#sending.soon();
  }

  /** After a change of notes that are on it; what is withdrawn goes at once [Q2]. */
  notesChanged(withdrawn: boolean): void {
    if (withdrawn) this.#sending.now();
    else this.#sending.soon();
  }

  stop(): void {
    this.#sending.stop();
  }

  #send(): void {
    const next = this.#read();
    if (JSON.stringify(next) === JSON.stringify(this.#shown)) return;
    this.#shown = next;
    this.#version += 1;
    this.#io.to([followersOf(this.#tasting), hostsOf(this.#tasting)]).emit('board', this.view());
  }

  #read(): Shown {
    const session = this.#session();
    const open = openBoards(session);
    const pages = open.length === 0 ? [] : this.#store.notebooks.readPermitted(this.#tasting, open);
    return { table: tableOf(session), pours: boardOf(session, pages) };
  }
}

type Shown = Omit<BoardView, 'version'>;

const seatsOf = (session: Session) => (session.status === 'unopened' ? undefined : session.seats);
