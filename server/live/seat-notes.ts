import type { SeatId, TastingId } from '../../core/ids.ts';
import { type DevicesView, deviceId } from '../../shared/wire/devices.ts';
import { asideOf, type Store } from '../store/store.ts';
import type { DeviceDesk } from './device-desk.ts';
import type { NotesChange } from './note-desk.ts';
import { notebookView } from './notes.ts';
import { type LiveServer, type LiveSocket, letGo, notesRoom, seatRoom, socketsIn } from './rooms.ts';

export interface SeatNotesParts {
  readonly io: LiveServer;
  readonly tasting: TastingId;
  readonly store: Store;
  readonly devices: Pick<DeviceDesk, 'view'>;
}

/** Whose notes changed, in which of the seat's notebooks, and by which device; undefined when all are to be told. */
export interface NotesPlace {
  readonly seat: SeatId;
  readonly notebook: SeatId;
  readonly from: LiveSocket | undefined;
}

/** Tells the devices of a seat of its notes and of each other, each no more than it may have [S4], and nobody else [Q1]. */
export class SeatNotes {
  readonly #parts: SeatNotesParts;

  constructor(parts: SeatNotesParts) {
    this.#parts = parts;
  }

  /** @returns what it may know of the devices of its seat, for it to be told in the same turn */
  enter(socket: LiveSocket, seat: SeatId): DevicesView | undefined {
    const view = this.#parts.devices.view(seat, socket.data.hash);
    socket.join(this.#roomOf(notebookOf(view, socket, seat)));
    return view;
  }

  /**
   * To one socket, or to all devices of the seat.
   *
   * @param entered what `enter` has just said of this one
   */
  level(seat: SeatId, socket?: LiveSocket, entered?: DevicesView): void {
    const { io, devices } = this.#parts;
    if (socket === undefined) io.to(this.#roomOf(seat)).emit('notebook', this.#notebook(seat, seat));
    for (const each of socket === undefined ? this.#socketsOf(seat) : [socket]) {
      const view = entered ?? devices.view(seat, each.data.hash);
      const notebook = notebookOf(view, each, seat);
      if (socket !== undefined || notebook !== seat) each.emit('notebook', this.#notebook(seat, notebook));
      if (view !== undefined) each.emit('devices', view);
    }
  }

  /** Other devices with the same notebook hear of the entry that changed and of all consents; a page takes entries in one by one. */
  notesChanged({ seat, notebook, from }: NotesPlace, { entry }: NotesChange): void {
    const { io, tasting, store } = this.#parts;
    const room = this.#roomOf(notebook);
    const others = from && socketsIn(io, room).filter((each) => each !== from);
    if (others?.length === 0) return;
    const consents = store.notebooks.consents(tasting, notebook);
    const entries = entry === undefined ? [] : [entry];
    const view = notebookView({ seat, entries, consents });
    if (others === undefined) io.to(room).emit('notebook', view);
    else for (const each of others) each.emit('notebook', view);
  }

  /**
   * Every device of the seat hears of the others, and who is none any more is let go. One that has the notes now gets them
   * whole.
   *
   * @param opened the hash of its key
   */
  devicesChanged(seat: SeatId, opened?: string): void {
    for (const socket of this.#socketsOf(seat)) {
      const { hash } = socket.data;
      const view = this.#parts.devices.view(seat, hash);
      if (view === undefined) {
        letGo(socket, 'key-withdrawn');
        continue;
      }
      if (hash === opened) {
        for (const room of socket.rooms) if (room.startsWith(this.#roomOf(seat))) socket.leave(room);
        socket.join(this.#roomOf(seat));
        socket.emit('notebook', this.#notebook(seat, seat));
      }
      socket.emit('devices', view);
    }
  }

  #roomOf(notebook: SeatId): string {
    return notesRoom(this.#parts.tasting, notebook);
  }

  #notebook(seat: SeatId, notebook: SeatId) {
    const { store, tasting } = this.#parts;
    return notebookView({ seat, ...store.notebooks.read(tasting, notebook) });
  }

  #socketsOf(seat: SeatId): LiveSocket[] {
    return socketsIn(this.#parts.io, seatRoom(this.#parts.tasting, seat));
  }
}

const notebookOf = (view: DevicesView | undefined, { data }: LiveSocket, seat: SeatId): SeatId =>
  view?.opens ? seat : asideOf(seat, view?.own ?? deviceId(data.hash));
