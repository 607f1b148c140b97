import type { EventEmitter } from 'node:events';
import type { LiveSocket } from './rooms.ts';

/** What is used of a connection below the level of messages. */
interface Line {
  readonly transport: { readonly name: string; readonly socket?: EventEmitter & { _socket?: EventEmitter } };
}

/**
 * Lets go of the request that a line came with, some 3 kB a guest: who this is has been settled. Two listeners of
 * Engine.IO's hold it besides, one for errors before the line stands and one of a response that nobody waits for; they go
 * too. Where an update has changed them, the request stays, and a test says so.
 */
export function forgetRequest(socket: LiveSocket): void {
  const line: Line | undefined = socket.conn;
  const websocket = line?.transport?.name === 'websocket' ? line.transport.socket : undefined;
  // Without any listener an error would end the process.
  if ((websocket?.listenerCount('error') ?? 0) > 1)
    dropListener(websocket, 'error', ({ name }) => name === 'onUpgradeError');
  dropListener(websocket?._socket, 'close', (listener) => String(listener) === '() => this.emit("close")');
  Reflect.set(line ?? {}, 'request', undefined);
  Reflect.set(socket, 'handshake', undefined);
}

type Listener = (...args: unknown[]) => void;

function dropListener(
  of: EventEmitter | undefined,
  event: string,
  is: (listener: Listener) => boolean,
): void {
  const found = (of?.listeners(event) as Listener[] | undefined)?.find(is);
  if (found !== undefined) of?.removeListener(event, found);
}
