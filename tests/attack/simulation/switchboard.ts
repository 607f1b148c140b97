import type { Badge, LiveServer } from '../../../server/live/rooms.ts';
import type { Wire } from './wire.ts';

type Next = (error?: Error & { readonly data?: unknown }) => void;
type Middleware = (socket: ServerEnd, next: Next) => void;

/** The server's end of one connection, as far as the house uses one. */
export class ServerEnd {
  readonly id: string;
  /** Its line keeps up: what is sent waits in the wire, not here. */
  readonly conn = { on: () => undefined, transport: { writable: true } };
  readonly handshake: { readonly auth: unknown };
  data: Badge | undefined;
  readonly #board: Switchboard;
  readonly #wire: Wire;
  #receive: (packet: readonly unknown[]) => void = () => undefined;
  #onDisconnect: (reason: string) => void = () => undefined;

  constructor(board: Switchboard, id: string, auth: unknown, wire: Wire) {
    this.#board = board;
    this.id = id;
    this.handshake = { auth };
    this.#wire = wire;
  }

  use(receive: (packet: readonly unknown[]) => void): void {
    this.#receive = receive;
  }
  on(event: string, run: (reason: string) => void): void {
    if (event === 'disconnect') this.#onDisconnect = run;
  }
  join(room: string): void {
    this.#board.seat(this, room);
  }
  leave(room: string): void {
    this.#board.sockets.adapter.rooms.get(room)?.delete(this.id);
  }
  get connected(): boolean {
    return this.#board.connected.has(this);
  }
  to(room: string) {
    return this.#board.to(room, this);
  }
  emit(event: string, payload: unknown): void {
    this.#board.say(() => {
      if (!this.#board.power.on) return;
      this.#wire.down({ event, payload });
      this.#board.overheard?.(this, event, payload);
    });
  }
  disconnect(): void {
    this.gone('server namespace disconnect');
    this.#wire.close('server', 'io server disconnect');
  }

  /** The process is gone: the machine resets the connection. */
  dies(): void {
    this.#wire.reset();
  }

  hears(event: string, payload: unknown, answer: (value: unknown) => void): void {
    const told = (value: unknown): void => {
      this.#board.say(() => answer(value));
    };
    this.#board.does(() => this.#receive([event, payload, told]));
  }
  /** @param reason as Socket.IO names it */
  gone(reason: string): void {
    this.#board.does(() => {
      if (this.#board.forget(this)) this.#onDisconnect(reason);
    });
  }
}

/** Stands where socket.io's server stands, for one life of the server: rooms, broadcasts and the door. */
export class Switchboard {
  readonly power: { readonly on: boolean };
  readonly sockets = {
    adapter: { rooms: new Map<string, Set<string>>() },
    sockets: new Map<string, ServerEnd>(),
  };
  /** Says something, now or when it may be said. */
  say: (run: () => void) => void = (run) => run();
  /** Runs what comes in, when the process runs. */
  does: (run: () => void) => void = (run) => run();
  /** A planted fault that passes on what it hears. */
  overheard: ((by: ServerEnd, event: string, payload: unknown) => void) | undefined;
  #middleware: Middleware = (_, next) => next();
  #welcome: (socket: ServerEnd) => void = () => undefined;
  #count = 0;

  constructor(power: { readonly on: boolean }) {
    this.power = power;
  }

  /** The same, by the name under which the house knows it. */
  get io(): LiveServer {
    return this as unknown as LiveServer;
  }

  use(middleware: Middleware): void {
    this.#middleware = middleware;
  }
  on(_event: 'connection', welcome: (socket: ServerEnd) => void): void {
    this.#welcome = welcome;
  }

  /** Who comes in, or the refusal that the device is told: undefined where it is to come again. */
  async admit(auth: unknown, wire: Wire): Promise<ServerEnd | { readonly refused: unknown }> {
    this.#count += 1;
    const end = new ServerEnd(this, `socket-${this.#count}`, auth, wire);
    const error = await new Promise<Parameters<Next>[0]>((told) => this.#middleware(end, told));
    if (error !== undefined) return { refused: error.data };
    this.sockets.sockets.set(end.id, end);
    return end;
  }

  /** After the device has been told that it is in. */
  welcome(end: ServerEnd): void {
    this.#welcome(end);
  }

  disconnectSockets(): void {
    for (const end of [...this.connected]) end.disconnect();
  }

  to(rooms: string | readonly string[], except?: ServerEnd) {
    return {
      emit: (event: string, payload: unknown): void => {
        const members = new Set([rooms].flat().flatMap((room) => [...this.#members(room)]));
        for (const end of members) if (end !== except) end.emit(event, payload);
      },
    };
  }

  in(room: string) {
    return {
      emit: this.to(room).emit,
      socketsJoin: (other: string): void => {
        for (const end of [...this.#members(room)]) this.seat(end, other);
      },
      disconnectSockets: (): void => {
        for (const end of [...this.#members(room)]) end.disconnect();
      },
    };
  }

  seat(end: ServerEnd, room: string): void {
    const { rooms } = this.sockets.adapter;
    rooms.set(room, (rooms.get(room) ?? new Set()).add(end.id));
  }

  /** False when it was gone already. */
  forget(end: ServerEnd): boolean {
    for (const members of this.sockets.adapter.rooms.values()) members.delete(end.id);
    return this.sockets.sockets.delete(end.id);
  }

  get connected(): ReadonlySet<ServerEnd> {
    return new Set(this.sockets.sockets.values());
  }

  #members(room: string): ServerEnd[] {
    const ids = this.sockets.adapter.rooms.get(room) ?? [];
    return [...ids].flatMap((id) => this.sockets.sockets.get(id) ?? []);
  }
}
