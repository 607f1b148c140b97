import type { Clock } from '../clock.ts';

/** Lets through `burst` at once and `perSecond` in the long run. */
export interface Pace {
  readonly perSecond: number;
  readonly burst: number;
}

interface Bucket {
  tokens: number;
  filledAt: number;
}

/**
 * One allowance for each key: a seat, an address, an evening. Keys that are full again need not be remembered; beyond
 * `mostKeys` the one that was used longest ago is forgotten, so that nobody fills the memory with keys.
 *
 * On the server's own clock, unlike what libraries for this count on: a wall clock that is set back must not shut
 * anybody out for an hour, and evenings are also played in virtual time.
 */
export class Allowances {
  readonly #clock: Clock;
  readonly #pace: Pace;
  readonly #mostKeys: number;
  readonly #buckets = new Map<string, Bucket>();

  constructor(clock: Clock, pace: Pace, mostKeys = 10_000) {
    this.#clock = clock;
    this.#pace = pace;
    this.#mostKeys = mostKeys;
  }

  /** Whether one more passes now, or what costs as much as several; what is refused costs nothing. */
  take(key: string, cost = 1): boolean {
    const bucket = this.#filled(key);
    if (bucket.tokens < cost) return false;
    bucket.tokens -= cost;
    return true;
  }

  /** Whether the next `take` would pass. */
  has(key: string): boolean {
    return this.#filled(key).tokens >= 1;
  }

  /** What was taken turned out to be in order. */
  giveBack(key: string): void {
    const bucket = this.#filled(key);
    bucket.tokens = Math.min(this.#pace.burst, bucket.tokens + 1);
  }

  #filled(key: string): Bucket {
    const now = this.#clock.now();
    const known = this.#buckets.get(key) ?? { tokens: this.#pace.burst, filledAt: now };
    const gained = (Math.max(0, now - known.filledAt) / 1000) * this.#pace.perSecond;
    known.tokens = Math.min(this.#pace.burst, known.tokens + gained);
    known.filledAt = now;
    // Last in the map is last used.
    this.#buckets.delete(key);
    this.#buckets.set(key, known);
    const [oldest] = this.#buckets.keys();
    if (this.#buckets.size > this.#mostKeys && oldest !== undefined) this.#buckets.delete(oldest);
    return known;
  }
}
