import { createLiveServer } from '../../../server/live/gateway.ts';
import type { LiveServer } from '../../../server/live/rooms.ts';

/** A message to rooms; `to` is where it went, in the order of the alphabet. */
export interface Overheard {
  readonly event: string;
  readonly to: readonly string[];
  readonly body: unknown;
}

/** A server without a socket that keeps what it would have said, as it was when it was said. */
export function overheardServer(): { readonly io: LiveServer; readonly said: Overheard[] } {
  const io = createLiveServer([]);
  const said: Overheard[] = [];
  io.of('/').adapter.broadcast = (packet: { data: readonly unknown[] }, { rooms }) => {
    const [event, body] = packet.data;
    said.push({ event: String(event), to: [...rooms].map(String).sort(), body: structuredClone(body) });
  };
  return { io, said };
}
