import { Allowances, type Pace } from '../access/allowances.ts';
import type { Clock } from '../clock.ts';

/** What is watched of a connection below the level of messages, an Engine.IO socket. */
export interface Line {
  readonly id: string;
  readonly transport: {
    /** Of a WebSocket; a poll has none that lasts. */
    readonly socket?: { readonly bufferedAmount: number; terminate(): void };
  };
  on(event: 'packetCreate' | 'packet', heard: (this: Line, packet: Packet) => void): unknown;
  on(event: 'flush', heard: (this: Line) => void): unknown;
  close(discard: boolean): unknown;
}

interface Packet {
  readonly data?: string | Buffer;
}

interface Watched {
  /** What has not been handed to the network yet, in UTF-16 units: what waits is JSON, mostly of one byte each. */
  behind: number;
  largest: number;
  holder: string;
}

/** Bytes that may wait for a reader that does not read, besides one message that is larger by itself. */
const mostWaiting = 1024 * 1024;

/**
 * Frames of one connection, and of all that hold one seat or key together. Far above what a page sends: eight probes on
 * connecting, and after an evening without a network every field of every pour at once. A large frame costs more, one for
 * each kB, as it does to read it.
 */
const frames: Pace = { perSecond: 40, burst: 400 };

/**
 * Hangs up on who does not read and on who floods, before anything of theirs is parsed. Messages to a slow reader wait
 * in this process: it comes back, and one message brings it level [F2], so that nothing is lost by letting it go.
 */
export class LineGuard {
  readonly #frames: Allowances;
  readonly #lines = new WeakMap<Line, Watched>();

  constructor(clock: Clock) {
    this.#frames = new Allowances(clock, frames);
  }

  /** Whose frames are counted together with those of this line: else each new line would begin with a full allowance. */
  heldBy(line: object, holder: string): void {
    const watched = this.#lines.get(line as Line);
    if (watched !== undefined) watched.holder = holder;
  }

  watch(line: Line): void {
    this.#lines.set(line, { behind: 0, largest: 0, holder: line.id });
    line.on('packetCreate', this.#written);
    line.on('flush', this.#flushed);
    line.on('packet', this.#came);
  }

  // Listeners are called with the line as `this`: one for all lines, where a closure for each would stand as long as it does.
  readonly #written = ((guard: LineGuard) =>
    function (this: Line, { data }: Packet): void {
      const watched = guard.#lines.get(this);
      if (watched === undefined) return;
      const length = data?.length ?? 0;
      watched.behind += length;
      const waiting = watched.behind + (this.transport.socket?.bufferedAmount ?? 0);
      // A table that talks is more than a megabyte in one message: who is still taking that in is no slow reader.
      watched.largest = waiting === length ? length : Math.max(watched.largest, length);
      if (waiting > mostWaiting + watched.largest) hangUp(this);
    })(this);

  readonly #flushed = ((guard: LineGuard) =>
    function (this: Line): void {
      const watched = guard.#lines.get(this);
      if (watched !== undefined) watched.behind = 0;
    })(this);

  readonly #came = ((guard: LineGuard) =>
    function (this: Line, { data }: Packet): void {
      const holder = guard.#lines.get(this)?.holder ?? this.id;
      if (!guard.#frames.take(holder, 1 + Math.floor((data?.length ?? 0) / 1024))) hangUp(this);
    })(this);
}

function hangUp(line: Line): void {
  line.close(true);
  // A polite goodbye would wait behind what nobody reads.
  line.transport.socket?.terminate();
}
