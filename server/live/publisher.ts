import type { SeatId, TastingId } from '../../core/ids.ts';
import type { SessionEvent } from '../../core/session/event.ts';
import type { Seat, Session } from '../../core/session/state.ts';
import { screenView } from '../../core/session/views/screen.ts';
import { seatView } from '../../core/session/views/seat.ts';
import { durationMs } from '../../core/units.ts';
import type { DevicesView } from '../../shared/wire/devices.ts';
import type { Dismissal, PresenceView } from '../../shared/wire/protocol.ts';
import { BoardRoom } from './board-room.ts';
import { CallRoom } from './call-room.ts';
import { Coalescer } from './coalescer.ts';
import { GuessRoom } from './guess-room.ts';
import { Helpers } from './helpers.ts';
import { HostShow } from './host-show.ts';
import type { NotesChange } from './note-desk.ts';
import type { Presence } from './presence.ts';
import type { PublisherParts } from './publisher-parts.ts';
import {
  everybodyAt,
  hostsOf,
  type LiveServer,
  type LiveSocket,
  letGo,
  previewsOf,
  screensOf,
  seatRoom,
  socketsIn,
} from './rooms.ts';
import type { ScreensAtDoor } from './screens-at-door.ts';
import { type NotesPlace, SeatNotes } from './seat-notes.ts';
import { StageShow } from './stage-show.ts';
import type { Standing } from './standing.ts';
import { seatsTouched } from './views-touched.ts';

const hostPause = durationMs(100);
const presencePause = durationMs(250);

/**
 * Tells devices what they may see, whole views by role. What is the same for all is serialised once and broadcast; a
 * view that would say the same again is not sent.
 */
export class Publisher {
  readonly seats: SeatNotes;
  readonly call: CallRoom;
  readonly #io: LiveServer;
  readonly #tasting: TastingId;
  readonly #presence: Presence;
  readonly #screens: ScreensAtDoor;
  readonly #stage: StageShow;
  readonly #host: HostShow;
  readonly #hosts: Coalescer;
  readonly #board: BoardRoom;
  readonly #guesses: GuessRoom;
  readonly #shown: Coalescer;
  readonly #helpers: Helpers;
  #now: Standing;

  constructor(parts: PublisherParts, standing: Standing) {
    this.#io = parts.io;
    this.#tasting = parts.tasting;
    this.#presence = parts.presence;
    this.#screens = parts.screens;
    this.#helpers = new Helpers(parts);
    this.call = new CallRoom({ ...parts, session: () => this.#now.session });
    this.seats = new SeatNotes(parts);
    this.#now = standing;
    this.#stage = new StageShow(parts.io, parts.tasting, standing);
    this.#host = new HostShow(parts.io, parts.tasting, standing);
    this.#hosts = new Coalescer(parts.clock, hostPause, () => this.#host.send(this.#now));
    this.#board = new BoardRoom(parts, () => this.#now.session);
    this.#guesses = new GuessRoom(parts, () => this.#now.session);
    this.#shown = new Coalescer(parts.clock, presencePause, () => {
      this.#io.to(hostsOf(this.#tasting)).emit('presence', this.#present());
    });
  }

  /** After every change that is on disk. `byHost`: the host's own tap shows on their devices without delay. */
  changed(next: Standing, events: readonly SessionEvent[], byHost: boolean): void {
    const before = this.#now.session;
    this.#now = next;
    this.call.follow();
    this.#stage.send(next);
    this.#sendScreen(before, next.session);
    this.#sendSeats(before, next.session, events);
    this.#helpers.show(next);
    if (byHost) this.#hosts.now();
    else this.#hosts.soon();
    this.#board.follow(before, next.session);
    this.#guesses.follow();
  }

  /** A guest's own notes changed: nobody but their devices hears of it unless the board is open [Q1]. */
  notesChanged(where: NotesPlace, change: NotesChange): void {
    this.seats.notesChanged(where, change);
    if (change.onBoard) this.#board.notesChanged(where.seat, change.withdrawn);
    if (change.guessWithdrawn) this.#guesses.withdrawn();
  }

  presenceChanged(): void {
    this.#shown.soon();
  }

  /**
   * Brings a device level in one burst, whatever it has missed [F2], and keeps it level from now on.
   * @param rewound it has seen more than there is now [F7]
   */
  welcome(socket: LiveSocket, rewound = false): void {
    const { bearer } = socket.data;
    if (rewound) socket.emit('rewound');
    socket.join(everybodyAt(this.#tasting));
    switch (bearer.role) {
      case 'host':
        this.#host.welcome(socket, this.#now);
        socket.emit('presence', this.#present());
        this.#showTalk([socket]);
        return;
      case 'helper':
        this.#helpers.welcome(socket, this.#now);
        return;
      case 'screen':
        this.#stage.follow(socket);
        socket.join((bearer.preview ? previewsOf : screensOf)(this.#tasting));
        this.#showScreen(socket);
        return;
      case 'guest': {
        socket.join(seatRoom(this.#tasting, bearer.seat));
        const entered = this.seats.enter(socket, bearer.seat);
        if (follows(seatsOf(this.#now.session)?.[bearer.seat])) this.#stage.follow(socket);
        this.#levelSeat(bearer.seat, [socket], entered);
        return;
      }
      default:
        bearer satisfies never;
    }
  }

  /** [F7] */
  showLostEnd(missing: number): void {
    this.#io.to(hostsOf(this.#tasting)).emit('lost-end', { missing });
  }

  dismissScreens(): void {
    this.call.dropScreens();
    this.#io.to(screensOf(this.#tasting)).emit('dismissal', 'key-withdrawn');
    this.#io.in(screensOf(this.#tasting)).disconnectSockets(true);
  }

  /** Hangs up on every device whose key does not stand any more. */
  dismissWithdrawn(stands: (hash: string) => boolean): void {
    this.call.dropWithdrawn(stands);
    for (const socket of socketsIn(this.#io, everybodyAt(this.#tasting))) {
      if (!stands(socket.data.hash)) letGo(socket, 'key-withdrawn');
    }
  }

  /** Its devices are let go, and what it had shared is taken down. */
  seatForgotten(seat: SeatId): void {
    this.call.dropSeat(seat);
    const devices = seatRoom(this.#tasting, seat);
    this.#io.to(devices).emit('dismissal', 'key-withdrawn');
    this.#io.in(devices).disconnectSockets(true);
    this.#board.notesChanged(seat, true);
    this.#guesses.withdrawn();
  }

  dismissEverybody(why: Dismissal): void {
    this.#io.to(everybodyAt(this.#tasting)).emit('dismissal', why);
    this.#io.in(everybodyAt(this.#tasting)).disconnectSockets(true);
  }

  stop(): void {
    this.call.stop();
    this.#hosts.stop();
    this.#board.stop();
    this.#shown.stop();
  }

  #showScreen(socket: LiveSocket): void {
    this.#stage.sendTo(socket, this.#now);
    const { session } = this.#now;
    if (session.status !== 'unopened') socket.emit('screen', screenView(session));
    this.#showTalk([socket]);
  }

  /**
   * @param sockets all devices of the seat, or one that has come
   * @param entered what that one may know of the others
   */
  #levelSeat(seat: SeatId, sockets: readonly LiveSocket[], entered?: DevicesView): void {
    const { session, version } = this.#now;
    if (session.status === 'unopened') return;
    const own = seatView(session, seat, version);
    if (own !== undefined) for (const socket of sockets) socket.emit('seat', own);
    // At the door one sees that one waits, and nothing of the room.
    if (!follows(session.seats[seat])) return;
    this.seats.level(seat, sockets.length === 1 ? sockets[0] : undefined, entered);
    for (const socket of sockets) this.#stage.sendTo(socket, this.#now);
    this.#showTalk(sockets);
  }

  #showTalk(sockets: readonly LiveSocket[]): void {
    this.#board.welcome(sockets);
    this.#guesses.welcome(sockets);
  }

  /** [F8] */
  #sendScreen(before: Session, after: Session): void {
    if (after.status === 'unopened') return;
    const view = screenView(after);
    if (before.status !== 'unopened' && textOf(screenView(before)) === textOf(view)) return;
    this.#io.to([screensOf(this.#tasting), previewsOf(this.#tasting)]).emit('screen', view);
  }

  #sendSeats(before: Session, after: Session, events: readonly SessionEvent[]): void {
    if (after.status === 'unopened') return;
    const was = before.status === 'unopened' ? undefined : before;
    for (const seat of seatsTouched(was, after, events, () => [...this.#presence.connectedSeats()])) {
      const [from, to] = [was?.seats[seat], after.seats[seat]];
      if (from?.presence !== to?.presence) this.#seatMoved(seat, from, to);
      else {
        const view = seatView(after, seat, this.#now.version);
        const same = was !== undefined && withoutVersion(seatView(was, seat, 0)) === withoutVersion(view);
        if (view !== undefined && !same) this.#io.to(seatRoom(this.#tasting, seat)).emit('seat', view);
      }
    }
  }

  #seatMoved(seat: SeatId, from: Seat | undefined, to: Seat | undefined): void {
    const devices = seatRoom(this.#tasting, seat);
    if (to?.presence === 'removed') {
      this.#io.to(devices).emit('dismissal', 'removed');
      this.#io.in(devices).disconnectSockets(true);
    } else if (!follows(from) && follows(to)) {
      const sockets = socketsIn(this.#io, devices);
      for (const socket of sockets) this.#stage.follow(socket);
      this.#levelSeat(seat, sockets);
    } else {
      const view = seatView(this.#evening(), seat, this.#now.version);
      if (view !== undefined) this.#io.to(devices).emit('seat', view);
    }
  }

  #present(): PresenceView {
    return { ...this.#presence.view(), screensAsking: this.#screens.asking };
  }

  #evening() {
    const { session } = this.#now;
    if (session.status === 'unopened') throw new Error('Nobody has a seat before the doors are open.');
    return session;
  }
}

const textOf = (value: unknown): string => JSON.stringify(value) ?? '';
/** Whether a view says something new does not depend on the number of events behind it. */
const withoutVersion = (view: { readonly version: number } | undefined): string =>
  textOf(view && { ...view, version: 0 });
const seatsOf = (session: Session) => (session.status === 'unopened' ? undefined : session.seats);
const follows = (seat: Seat | undefined): boolean => seat?.presence === 'seated' || seat?.presence === 'left';
