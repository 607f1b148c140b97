import { durationMs, type EpochMs, later } from '../../core/units.ts';
import type { Clock } from '../clock.ts';

interface Record {
  failures: number;
  blockedUntil: EpochMs;
  lastAt: EpochMs;
}

/** Wrong codes that cost nothing: people mistype. */
const free = { address: 5, overall: 50 };
const firstPause = 1000;
const longestPause = 60_000;
const forgottenAfter = durationMs(10 * 60_000);
/** As many addresses as are remembered; beyond them the oldest are forgotten, and the overall count still stands. */
const addresses = 10_000;

/**
 * Slows down whoever guesses join codes: after a few wrong ones, each further one doubles the pause in which wrong
 * codes from there are only refused, and the same with more patience for all addresses together. A right code always
 * passes, for a whole room comes from one address.
 */
export class GuessThrottle {
  readonly #clock: Clock;
  readonly #byAddress = new Map<string, Record>();
  readonly #overall: Record;

  constructor(clock: Clock) {
    this.#clock = clock;
    this.#overall = { failures: 0, blockedUntil: clock.now(), lastAt: clock.now() };
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

  #recordOf(address: string, now: EpochMs): Record {
    const known = this.#byAddress.get(address) ?? { failures: 0, blockedUntil: now, lastAt: now };
    // Last in the map is last used.
    this.#byAddress.delete(address);
    this.#byAddress.set(address, known);
    const oldest = this.#byAddress.keys().next().value;
    if (this.#byAddress.size > addresses && oldest !== undefined) this.#byAddress.delete(oldest);
    return known;
  }

  /** Ms to wait; a guess within a pause is counted but does not lengthen the pause. */
  #weigh(record: Record, free: number, now: EpochMs): number {
    if (now >= later(record.lastAt, forgottenAfter)) record.failures = 0;
    record.lastAt = now;
    if (now < record.blockedUntil) return record.blockedUntil - now;
    record.failures += 1;
    if (record.failures <= free) return 0;
    const pause = Math.min(longestPause, firstPause * 2 ** Math.min(16, record.failures - free - 1));
    record.blockedUntil = later(now, durationMs(pause));
    return pause;
  }
}
