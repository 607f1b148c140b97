import type { Chances } from '../chances.ts';
import type { VirtualTime } from '../virtual-time.ts';

/** What the network does to one device. */
export interface Weather {
  /** Mean of the delay of one way, in ms. */
  delay: number;
  /** Nothing gets through, and nobody is told. */
  cut: boolean;
  /**
   * Messages may come twice, and overtake each other: worse than any one connection of the real network. `everything`: those
   * too that rely on its order.
   */
  wild: boolean | 'everything';
}

export interface Packet {
  readonly event: string;
  readonly payload: unknown;
  /** Called with the answer, which travels back. */
  readonly answer?: (value: unknown) => void;
}

/** Views that say which is newer. The others rely on a connection that keeps their order, as every real one does. */
const versioned = new Set(['seat', 'board', 'host', 'running-order']);

interface End {
  hears(packet: Packet): void;
  /** This end has found out that the connection is gone. */
  closed(reason: string): void;
}

/**
 * One connection between a device and one life of the server. Like TCP it keeps order and loses nothing while it
 * stands, and loses what is under way when it breaks; each end finds that out in its own time. In wild weather views
 * are also doubled and overtaken.
 */
export class Wire {
  readonly device: End;
  readonly server: End;
  readonly #time: VirtualTime;
  readonly #chances: Chances;
  readonly #weather: Weather;
  readonly #open = { device: true, server: true };
  readonly #lastArrival = { up: 0, down: 0 };
  #broken = false;

  constructor(time: VirtualTime, chances: Chances, weather: Weather, device: End, server: End) {
    this.#time = time;
    this.#chances = chances;
    this.#weather = weather;
    this.device = device;
    this.server = server;
  }

  up(packet: Packet): void {
    const { answer } = packet;
    const answered =
      answer === undefined
        ? packet
        : { ...packet, answer: (value: unknown) => this.#carry('down', () => answer(value), false) };
    this.#carry('up', () => this.server.hears(answered), packet.event !== 'probe');
  }

  down(packet: Packet): void {
    const mayStray = this.#weather.wild === 'everything' || versioned.has(packet.event);
    this.#carry('down', () => this.device.hears(packet), mayStray);
  }

  /** One end lets go; the other hears of it as soon as a message could, or when its heartbeat fails. */
  close(by: 'device' | 'server', reasonForOther: string): void {
    this.#shut(by, 'closed here');
    const other = by === 'device' ? 'server' : 'device';
    const silent = this.#broken || this.#weather.cut;
    const wait = silent ? this.#chances.between(5000, 15_000) : this.#delay();
    const way = other === 'device' ? 'down' : 'up';
    // What was said before still arrives.
    const at = Math.max(this.#time.now + wait, this.#lastArrival[way]);
    this.#time.after(at - this.#time.now, () => this.#shut(other, silent ? 'ping timeout' : reasonForOther));
  }

  /** The server's machine resets the connection: what is under way is lost. */
  reset(): void {
    this.#broken = true;
    this.#open.server = false;
    const wait = this.#weather.cut ? this.#chances.between(5000, 15_000) : this.#delay();
    this.#time.after(wait, () => this.#shut('device', 'transport close'));
  }

  #shut(end: 'device' | 'server', reason: string): void {
    if (!this.#open[end]) return;
    this.#open[end] = false;
    this[end].closed(reason);
  }

  #carry(way: 'up' | 'down', arrive: () => void, mayStray: boolean): void {
    const from = way === 'up' ? 'device' : 'server';
    if (!this.#open[from]) return;
    if (this.#broken || this.#weather.cut) {
      this.#lost();
      return;
    }
    const strays = this.#weather.wild !== false && mayStray;
    const end = way === 'up' ? 'server' : 'device';
    const deliver = (at: number): void => {
      this.#time.after(at - this.#time.now, () => {
        if (this.#weather.cut) this.#lost();
        else if (!this.#broken && this.#open[end]) arrive();
      });
    };
    const at = this.#time.now + this.#delay();
    if (strays && this.#chances.happens(0.15)) {
      deliver(at + this.#chances.between(0, 400));
    } else {
      this.#lastArrival[way] = Math.max(this.#lastArrival[way], at);
      deliver(this.#lastArrival[way]);
    }
    if (strays && this.#chances.happens(0.1)) deliver(at + this.#chances.between(0, 2000));
  }

  /** A connection that has lost something does not carry on as if nothing had been. */
  #lost(): void {
    if (this.#broken) return;
    this.#broken = true;
    for (const end of ['device', 'server'] as const) {
      this.#time.after(this.#chances.between(1000, 15_000), () => this.#shut(end, 'ping timeout'));
    }
  }

  #delay(): number {
    return 0.2 + this.#chances.exponential(this.#weather.delay);
  }
}
