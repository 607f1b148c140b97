import type { IncomingMessage } from 'node:http';
import type { Socket as TcpSocket } from 'node:net';
import { guarded } from '../guard.ts';
import type { LiveServer } from './rooms.ts';

/** What is used of Engine.IO's WebSocket: several packets are given to it together, and each goes to the network alone. */
interface Transport {
  readonly name: string;
  readonly socket?: { readonly _socket?: Pick<TcpSocket, 'cork' | 'uncork'> };
  send(packets: readonly object[]): void;
}

/** What is used of an Engine.IO socket: it holds packets back while its transport says that it cannot be written to. */
interface Line {
  readonly transport: Transport & { writable: boolean; emit(event: 'ready'): unknown };
  close(discard: boolean): unknown;
}

const joined = new WeakSet<object>();

/**
 * What waits for a device together goes to the network in one write: a greeting is some seven messages, and a write costs
 * more than the making of each. Where the library looks different inside, each goes alone as before.
 */
export function joinWrites(io: Pick<LiveServer, 'engine'>): void {
  io.engine.on('connection', ({ transport }: { readonly transport: Transport }) => {
    const kind = Object.getPrototypeOf(transport) as Transport;
    if (transport.name !== 'websocket' || joined.has(kind) || typeof kind.send !== 'function') return;
    joined.add(kind);
    const usual = kind.send;
    kind.send = function send(this: Transport, packets) {
      const tcp = packets.length > 1 ? this.socket?._socket : undefined;
      tcp?.cork();
      try {
        usual.call(this, packets);
      } finally {
        tcp?.uncork();
      }
    };
  });
}

/**
 * Opening a WebSocket is two writes, the answer to its request and Engine.IO's first packet; here they go together. To be
 * called when the request has been let in: one that is refused is answered and cut off at once, and nothing may wait then.
 */
export function joinOpening({ headers, socket }: IncomingMessage): void {
  if (headers.upgrade === undefined) return;
  socket.cork();
  setImmediate(() => socket.uncork());
}

/** That a device is let in, and what it is greeted with in the same turn, goes in one write. To be called just before. */
export function joinGreeting(line: Line): void {
  const { transport } = line;
  if (transport.name !== 'websocket' || !transport.writable) return;
  transport.writable = false;
  const letGo = (): void => {
    transport.writable = true;
    transport.emit('ready');
  };
  setImmediate(guarded(letGo, () => line.close(true)));
}
