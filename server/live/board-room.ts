import type { SeatId, TastingId } from '../../core/ids.ts';
import type { Session } from '../../core/session/state.ts';
import { durationMs } from '../../core/units.ts';
import { type BoardPart, type BoardView, boardOfParts, partsOfBoard } from '../../shared/wire/board.ts';
import type { Parts } from '../../shared/wire/parts.ts';
import { type TalkView, wholeBoardsUntil } from '../../shared/wire/protocol.ts';
import type { Clock } from '../clock.ts';
import type { PermittedPage, Store } from '../store/store.ts';
import { boardOf, openBoards, tableOf, talkOf, unnamedNotes, unnamedPages } from './board.ts';
import { Coalescer } from './coalescer.ts';
import { PartsDelivery } from './parts-delivery.ts';
import { hostsOf, type LiveServer, type LiveSocket } from './rooms.ts';
import { UnnamedPages } from './unnamed-pages.ts';

/** A table that talks and types at once must not make a message of every word. */
const pause = durationMs(500);
/** Pages of before get a whole board each time. */
const wholePause = durationMs(3000);

/** Keeps the board of one tasting the same on all devices, and empty while no discussion is open [Q1]. */
export class BoardRoom {
  readonly #tasting: TastingId;
  readonly #io: LiveServer;
  readonly #store: Store;
  readonly #session: () => Session;
  readonly #sending: Coalescer;
  readonly #sendingWhole: Coalescer;
  readonly #delivery: PartsDelivery<BoardPart>;
  readonly #unnamed: UnnamedPages;
  /** What was permitted of the open pours when it was last read; read again only for whoever has changed it. */
  readonly #pages = new Map<SeatId, readonly PermittedPage[]>();
  readonly #stale = new Set<SeatId>();
  /** The pours that `pages` are of. */
  #open: readonly string[] = [];
  /** Whether a page of before has ever come in. */
  #servesBefore = false;
  /** Begins at the time of loading, so that it also grows over restarts. */
  #version: number;
  #parts: Parts<BoardPart> = new Map();
  /** As the hosts were told. */
  #talk: TalkView | null = null;

  constructor(
    given: {
      readonly io: LiveServer;
      readonly tasting: TastingId;
      readonly store: Store;
      readonly clock: Clock;
    },
    session: () => Session,
  ) {
    const { io, tasting, clock } = given;
    this.#tasting = tasting;
    this.#io = io;
    this.#store = given.store;
    this.#session = session;
    this.#version = clock.now();
    this.#unnamed = new UnnamedPages(clock, () => this.#sending.now());
    this.#parts = this.#read();
    this.#delivery = new PartsDelivery<BoardPart>({
      io,
      clock,
      name: `${tasting}/board`,
      parts: () => this.#parts,
      send: (to, change, anew) => to.emit('board-change', { version: this.#version, anew, ...change }),
    });
    this.#sending = new Coalescer(clock, pause, () => this.#send());
    this.#sendingWhole = new Coalescer(clock, wholePause, () => {
      io.to(this.#wholeBoards).emit('board', this.view());
    });
  }

  /** As it ought to be shown now. */
  view(): BoardView {
    return boardOfParts(this.#parts, this.#version);
  }

  /** From now on these are kept level. */
  welcome(sockets: readonly LiveSocket[]): void {
    for (const socket of sockets) if (socket.data.bearer.role === 'host') socket.emit('talk', this.#talk);
    const ofBefore = sockets.filter(({ data }) => data.protocol <= wholeBoardsUntil);
    for (const socket of ofBefore) {
      this.#servesBefore = true;
      void socket.join(this.#wholeBoards);
      socket.emit('board', this.view());
    }
    if (ofBefore.length < sockets.length) {
      this.#delivery.welcome(sockets.filter((socket) => !ofBefore.includes(socket)));
    }
  }

  /** After a change of the session: what is opened or closed shows at once, a changed name soon. */
  follow(before: Session, after: Session): void {
    const [was, is] = [openBoards(before), openBoards(after)];
    if (was.join() !== is.join()) this.#sending.now();
    else if (is.length > 0 && seatsOf(before) !== seatsOf(after)) this.#sending.soon();
  }

  /** After a change of this seat's notes that are on it; what is withdrawn goes at once [Q2]. */
  notesChanged(seat: SeatId, withdrawn: boolean): void {
    this.#stale.add(seat);
    if (withdrawn) this.#sending.now();
    else this.#sending.soon();
  }

  stop(): void {
    this.#sending.stop();
    this.#unnamed.stop();
    this.#sendingWhole.stop();
    this.#delivery.stop();
  }

  get #wholeBoards(): string {
    return `${this.#tasting}/whole-boards`;
  }

  #send(): void {
    const before = this.#parts;
    const next = this.#read();
    const same = next.size === before.size && [...next].every(([key, part]) => before.get(key) === part);
    if (same) return;
    const less = [...before.keys()].some((key) => !next.has(key)) || before.size === 0;
    this.#parts = next;
    this.#version += 1;
    this.#delivery.deliver();
    if (!this.#servesBefore) return;
    if (less) this.#sendingWhole.now();
    else this.#sendingWhole.soon();
  }

  /** What says the same as before stays the same object, and is not sent again. */
  #read(): Parts<BoardPart> {
    const session = this.#session();
    this.#readPages(openBoards(session));
    const pages = [...this.#pages.values()].flat();
    const talk = talkOf(session, pages);
    this.#tellHosts(talk);
    const lots = this.#unnamed.lots(openBoards(session), unnamedPages(pages), talk?.chosen === talk?.of);
    const unnamed = unnamedNotes(pages, lots);
    const lotOf = new Map(unnamed.map(({ note, lot }) => [note, lot]));
    const board = { table: tableOf(session), pours: boardOf(session, pages, unnamed) };
    const next = partsOfBoard(board, (note) => lotOf.get(note));
    for (const [key, part] of next) {
      const known = this.#parts.get(key);
      if (known !== undefined && JSON.stringify(known) === JSON.stringify(part)) next.set(key, known);
    }
    return next;
  }

  #tellHosts(talk: TalkView | null): void {
    if (JSON.stringify(talk) === JSON.stringify(this.#talk)) return;
    this.#talk = talk;
    this.#io.to(hostsOf(this.#tasting)).emit('talk', talk);
  }

  #readPages(open: ReturnType<typeof openBoards>): void {
    const { notebooks } = this.#store;
    if (open.join() === this.#open.join()) {
      for (const seat of open.length === 0 ? [] : this.#stale) {
        this.#pages.set(seat, notebooks.readPermitted(this.#tasting, open, seat));
      }
    } else {
      this.#pages.clear();
      for (const page of open.length === 0 ? [] : notebooks.readPermitted(this.#tasting, open)) {
        this.#pages.set(page.seat, [...(this.#pages.get(page.seat) ?? []), page]);
      }
    }
    this.#open = open;
    this.#stale.clear();
  }
}

const seatsOf = (session: Session) => (session.status === 'unopened' ? undefined : session.seats);
