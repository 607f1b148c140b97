import { durationMs, type EpochMs, epochMs, later } from '../../core/units.ts';
import type { Clock } from '../clock.ts';
import { Allowances } from './allowances.ts';

/** Wrong codes that change nothing: forty guests behind one router mistype, each of them twice. */
const mistyped = {
  address: { perSecond: 0.2, burst: 100 },
  everywhere: { perSecond: 2, burst: 500 },
} as const;
/** How long a look-up may wait for its turn, in ms; what would wait longer is refused with a sentence. */
const patience = 10_000;
/** Between two look-ups from an address that guesses, in ms: eighty programs there make a guest wait for four seconds. */
const turnEvery = 50;
/** Between two from all addresses that nobody has come in from, once there are too many wrong codes, in ms. */
const dearest = 500;
const mostAddresses = 10_000;

/**
 * Slows down whoever guesses join codes, and shuts nobody out by it. The key that a link or a QR code carries is not
 * looked at here at all. A typed code is looked up at once while people only mistype. From an address with more wrong
 * codes than that, codes are looked up in turn, right or wrong. When there are too many over the whole server, those
 * from addresses that nobody has come in from take their turns together, and each thousand of wrong codes makes the
 * turns longer: that is the cost which changing addresses does not save. Whoever sits where somebody of this server's
 * evenings already is, the host for one, does not wait for them. A code opens nothing any more once its evening is over.
 *
 * What that comes to, for any one of 1,000 evenings that all stand open, and half the codes tried on average being
 * many more than it takes to meet one of so many, 29^n / 1,000 guesses:
 *
 *     on a public server (9 letters, 1.45e10 guesses)
 *       20 a second, one address                     23 years
 *       20 and falling to 2 a second, all others     23 to 230 years
 *       1,500 a second, all that this server answers, if nothing here held    112 days
 *     at home (6 letters), where one evening stands open: 5.9e8 guesses
 *       20 a second, one address                     344 days; an evening lasts four hours: one in 2,000
 */
export class GuessThrottle {
  readonly #clock: Clock;
  readonly #ofAddress: Allowances;
  readonly #ofAll: Allowances;
  /** When the next look-up has its turn, by address, and by '' for those that share theirs; the last used comes last. */
  readonly #turnAt = new Map<string, EpochMs>();
  readonly #welcome = new Set<string>();
  #tell: (address: string) => void = () => undefined;
  /** Wrong codes since there were too many. */
  #tooMany = 0;

  constructor(clock: Clock) {
    this.#clock = clock;
    this.#ofAddress = new Allowances(clock, mistyped.address, mostAddresses);
    this.#ofAll = new Allowances(clock, mistyped.everywhere);
  }

  /** To be awaited before a typed code is looked up. False when too many wait already. */
  async turn(address: string): Promise<boolean> {
    if (!this.#ofAddress.has(address)) return this.#wait(address, turnEvery);
    if (this.#ofAll.has('')) this.#tooMany = 0;
    else if (!this.#welcome.has(address)) {
      return this.#wait('', Math.min(dearest, turnEvery * (1 + this.#tooMany / 1000)));
    }
    return true;
  }

  /** @param tell where else wrong codes count as well */
  onCounted(tell: (address: string) => void): void {
    this.#tell = tell;
  }

  /** Counts a wrong code. */
  failed(address: string): void {
    this.#tell(address);
    this.countElsewhere(address);
  }

  /** Counts one that another process of the same cluster was asked for. */
  countElsewhere(address: string): void {
    this.#ofAddress.take(address);
    if (!this.#ofAll.take('')) this.#tooMany += 1;
  }

  /** Somebody has come in from there with a key: it is where an evening is. */
  cameInFrom(address: string): void {
    this.#welcome.delete(address);
    this.#welcome.add(address);
    const [oldest] = this.#welcome;
    if (this.#welcome.size > mostAddresses && oldest !== undefined) this.#welcome.delete(oldest);
  }

  async #wait(line: string, every: number): Promise<boolean> {
    const now = this.#clock.now();
    const turnAt = epochMs(Math.max(now, this.#turnAt.get(line) ?? now));
    if (turnAt - now > patience) return false;
    this.#turnAt.delete(line);
    this.#turnAt.set(line, later(turnAt, durationMs(every)));
    const [oldest] = this.#turnAt.keys();
    if (this.#turnAt.size > mostAddresses && oldest !== undefined) this.#turnAt.delete(oldest);
    if (turnAt > now) await new Promise<void>((resolve) => void this.#clock.at(turnAt, resolve));
    return true;
  }
}
