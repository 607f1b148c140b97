import { Listeners } from './listeners.ts';

/**
 * Packets of the Socket.IO protocol, version 5, text only, as https://github.com/socketio/socket.io-protocol describes
 * them: a digit for the kind, a namespace unless it is the main one, an id where an answer is wanted, and JSON. It stands
 * in the place of the package's own, most of which is for binary data.
 */
export const protocol = 5;

export const PacketType = { CONNECT: 0, DISCONNECT: 1, EVENT: 2, ACK: 3, CONNECT_ERROR: 4 } as const;

export interface Packet {
  readonly type: number;
  readonly nsp: string;
  readonly id?: number;
  readonly data?: unknown;
}

export class Encoder {
  encode({ type, nsp, id, data }: Packet): string[] {
    const space = nsp === '/' ? '' : `${nsp},`;
    return [`${type}${space}${id ?? ''}${data === undefined ? '' : JSON.stringify(data)}`];
  }
}

const shape = /^([0-4])(?:(\/[^,]*),?)?(\d*)([\s\S]*)$/;

/** Tells `decoded` with each packet. */
export class Decoder extends Listeners {
  /** Throws where the text is none: its sender is no server of this protocol. */
  add(text: string): void {
    const [, kind, nsp = '/', id, json] = shape.exec(text) ?? [];
    if (kind === undefined) throw new Error('unknown packet');
    const packet: Packet = {
      type: Number(kind),
      nsp,
      ...(id ? { id: Number(id) } : {}),
      ...(json ? { data: JSON.parse(json) as unknown } : {}),
    };
    if (!isWhole(packet)) throw new Error('invalid payload');
    this.tell('decoded', packet);
  }

  /** Nothing is ever half read. */
  destroy(): void {}
}

/** Names that the client keeps for what it tells by itself. */
const kept = ['connect', 'connect_error', 'disconnect', 'disconnecting', 'newListener', 'removeListener'];

function isWhole({ type, data }: Packet): boolean {
  switch (type) {
    case PacketType.CONNECT:
      return data === undefined || isObject(data);
    case PacketType.DISCONNECT:
      return data === undefined;
    case PacketType.CONNECT_ERROR:
      return typeof data === 'string' || isObject(data);
    case PacketType.EVENT:
      return Array.isArray(data) && typeof data[0] === 'string' && !kept.includes(data[0]);
    default:
      return Array.isArray(data);
  }
}

const isObject = (data: unknown): boolean => Object.prototype.toString.call(data) === '[object Object]';
