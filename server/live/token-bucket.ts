import type { Clock } from '../clock.ts';

/** Lets through `burst` at once and `perSecond` in the long run. */
export class TokenBucket {
  readonly #clock: Clock;
  readonly #perSecond: number;
  readonly #burst: number;
  #tokens: number;
  #filledAt: number;

  constructor(clock: Clock, perSecond: number, burst: number) {
    this.#clock = clock;
    this.#perSecond = perSecond;
    this.#burst = burst;
    this.#tokens = burst;
    this.#filledAt = clock.now();
  }

  take(): boolean {
    const now = this.#clock.now();
    const gained = (Math.max(0, now - this.#filledAt) / 1000) * this.#perSecond;
    this.#tokens = Math.min(this.#burst, this.#tokens + gained);
    this.#filledAt = now;
    if (this.#tokens < 1) return false;
    this.#tokens -= 1;
    return true;
  }
}
