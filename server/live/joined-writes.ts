import type { Socket as TcpSocket } from 'node:net';
import type { LiveServer } from './rooms.ts';

/** What is used of Engine.IO's WebSocket: several packets are given to it together, and each goes to the network alone. */
interface Transport {
  readonly name: string;
  readonly socket?: { readonly _socket?: Pick<TcpSocket, 'cork' | 'uncork'> };
  send(packets: readonly object[]): void;
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
