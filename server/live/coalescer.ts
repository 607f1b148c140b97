import { type DurationMs, type EpochMs, later } from '../../core/units.ts';
import type { Cancel, Clock } from '../clock.ts';

/** Does something at most once in a while: at once when it was quiet, otherwise at the end of the pause. */
export class Coalescer {
  readonly #clock: Clock;
  readonly #pause: DurationMs;
  readonly #run: () => void;
  #last: EpochMs | undefined;
  #planned: Cancel | undefined;

  constructor(clock: Clock, pause: DurationMs, run: () => void) {
    this.#clock = clock;
    this.#pause = pause;
    this.#run = run;
  }

  soon(): void {
    if (this.#planned !== undefined) return;
    const free = this.#last === undefined ? this.#clock.now() : later(this.#last, this.#pause);
    if (free <= this.#clock.now()) this.now();
    else this.#planned = this.#clock.at(free, () => this.now());
  }

  now(): void {
    this.stop();
    this.#last = this.#clock.now();
    this.#run();
  }

  stop(): void {
    this.#planned?.();
    this.#planned = undefined;
  }
}
