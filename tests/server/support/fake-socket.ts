import type { LiveServer, LiveSocket } from '../../../server/live/rooms.ts';
import { protocolVersion } from '../../../shared/wire/protocol.ts';

/** A device without a network: it joins rooms and keeps what is said to it. Its line is as free as the test says. */
export class FakeSocket {
  readonly heard: { readonly event: string; readonly body: unknown }[] = [];
  readonly rooms = new Set<string>();
  readonly conn = { transport: { writable: true } };
  readonly data: { readonly protocol: number; readonly bearer: { readonly role: 'guest' | 'host' } };
  connected = true;

  constructor(protocol: number = protocolVersion, role: 'guest' | 'host' = 'guest') {
    this.data = { protocol, bearer: { role } };
  }
  get asLive(): LiveSocket {
    return this as unknown as LiveSocket;
  }
  join(room: string): void {
    this.rooms.add(room);
  }
  leave(room: string): void {
    this.rooms.delete(room);
  }
  emit(event: string, body: unknown): void {
    this.heard.push({ event, body });
  }
}

/** Says to a room what its devices then hear, and counts how often something was encoded for all. */
export function fakeServer(): {
  readonly io: LiveServer;
  readonly sockets: FakeSocket[];
  readonly broadcasts: { readonly event: string; readonly body: unknown }[];
} {
  const sockets: FakeSocket[] = [];
  const broadcasts: { event: string; body: unknown }[] = [];
  const to = (room: string) => ({
    emit(event: string, body: unknown) {
      broadcasts.push({ event, body });
      for (const socket of sockets) if (socket.connected && socket.rooms.has(room)) socket.emit(event, body);
    },
  });
  return { io: { to } as unknown as LiveServer, sockets, broadcasts };
}
