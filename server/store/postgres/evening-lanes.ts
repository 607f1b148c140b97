import { randomUUID } from 'node:crypto';
import type { TastingId } from '../../../core/ids.ts';
import type { MachineTime } from '../../clock.ts';
import { CommitLane } from '../commit-lane.ts';
import type { Changes } from '../row-changes.ts';
import { Diverged, StoreFailure } from '../store.ts';
import type { Writer } from '../writer.ts';
import type { Claims, OwnHead } from './claims.ts';
import { commitStatement } from './commit-statement.ts';
import type { Ask } from './connections.ts';
import { databaseFailure, isRefused } from './failure.ts';
import type { Lease } from './lease.ts';
import type { MirroredTable, RowChange } from './tables.ts';

export interface LanesParts {
  readonly ask: Ask;
  readonly time: MachineTime;
  readonly changes: Changes<MirroredTable>;
  /** Puts into the copy in memory what is committed. */
  readonly apply: (changes: readonly RowChange[]) => void;
  readonly claims: Claims;
  readonly lease: () => Lease;
  /** What has to go along with these, and what is to be done once they are committed. */
  readonly alongWith: (changes: readonly RowChange[]) => {
    readonly also: readonly RowChange[];
    readonly done: () => void;
  };
}

export interface LaneFigures {
  commits: number;
  /** Refused because another process owns the session: nothing of these was done. */
  fenced: number;
  /** The answer was lost, and what had happened was read again. */
  readAgain: number;
}

/**
 * Commits to PostgreSQL, each evening in a lane of its own: what waits is tried in the copy in memory, sent as one statement,
 * and put into the copy once it is committed.
 */
export class EveningLanes implements Writer {
  readonly figures: LaneFigures = { commits: 0, fenced: 0, readAgain: 0 };
  readonly #parts: LanesParts;
  readonly #lanes = new Map<TastingId, CommitLane<MirroredTable>>();
  #closed = false;

  constructor(parts: LanesParts) {
    this.#parts = parts;
  }

  write<Result>(of: TastingId, run: () => Result): Promise<Result> {
    const lane = this.#lanes.get(of) ?? this.#laneOf(of);
    this.#lanes.set(of, lane);
    return lane.write(run);
  }

  writing(of: TastingId): boolean {
    return this.#lanes.has(of);
  }

  async cut(): Promise<void> {}

  async idle(): Promise<void> {
    while (this.#lanes.size > 0) await Promise.all([...this.#lanes.values()].map((lane) => lane.idle()));
  }

  /** What waits for a database that does not answer is told that it is not stored. */
  close(): void {
    this.#closed = true;
  }

  #laneOf(of: TastingId): CommitLane<MirroredTable> {
    return new CommitLane({
      changes: this.#parts.changes,
      commit: (changes) => this.#commit(of, changes),
      mayBeOne: isRefused,
      failure: databaseFailure,
      onIdle: () => void this.#lanes.delete(of),
    });
  }

  async #commit(of: TastingId, all: readonly RowChange[]): Promise<void> {
    const { claims, lease, time, apply, alongWith } = this.#parts;
    const removed = all.find(({ table, kind }) => table.name === 'tastings' && kind === 'delete');
    const own: OwnHead | undefined = claims.owned.get(of);
    const created = all.some(({ table, kind }) => table.name === 'tastings' && kind === 'insert');
    if (own === undefined && !created) throw new Diverged('Another process conducts this evening.');
    if (own === undefined && !lease().mayOwn)
      throw new StoreFailure('This process has no lease at the moment.');
    // The database takes everything of it along.
    const rows = removed === undefined ? all : [removed];
    const { also, done } = alongWith(rows);
    const head = own ?? { epoch: 0, version: 0, usedAt: 0 };
    await this.#send(of, head, [...rows, ...also], removed !== undefined);
    this.figures.commits += 1;
    // Its answer may have come when the session is another's already: then nobody here may hear of it.
    if (!lease().holds()) await lease().held();
    if (own !== undefined && claims.owned.get(of) !== own)
      throw new Diverged('Another process conducts this evening.');
    if (removed !== undefined) claims.owned.delete(of);
    else if (own === undefined) claims.owned.set(of, { epoch: 1, version: 1, usedAt: time.steady() });
    else own.version += 1;
    apply(rows);
    done();
  }

  /** Until it is known whether it was done. */
  async #send(
    of: TastingId,
    { epoch, version }: OwnHead,
    rows: readonly RowChange[],
    removed: boolean,
  ): Promise<void> {
    const { ask, time, lease, claims } = this.#parts;
    const batch = randomUUID();
    const owner = lease().process;
    const { text, values } = commitStatement({ tasting: of, owner, epoch, version, batch }, rows);
    for (let pause = 50; ; pause = Math.min(500, pause * 2)) {
      try {
        if ((await ask(text, values)).length === 1) return;
        const stands = await this.#headOf(of);
        // It had been done, and only the answer was lost.
        if (stands === undefined ? removed : stands.batch === batch) return;
        this.figures.fenced += 1;
        claims.lose(of);
        throw new Diverged('Another process conducts this evening.');
      } catch (error) {
        if (error instanceof StoreFailure || isRefused(error)) throw error;
        if (this.#closed) throw databaseFailure(error);
        // Sent again with the same expectation it is done once at the most.
        this.figures.readAgain += 1;
        await new Promise<void>((done) => time.after(pause, done));
      }
    }
  }

  async #headOf(of: TastingId): Promise<{ readonly batch: string } | undefined> {
    // Waits for a commit of this row that is still under way.
    const [row] = await this.#parts.ask<{ batch: string }>(
      'SELECT batch FROM heads WHERE tasting = $1 FOR SHARE',
      [of],
    );
    return row;
  }
}
