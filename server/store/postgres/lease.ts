import { randomUUID } from 'node:crypto';
import type { Cancel, MachineTime } from '../../clock.ts';
import type { Ask } from './connections.ts';
import { isDown } from './failure.ts';

/** How long a lease holds on the database's clock, and how often it is renewed; in ms. */
const leaseHolds = 1500;
const renewEvery = 500;
/**
 * How long before the end of its lease a process stops, by its own clock from the moment at which it asked: what remains is
 * for two clocks that do not go alike, and for what is on its way.
 */
const stopsEarlier = 300;
/** Without a lease for so long, devices are let go: another process may have their evening. */
const hangsUpAfter = 800;
/** A clock that may be further off than this conducts nothing; in ms. */
const mostOff = 50;
const samplesKept = 8;

export interface LeaseEvents {
  /** After each renewal, before anything is done under it. Throws to leave the lease as it is. */
  renewed(): Promise<void>;
  /** For too long without one, while the database may be there for others. */
  expired(): void;
}

interface Sample {
  /** Database minus machine, and how far it may be off; in ms. */
  readonly offset: number;
  readonly off: number;
}

export interface LeaseFigures {
  renewals: number;
  failedRenewals: number;
}

/**
 * The lease of this process: whatever names it as its owner is its own for as long as it is renewed. It is judged by the
 * machine's own clocks, from before each renewal was asked for: by the steady one, so that no pause and nobody who sets a clock
 * can prolong it, and by the one on the wall where that has gone further, for the steady one stands still while a machine sleeps.
 */
export class Lease {
  readonly process = randomUUID();
  readonly figures: LeaseFigures = { renewals: 0, failedRenewals: 0 };
  readonly #ask: Ask;
  readonly #time: MachineTime;
  readonly #address: () => string;
  readonly #events: LeaseEvents;
  /** Where both clocks stood before the last renewal was asked for, and the database's when it was done. */
  #renewed: { readonly steady: number; readonly wall: number; readonly database: number } | undefined;
  /** Since when it has been held without a gap. */
  #since = 0;
  #hungUp = true;
  #samples: Sample[] = [];
  #stopWaiting: Cancel = () => undefined;
  #ended = false;
  #waiting: (() => void)[] = [];

  constructor(ask: Ask, time: MachineTime, address: () => string, events: LeaseEvents) {
    this.#ask = ask;
    this.#time = time;
    this.#address = address;
    this.#events = events;
  }

  /** Whether this process may say anything about what it owns, now. */
  holds(): boolean {
    return this.#sinceRenewal() < leaseHolds - stopsEarlier;
  }

  #sinceRenewal(): number {
    if (this.#renewed === undefined) return Infinity;
    const { steady, wall } = this.#renewed;
    return Math.max(this.#time.steady() - steady, this.#time.wall() - wall);
  }

  /** Resolves when it holds again. Never resolves after the end. */
  async held(): Promise<void> {
    while (!this.holds()) await new Promise<void>((done) => this.#waiting.push(done));
  }

  /** The database's clock by the fastest of the last round trips: RFC 5905, as the followers estimate the server's. */
  get clock(): Sample {
    return this.#samples.reduce((best, each) => (each.off < best.off ? each : best), {
      offset: 0,
      off: Infinity,
    });
  }

  get mayOwn(): boolean {
    return this.holds() && this.clock.off <= mostOff;
  }

  /**
   * Whether it is held for so long that every other that lives has renewed its own: while the database was away, or another took
   * its place, all have run out, and owners keep what is theirs.
   */
  get mayTakeOver(): boolean {
    return this.holds() && this.#time.steady() - this.#since > leaseHolds;
  }

  /** Rejects when the first renewal fails. */
  async begin(): Promise<void> {
    for (let probe = 0; probe < 3; probe += 1) await this.#renew();
    this.#plan();
  }

  /** Tells the address to all others now. */
  renewNow(): Promise<void> {
    return this.#renew();
  }

  /** Gives up what is owned at once: others need not wait. */
  async end(): Promise<void> {
    this.#ended = true;
    this.#stopWaiting();
    this.#renewed = undefined;
    await this.#ask('DELETE FROM processes WHERE process = $1', [this.process]).catch(() => undefined);
  }

  #plan(): void {
    this.#stopWaiting = this.#time.after(renewEvery, () => void this.#tick());
  }

  async #tick(): Promise<void> {
    try {
      await this.#renew();
    } catch (error) {
      this.figures.failedRenewals += 1;
      // A database that is down is down for everybody: nobody takes over, and no device need be let go.
      if (isDown(error) || this.#hungUp) return;
      if (this.#sinceRenewal() > leaseHolds - stopsEarlier + hangsUpAfter) {
        this.#hungUp = true;
        this.#events.expired();
      }
    } finally {
      if (!this.#ended) this.#plan();
    }
  }

  async #renew(): Promise<void> {
    const [asked, wall] = [this.#time.steady(), this.#time.wall()];
    const [row] = await this.#ask<{ now: number }>(
      `INSERT INTO processes (process, address, valid_until)
       VALUES ($1, $2, clock_timestamp() + make_interval(secs => $3::float8 / 1000))
       ON CONFLICT (process) DO UPDATE SET address = excluded.address, valid_until = excluded.valid_until
       RETURNING extract(epoch FROM clock_timestamp())::float8 * 1000 AS now`,
      [this.process, this.#address(), leaseHolds],
    );
    if (this.#ended || row === undefined) return;
    const took = this.#time.steady() - asked;
    this.#samples = [...this.#samples, { offset: row.now - (wall + took / 2), off: took / 2 }].slice(
      -samplesKept,
    );
    // A machine that is put to sleep from outside may find both its clocks where they stood.
    if (this.#renewed !== undefined && row.now - this.#renewed.database > leaseHolds)
      this.#renewed = undefined;
    await this.#events.renewed();
    if (!this.holds()) this.#since = asked;
    this.#renewed = { steady: asked, wall, database: row.now };
    this.#hungUp = false;
    this.figures.renewals += 1;
    const waiting = this.#waiting;
    this.#waiting = [];
    for (const go of waiting) go();
  }
}
