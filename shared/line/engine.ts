import { type Carrier, type OpenCarrier, overRequests, overWebSocket } from './carrier.ts';
import { Listeners } from './listeners.ts';

type Ending = 'transport close' | 'transport error' | 'ping timeout' | 'forced close';

interface Handshake {
  readonly sid: string;
  readonly pingInterval: number;
  readonly pingTimeout: number;
}

/**
 * The part of a Socket.IO client that keeps a connection, for pages: the Engine.IO protocol, version 4, text only, as
 * https://github.com/socketio/engine.io-protocol describes it. It stands in the place of the package's own, which is four
 * times as large for what these pages never ask of it: changing carriers under way, binary data, cookies of its own.
 *
 * Tells `open`, `data` with text, `ping`, `error`, and `close` with the reason.
 */
export class Socket extends Listeners {
  readyState: 'opening' | 'open' | 'closed' = 'opening';
  id: string | null = null;
  /** As its user looks at it: text may be sent at any time, and waits in the browser. */
  readonly transport = { writable: true };
  readonly #address: URL;
  readonly #ways: OpenCarrier[] = [overWebSocket, overRequests];
  #carrier: Carrier | undefined;
  #silence = 0;
  /** When a server that keeps its word must have been heard, on the wall clock; a frozen page runs no timer. */
  #heardBy = Number.POSITIVE_INFINITY;
  #pingTimer: ReturnType<typeof setTimeout> | undefined;
  readonly #whenOffline = (): void => this.#end('transport close');

  constructor(origin: string, { path = '/engine.io' }: { readonly path?: string } = {}) {
    super();
    this.#address = new URL(`${path.replace(/\/$/, '')}/?EIO=4`, origin);
    // A network that goes says nothing to a socket; on this machine itself there is none to go.
    if (this.#address.hostname !== 'localhost') globalThis.addEventListener?.('offline', this.#whenOffline);
    // Whoever opens it is listening by then.
    queueMicrotask(() => this.#openNext());
  }

  write(text: string): this {
    if (this.readyState === 'open') this.#carrier?.send(`4${text}`);
    return this;
  }

  close(): this {
    this.#end('forced close');
    return this;
  }

  /** Whether the server should have been heard by now and was not; if so, this connection is over. */
  _hasPingExpired(): boolean {
    if (Date.now() <= this.#heardBy) return false;
    queueMicrotask(() => this.#end('ping timeout'));
    return true;
  }

  #openNext(): void {
    const way = this.#ways.shift();
    if (way === undefined || this.readyState === 'closed') return;
    let over = false;
    const listening = () => !over && this.readyState !== 'closed';
    const onEnd = (why: 'transport close' | 'transport error'): void => {
      if (!listening()) return;
      over = true;
      if (this.readyState === 'opening' && this.#ways.length > 0) this.#openNext();
      else this.#end(why);
    };
    try {
      this.#carrier = way(this.#address, { onPacket: (packet) => listening() && this.#take(packet), onEnd });
    } catch {
      // A browser without the one has the other.
      onEnd('transport error');
    }
  }

  #take(packet: string): void {
    const text = packet.slice(1);
    switch (packet[0]) {
      case '0': {
        const { sid, pingInterval, pingTimeout } = JSON.parse(text) as Handshake;
        this.id = sid;
        this.readyState = 'open';
        this.#silence = pingInterval + pingTimeout;
        this.#heard();
        this.tell('open');
        return;
      }
      case '2':
        this.#carrier?.send('3');
        this.#heard();
        this.tell('ping');
        return;
      case '4':
        this.tell('data', text);
    }
  }

  #heard(): void {
    clearTimeout(this.#pingTimer);
    this.#heardBy = Date.now() + this.#silence;
    this.#pingTimer = setTimeout(() => this.#end('ping timeout'), this.#silence);
  }

  #end(why: Ending): void {
    if (this.readyState === 'closed') return;
    this.readyState = 'closed';
    this.id = null;
    clearTimeout(this.#pingTimer);
    globalThis.removeEventListener?.('offline', this.#whenOffline);
    this.#carrier?.close();
    if (why === 'transport error') this.tell('error', new Error(why));
    this.tell('close', why);
  }
}

interface Timed {
  setTimeoutFn?: typeof setTimeout;
  clearTimeoutFn?: typeof clearTimeout;
}
export function installTimerFunctions(on: Timed): void {
  on.setTimeoutFn = setTimeout.bind(globalThis) as typeof setTimeout;
  on.clearTimeoutFn = clearTimeout.bind(globalThis) as typeof clearTimeout;
}

export const nextTick = (run: () => void): void => queueMicrotask(run);

/** The parts of an address by the names that the client uses for them. */
export function parse(source: string) {
  const { protocol, hostname, port } = new URL(source);
  return { source, protocol: protocol.slice(0, -1), host: hostname.replace(/^\[|\]$/g, ''), port, path: '' };
}

/** What the client's entry names and these pages never use. */
const absent = undefined;

export {
  absent as Fetch,
  absent as NodeWebSocket,
  absent as NodeXHR,
  absent as WebSocket,
  absent as WebTransport,
  absent as XHR,
};
