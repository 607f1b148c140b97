import type { Cancel, MachineTime } from '../../../../server/clock.ts';
import type { VirtualTime } from '../../virtual-time.ts';

/** Where every wall clock that is right stands when the simulation begins, in epoch ms. */
export const beginning = 1_900_000_000_000;

export interface MachineClocks {
  /** Ms by which its wall clock is off. */
  readonly off: number;
  /** How much faster than time its steady clock goes. */
  readonly rate: number;
}

/** What one life of a process runs on. It may be killed, stopped and let go on, and put to sleep with its steady clock. */
export class Machine implements MachineTime {
  on = true;
  readonly #time: VirtualTime;
  readonly #clocks: MachineClocks;
  /** What came while it stood still, in order; undefined while it runs. */
  #held: (() => void)[] | undefined;
  #asleepSince: number | undefined;
  #slept = 0;

  constructor(time: VirtualTime, clocks: MachineClocks) {
    this.#time = time;
    this.#clocks = clocks;
  }

  get runs(): boolean {
    return this.on && this.#held === undefined;
  }

  wall = (): number => beginning + this.#clocks.off + this.#time.now;
  steady = (): number => ((this.#asleepSince ?? this.#time.now) - this.#slept) * this.#clocks.rate;

  after = (ms: number, run: () => void): Cancel => {
    const due = this.steady() + ms;
    let cancelled = false;
    const ring = (): void => {
      const left = due - this.steady();
      // It has slept meanwhile.
      if (left > 0.01) this.#time.after(Math.max(1, left / this.#clocks.rate), ring);
      else this.does(() => !cancelled && run());
    };
    this.#time.after(ms / this.#clocks.rate, ring);
    return () => {
      cancelled = true;
    };
  };

  /** Now, or when it goes on; never when it is dead. */
  does(run: () => void): void {
    if (!this.on) return;
    if (this.#held === undefined) run();
    else this.#held.push(run);
  }

  /** @param asleep whether its steady clock stands still as well */
  stop(asleep: boolean): void {
    this.#held ??= [];
    if (asleep) this.#asleepSince ??= this.#time.now;
  }
  goOn(): void {
    if (this.#asleepSince !== undefined) this.#slept += this.#time.now - this.#asleepSince;
    this.#asleepSince = undefined;
    const held = this.#held ?? [];
    this.#held = undefined;
    // One after another, as a loop of events takes them; what comes now comes behind them.
    for (const run of held) this.#time.after(0, () => this.does(run));
  }
}
