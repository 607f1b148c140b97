import { durationMs, type EpochMs, epochMs, later } from '../../core/units.ts';
import type { Clock } from '../clock.ts';

interface Guesses {
  /** All wrong codes. */
  wrong: number;
  /** Wrong codes outside of a pause: these make the next pause longer. */
  failures: number;
  blockedUntil: EpochMs;
  lastAt: EpochMs;
  /** When the next code from there is looked up, once they come in turn. */
  turnAt: EpochMs;
}

/** Wrong codes that cost nothing: people mistype. */
const free = { address: 5, overall: 50 };
const firstPause = 1000;
const longestPause = 60_000;
const forgottenAfter = durationMs(10 * 60_000);
/**
 * No room mistypes this often: from here on codes from this address are looked up in turn, so that a program that takes
 * no notice of pauses tries five in a second, 54,000 in an evening of three hours: one in 11,000 of finding a given code.
 */
const suspicious = 100;
const turnEvery = durationMs(200);
const longestQueue = 10_000;
/** As many addresses as are remembered; beyond them the oldest are forgotten, and the overall count still stands. */
const addresses = 10_000;

/**
 * Slows down whoever guesses join codes: after a few wrong ones, each further one doubles the pause in which wrong
 * codes from there are only refused, and the same with more patience for all addresses together. A right code always
 * passes, for a whole room comes from one address; while a program guesses from there, it waits for its turn.
 */
export class GuessThrottle {
  readonly #clock: Clock;
  readonly #byAddress = new Map<string, Guesses>();
  readonly #overall: Guesses;

  constructor(clock: Clock) {
    this.#clock = clock;
    this.#overall = fresh(clock.now());
  }

  /** To be awaited before a code is looked up. False when too many wait already. */
  async turn(address: string): Promise<boolean> {
    const record = this.#byAddress.get(address);
    const now = this.#clock.now();
    if (record === undefined || record.wrong < suspicious || isForgotten(record, now)) return true;
    const turnAt = epochMs(Math.max(now, record.turnAt));
    if (turnAt - now > longestQueue) return false;
    record.turnAt = later(turnAt, turnEvery);
    if (turnAt > now) await new Promise<void>((resolve) => void this.#clock.at(turnAt, resolve));
    return true;
  }

  /**
   * Counts a wrong code. Answers with the seconds to wait when there have been too many, otherwise undefined.
   */
  failed(address: string): number | undefined {
    const now = this.#clock.now();
    const mine = this.#recordOf(address, now);
    const wait = Math.max(
      this.#weigh(mine, free.address, now),
      this.#weigh(this.#overall, free.overall, now),
    );
    return wait > 0 ? Math.ceil(wait / 1000) : undefined;
  }

  #recordOf(address: string, now: EpochMs): Guesses {
    const known = this.#byAddress.get(address) ?? fresh(now);
    // Last in the map is last used.
    this.#byAddress.delete(address);
    this.#byAddress.set(address, known);
    const oldest = this.#byAddress.keys().next().value;
    if (this.#byAddress.size > addresses && oldest !== undefined) this.#byAddress.delete(oldest);
    return known;
  }

  /** Ms to wait; a guess within a pause is counted but does not lengthen the pause. */
  #weigh(record: Guesses, free: number, now: EpochMs): number {
    if (isForgotten(record, now)) Object.assign(record, fresh(now));
    record.lastAt = now;
    record.wrong += 1;
    if (now < record.blockedUntil) return record.blockedUntil - now;
    record.failures += 1;
    if (record.failures <= free) return 0;
    const pause = Math.min(longestPause, firstPause * 2 ** Math.min(16, record.failures - free - 1));
    record.blockedUntil = later(now, durationMs(pause));
    return pause;
  }
}

const fresh = (now: EpochMs): Guesses => ({
  wrong: 0,
  failures: 0,
  blockedUntil: now,
  lastAt: now,
  turnAt: now,
});

const isForgotten = ({ lastAt }: Guesses, now: EpochMs): boolean => now >= later(lastAt, forgottenAfter);
