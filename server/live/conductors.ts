import type { TastingId } from '../../core/ids.ts';
import { type DurationMs, later } from '../../core/units.ts';
import type { Cancel } from '../clock.ts';
import { Conductor, type ConductorParts } from './conductor.ts';

export interface ConductorsOptions extends Omit<ConductorParts, 'tasting'> {
  /** How often conductors without anything to do are let go. */
  readonly sweepEvery: DurationMs;
}

/** The conductors of all sessions that are in use. A session is read from the store when it is first asked for. */
export class Conductors {
  readonly #options: ConductorsOptions;
  readonly #working = new Map<TastingId, Conductor>();
  #idleBefore = new Set<TastingId>();
  #sweep: Cancel;

  constructor(options: ConductorsOptions) {
    this.#options = options;
    this.#sweep = this.#planSweep();
  }

  /** How many may sit at one table. */
  get seatLimit(): number {
    return this.#options.seatLimit;
  }

  get working(): number {
    return this.#working.size;
  }

  /** Undefined when there is no such tasting. Throws `StoreFailure` when its log cannot be read. */
  of(tasting: TastingId): Conductor | undefined {
    const known = this.#working.get(tasting);
    if (known !== undefined) return known;
    if (this.#options.store.tastings.find(tasting) === undefined) return undefined;
    const conductor = new Conductor({ ...this.#options, tasting });
    this.#working.set(tasting, conductor);
    return conductor;
  }

  /** Removes the tasting with everything in it, and tells its devices. */
  async remove(tasting: TastingId): Promise<void> {
    const conductor = this.of(tasting);
    if (conductor === undefined) return;
    await conductor.alone(async () => {
      await this.#options.store.tastings.remove(tasting);
      conductor.publisher.dismissEverybody('tasting-deleted');
      this.#letGo(conductor);
    });
  }

  /** Resolves when everything that was asked until now is done. */
  async stop(): Promise<void> {
    this.#sweep();
    const all = [...this.#working.values()];
    for (const conductor of all) conductor.stop();
    await Promise.all(all.map((conductor) => conductor.drained()));
    for (const conductor of all) conductor.stop();
  }

  #letGo(conductor: Conductor): void {
    conductor.stop();
    this.#working.delete(conductor.tasting);
  }

  /** Idle at two sweeps in a row: a page that reloads does not cost a replay. */
  #planSweep(): Cancel {
    const { clock, sweepEvery } = this.#options;
    return clock.at(later(clock.now(), sweepEvery), () => {
      const idle = [...this.#working.values()].filter((conductor) => conductor.idle);
      for (const conductor of idle) if (this.#idleBefore.has(conductor.tasting)) this.#letGo(conductor);
      this.#idleBefore = new Set(idle.map((conductor) => conductor.tasting));
      this.#sweep = this.#planSweep();
    });
  }
}
