import type { Socket as TcpSocket } from 'node:net';
import type { Mouth } from './mouth.ts';
import type { LiveServer } from './rooms.ts';

/** What is used of Socket.IO's own adapter: who is in which room, and its usual broadcast. */
interface UsualAdapter {
  readonly nsp: { readonly name: string; readonly sockets: ReadonlyMap<string, Connected> };
  readonly encoder: { encode(packet: object): readonly (string | Buffer)[] };
  readonly rooms: ReadonlyMap<string, ReadonlySet<string>>;
  readonly sids: ReadonlyMap<string, ReadonlySet<string>>;
  addAll(id: string, rooms: ReadonlySet<string>): void;
  del(id: string, room: string): void;
  delAll(id: string): void;
  broadcast(packet: { nsp?: string }, options: BroadcastOptions): void;
}
interface BroadcastOptions {
  readonly rooms: ReadonlySet<string>;
  readonly except?: ReadonlySet<string>;
  readonly flags?: { readonly volatile?: boolean };
}
/** A Socket.IO socket as far as it is needed to write past it, down to the TCP connection. */
interface Connected {
  readonly client: {
    readonly conn: {
      readonly readyState: string;
      readonly upgrading: boolean;
      readonly writeBuffer: readonly unknown[];
      readonly transport: {
        readonly name: string;
        readonly writable: boolean;
        readonly perMessageDeflate: unknown;
        readonly socket?: {
          readonly readyState: number;
          readonly _sender?: { readonly _state: number; readonly _bufferedBytes: number };
          readonly _socket?: TcpSocket;
        };
      };
    };
    writeToEngine(packets: readonly string[], options: object): void;
  };
  notifyOutgoingListeners?(packet: object): void;
}
type AdapterClass = new (...made: never[]) => UsualAdapter;

/** How many deliveries went which way, for tests and figures. */
export interface Deliveries {
  flat: number;
  usual: number;
}

/** Engine.IO's packet that says nothing: to a page that the line lives. */
const lifeSign = textFrame('6');

/**
 * Says to the devices of a room that the line lives, where nothing went to all of them for so many ms. One whose line is
 * busy is passed over, and one that polls: pages ask by themselves when they hear nothing.
 */
export function showLife(io: LiveServer, room: string, quietFor: number): void {
  (io.of('/').adapter as { showLife?: (room: string, quietFor: number) => void }).showLife?.(room, quietFor);
}

const open = 1;

/**
 * The TCP connection to write a frame to, where nothing else is on its way there: an open WebSocket with an empty queue
 * at every level. Anything else (a poll, an upgrade under way, a slow reader, a library that looks different inside)
 * is undefined and takes the usual path, which keeps the order because it has the queue.
 */
function idleConnection({ client: { conn } }: Connected): TcpSocket | undefined {
  const { transport } = conn;
  if (transport.name !== 'websocket' || !transport.writable || transport.perMessageDeflate) return undefined;
  if (conn.readyState !== 'open' || conn.upgrading || conn.writeBuffer.length > 0) return undefined;
  const socket = transport.socket;
  if (socket?.readyState !== open || socket._sender?._state !== 0 || socket._sender._bufferedBytes !== 0)
    return undefined;
  const tcp = socket._socket;
  return tcp?.writable && tcp.writableLength === 0 ? tcp : undefined;
}

/** A text as one whole WebSocket frame of a server: RFC 6455, 5.2. */
export function textFrame(text: string): Buffer {
  const length = Buffer.byteLength(text);
  const head = Buffer.alloc(length < 126 ? 2 : length < 65_536 ? 4 : 10);
  head[0] = 0x81;
  head[1] = length < 126 ? length : length < 65_536 ? 126 : 127;
  if (head.length === 4) head.writeUInt16BE(length, 2);
  if (head.length === 10) head.writeBigUInt64BE(BigInt(length), 2);
  return Buffer.concat([head, Buffer.from(text)]);
}

/**
 * What goes to a room is encoded and framed once, and written to each idle connection as it is. Socket.IO frames once
 * too, but makes a packet, some nine events and a corked pair of writes for each guest.
 *
 * @param mouth where another process may have what is conducted here: what may not be said yet waits
 */
export function broadcastFlat(io: LiveServer, mouth?: Mouth): Deliveries {
  const deliveries = { flat: 0, usual: 0 };
  const Usual = io.of('/').adapter.constructor as unknown as AdapterClass;
  class FlatAdapter extends Usual {
    /** The sockets of each room in a row, made when it is first asked for, and when all of them were last written to. */
    readonly #rows = new Map<string, { readonly sockets: readonly Connected[]; toldAt: number }>();

    override addAll(id: string, rooms: ReadonlySet<string>): void {
      for (const room of rooms) this.#rows.delete(room);
      super.addAll(id, rooms);
    }
    override del(id: string, room: string): void {
      this.#rows.delete(room);
      super.del(id, room);
    }
    override delAll(id: string): void {
      for (const room of this.sids.get(id) ?? []) this.#rows.delete(room);
      super.delAll(id);
    }

    override broadcast(packet: { nsp?: string }, options: BroadcastOptions): void {
      if (mouth === undefined || mouth.open) {
        this.#broadcast(packet, options);
        return;
      }
      // Whoever comes meanwhile is told all of it.
      const rooms = this.#reached(options);
      if (rooms.size > 0) mouth.say(() => this.#broadcast(packet, { ...options, rooms, except: new Set() }));
    }

    #reached({ rooms, except = new Set() }: BroadcastOptions): ReadonlySet<string> {
      const idsIn = (names: ReadonlySet<string>) =>
        [...names].flatMap((room) => [...(this.rooms.get(room) ?? [])]);
      const not = new Set(idsIn(except));
      const all = rooms.size === 0 ? [...this.sids.keys()] : idsIn(rooms);
      return new Set(all.filter((id) => !not.has(id)));
    }

    #broadcast(packet: { nsp?: string }, options: BroadcastOptions): void {
      const [room = ''] = options.rooms;
      const text = this.#plainText(packet, options);
      if (text === undefined) super.broadcast(packet, options);
      else this.#write(room, packet, text);
    }

    /** What goes to every socket of one room, as Socket.IO's own text; undefined for anything less plain. */
    #plainText(packet: { nsp?: string }, { rooms, except, flags }: BroadcastOptions): string | undefined {
      if (rooms.size !== 1 || except?.size || flags?.volatile) return undefined;
      packet.nsp = this.nsp.name;
      const [text, ...more] = this.encoder.encode(packet);
      return typeof text === 'string' && more.length === 0 ? text : undefined;
    }

    #write(room: string, packet: object, text: string): void {
      // "4" is a message in the Engine.IO protocol.
      const frame = textFrame(`4${text}`);
      const row = this.#row(room);
      row.toldAt = performance.now();
      for (const socket of row.sockets) {
        socket.notifyOutgoingListeners?.(packet);
        const connection = idleConnection(socket);
        if (connection === undefined) socket.client.writeToEngine([text], { wsPreEncodedFrame: [frame] });
        else connection.write(frame);
        deliveries[connection === undefined ? 'usual' : 'flat'] += 1;
      }
    }

    showLife(room: string, quietFor: number): void {
      if (!this.rooms.has(room) || mouth?.open === false) return;
      const row = this.#row(room);
      if (performance.now() - row.toldAt < quietFor) return;
      row.toldAt = performance.now();
      for (const socket of row.sockets) idleConnection(socket)?.write(lifeSign);
    }

    #row(room: string) {
      const known = this.#rows.get(room);
      if (known !== undefined) return known;
      const sockets = [...(this.rooms.get(room) ?? [])].flatMap((id) => this.nsp.sockets.get(id) ?? []);
      const row = { sockets, toldAt: Number.NEGATIVE_INFINITY };
      this.#rows.set(room, row);
      return row;
    }
  }
  io.adapter(FlatAdapter as never);
  return deliveries;
}
