import type { TastingId } from '../../core/ids.ts';
import { type DurationMs, durationMs, type EpochMs, later } from '../../core/units.ts';
import type { TastingTrouble } from '../../shared/wire/http.ts';
import type { Cancel, Clock } from '../clock.ts';
import { guardedClock, reasonOf } from '../guard.ts';
import { SetAside } from '../store/set-aside.ts';
import { StoreFailure } from '../store/store.ts';
import { Conductor } from './conductor.ts';
import type { ConductorParts } from './conductor-parts.ts';
import { everybodyAt } from './rooms.ts';

export interface ConductorsOptions extends Omit<ConductorParts, 'tasting' | 'onFault'> {
  /** How often conductors without anything to do are let go. */
  readonly sweepEvery: DurationMs;
}

/** Two faults further apart than this are each the first. */
const forgivenAfter = durationMs(10 * 60_000);

/**
 * The conductors of all sessions that are in use. A session is read from the store when it is first asked for. A conductor
 * in which a fault shows is ended and built anew from the log, once; after a second fault its evening rests, and no other
 * is concerned.
 */
export class Conductors {
  readonly #options: ConductorsOptions;
  readonly #clock: Clock;
  readonly #working = new Map<TastingId, Conductor>();
  /** What was asked of them is being finished: until then their log is not read again. */
  readonly #ending = new Set<TastingId>();
  readonly #failedAt = new Map<TastingId, EpochMs>();
  readonly #resting = new Set<TastingId>();
  #idleBefore = new Set<TastingId>();
  #sweep: Cancel;

  constructor(options: ConductorsOptions) {
    this.#options = options;
    this.#clock = guardedClock(options.clock, (error) => {
      options.log.error({ reason: reasonOf(error) }, 'idle conductors were not let go');
      this.#sweep = this.#planSweep();
    });
    this.#sweep = this.#planSweep();
  }

  /** How many may sit at one table. */
  get seatLimit(): number {
    return this.#options.seatLimit;
  }

  get working(): number {
    return this.#working.size;
  }

  /** Evenings whose cue runs now. */
  runningNow(): TastingId[] {
    return [...this.#working.values()].flatMap(({ tasting, clock, standing: { session } }) =>
      session.status === 'under-way' && session.clock.kind === 'running' && clock.now() < session.clock.endsAt
        ? tasting
        : [],
    );
  }

  /**
   * Undefined when there is no such tasting. Throws `SetAside` when its plan or its log cannot be read or it rests, and
   * another `StoreFailure` while the store does not answer or a conductor is just ending.
   */
  of(tasting: TastingId): Conductor | undefined {
    const known = this.#working.get(tasting);
    if (known !== undefined) return known;
    if (this.#resting.has(tasting)) throw new SetAside(tasting, faulty);
    if (this.#ending.has(tasting)) throw new StoreFailure('This evening is being read again.');
    if (this.#options.store.tastings.find(tasting) === undefined) return undefined;
    return this.#build(tasting);
  }

  /** Whether it is in memory here, or is just being put down. */
  conducts(tasting: TastingId): boolean {
    return this.#working.has(tasting) || this.#ending.has(tasting);
  }

  /** Why an evening cannot go on; undefined when nothing is known against it. */
  troubleOf(tasting: TastingId): TastingTrouble | undefined {
    return this.#resting.has(tasting) ? faulty : undefined;
  }

  /** An evening that rests may try again. */
  wake(tasting: TastingId): void {
    this.#resting.delete(tasting);
    this.#failedAt.delete(tasting);
  }

  /** Something went wrong that has nothing to do with the store; the conductor is not to be trusted any more. */
  failed(conductor: Conductor, error: unknown): void {
    const { tasting } = conductor;
    const { log, clock } = this.#options;
    log.error({ tasting, reason: reasonOf(error) }, 'a conductor failed');
    if (this.#working.get(tasting) !== conductor) return;
    conductor.end();
    this.#working.delete(tasting);
    const before = this.#failedAt.get(tasting);
    if (before !== undefined && later(before, forgivenAfter) > clock.now()) this.#resting.add(tasting);
    this.#failedAt.set(tasting, clock.now());
    this.#ending.add(tasting);
    void conductor.drained().then(() => {
      this.#ending.delete(tasting);
      // They come back by themselves, to the next conductor or to the sentence that there is none.
      this.#options.io.in(everybodyAt(tasting)).disconnectSockets(true);
    });
  }

  /** Another process conducts it: nothing more is said of it here, and its devices find the other. */
  lost(tasting: TastingId): void {
    this.#working.get(tasting)?.end();
    this.#working.delete(tasting);
    this.#options.io.in(everybodyAt(tasting)).disconnectSockets(true);
  }

  /** Those that are in memory here. */
  get conducted(): readonly TastingId[] {
    return [...this.#working.keys()];
  }

  /**
   * Lets another process have an evening, between two commands: nothing runs while `give` does, and once it has answered
   * true nothing more is said of it here. Its devices are told to come anew at once.
   */
  async handOver(tasting: TastingId, give: () => Promise<boolean>): Promise<boolean> {
    const conductor = this.#working.get(tasting);
    if (conductor === undefined) return false;
    return conductor.alone(async () => {
      if (!(await give())) return false;
      this.#options.io.in(everybodyAt(tasting)).emit('moved');
      this.lost(tasting);
      return true;
    });
  }

  /** Removes the tasting with everything in it, also one that cannot be read, and tells its devices. */
  async remove(tasting: TastingId): Promise<void> {
    const conductor = this.#readable(tasting);
    if (conductor === undefined) {
      await this.#options.store.tastings.remove(tasting);
      return this.wake(tasting);
    }
    await conductor.alone(async () => {
      await this.#options.store.tastings.remove(tasting);
      conductor.publisher.dismissEverybody('tasting-deleted');
      this.#letGo(conductor);
    });
  }

  /** Hangs up on every device whose key does not stand any more. */
  dismissWithdrawn(stands: (hash: string) => boolean): void {
    for (const { publisher } of this.#working.values()) publisher.dismissWithdrawn(stands);
  }

  /** Resolves when everything that was asked until now is done. */
  async stop(): Promise<void> {
    this.#sweep();
    const all = [...this.#working.values()];
    for (const conductor of all) conductor.stop();
    await Promise.all(all.map((conductor) => conductor.drained()));
    for (const conductor of all) conductor.stop();
  }

  #build(tasting: TastingId): Conductor {
    let built: Conductor | undefined;
    const onFault = (error: unknown) => built !== undefined && this.failed(built, error);
    const clock = guardedClock(this.#options.clock, onFault);
    try {
      built = new Conductor({ ...this.#options, clock, tasting, onFault });
    } catch (error) {
      if (error instanceof StoreFailure) throw error;
      this.#options.log.error({ tasting, reason: reasonOf(error) }, 'an evening could not be conducted');
      this.#resting.add(tasting);
      throw new SetAside(tasting, faulty, { cause: error });
    }
    this.#working.set(tasting, built);
    return built;
  }

  #readable(tasting: TastingId): Conductor | undefined {
    try {
      return this.of(tasting);
    } catch (error) {
      if (error instanceof SetAside) return undefined;
      throw error;
    }
  }

  #letGo(conductor: Conductor): void {
    conductor.stop();
    this.#working.delete(conductor.tasting);
  }

  /** Idle at two sweeps in a row: a page that reloads does not cost a replay. */
  #planSweep(): Cancel {
    return this.#clock.at(later(this.#clock.now(), this.#options.sweepEvery), () => {
      const idle = [...this.#working.values()].filter((conductor) => conductor.idle);
      for (const conductor of idle) if (this.#idleBefore.has(conductor.tasting)) this.#letGo(conductor);
      this.#idleBefore = new Set(idle.map((conductor) => conductor.tasting));
      this.#sweep = this.#planSweep();
    });
  }
}

const faulty: TastingTrouble = { kind: 'faulty', event: null };
