import { Allowances, type Pace } from '../access/allowances.ts';
import type { Clock } from '../clock.ts';

/** What is watched of a connection below the level of messages, an Engine.IO socket. */
export interface Line {
  readonly id: string;
  readonly transport: {
    /** Of a WebSocket; a poll has none that lasts. */
    readonly socket?: { readonly bufferedAmount: number; terminate(): void };
  };
  on(event: 'packetCreate' | 'packet', heard: (packet: { readonly data?: string | Buffer }) => void): unknown;
  on(event: 'flush', heard: () => void): unknown;
  close(discard: boolean): unknown;
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
  readonly #holders = new WeakMap<object, string>();

  constructor(clock: Clock) {
    this.#frames = new Allowances(clock, frames);
  }

  /** Whose frames are counted together with those of this line: else each new line would begin with a full allowance. */
  heldBy(line: object, holder: string): void {
    this.#holders.set(line, holder);
  }

  watch(line: Line): void {
    /** What has not been handed to the network yet, in UTF-16 units: what waits is JSON, mostly of one byte each. */
    let behind = 0;
    let largest = 0;
    const hangUp = (): void => {
      line.close(true);
      // A polite goodbye would wait behind what nobody reads.
      line.transport.socket?.terminate();
    };
    line.on('packetCreate', ({ data }) => {
      const length = data?.length ?? 0;
      behind += length;
      const waiting = behind + (line.transport.socket?.bufferedAmount ?? 0);
      // A table that talks is more than a megabyte in one message: who is still taking that in is no slow reader.
      largest = waiting === length ? length : Math.max(largest, length);
      if (waiting > mostWaiting + largest) hangUp();
    });
    line.on('flush', () => {
      behind = 0;
    });
    line.on('packet', ({ data }) => {
      const holder = this.#holders.get(line) ?? line.id;
      if (!this.#frames.take(holder, 1 + Math.floor((data?.length ?? 0) / 1024))) hangUp();
    });
  }
}
