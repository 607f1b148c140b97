import type { IncomingMessage } from 'node:http';

/** What a stream is made of, and what it belongs to: taken away, it could not be closed. */
const stream: ReadonlySet<string | symbol> = new Set([
  '_readableState',
  '_events',
  'socket',
  'client',
  'res',
]);

/**
 * Takes out of the request of a WebSocket what it came with: headers, address and what was read from them, some 2 kB. Engine.IO
 * keeps the request itself for as long as the line stands, in a listener that nobody can reach.
 */
export function emptyRequest(request: IncomingMessage): void {
  for (const key of Reflect.ownKeys(request)) {
    const kept: unknown = Reflect.get(request, key);
    if (!stream.has(key) && (typeof kept === 'object' || typeof kept === 'string'))
      Reflect.set(request, key, undefined);
  }
}
