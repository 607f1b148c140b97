import { randomUUID } from 'node:crypto';
import { setTimeout as wait } from 'node:timers/promises';
import type { TastingId } from '../../../core/ids.ts';
import { Diverged, StoreFailure } from '../store.ts';
import type { Writer } from '../writer.ts';
import { failure } from '../writer.ts';
import type { Changes, RowChange } from './changes.ts';
import type { Claims, OwnHead } from './claims.ts';
import { commitStatement } from './commit-statement.ts';
import type { Ask } from './connections.ts';
import type { Lease } from './lease.ts';
import { databaseFailure, isRefused } from './trouble.ts';

interface Waiting {
  readonly run: () => void;
  readonly settle: () => void;
  readonly fail: (reason: StoreFailure) => void;
}
interface Lane {
  readonly waiting: Waiting[];
  running: boolean;
}

export interface LaneParts {
  readonly ask: Ask;
  readonly changes: Changes;
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

/** As many as are committed together. */
const together = 64;

/**
 * Commits to PostgreSQL, each evening in a lane of its own: what waits is tried in the copy in memory, sent as one statement,
 * and put into the copy once it is committed. So whoever reads the copy reads only what is committed.
 */
export class EveningLanes implements Writer {
  readonly figures: LaneFigures = { commits: 0, fenced: 0, readAgain: 0 };
  readonly #parts: LaneParts;
  readonly #lanes = new Map<TastingId, Lane>();
  readonly #running = new Set<Promise<void>>();
  #closed = false;

  constructor(parts: LaneParts) {
    this.#parts = parts;
  }

  write<Result>(of: TastingId, run: () => Result): Promise<Result> {
    return new Promise((resolve, reject) => {
      let result: { readonly is: Result } | undefined;
      const lane = this.#lanes.get(of) ?? { waiting: [], running: false };
      this.#lanes.set(of, lane);
      lane.waiting.push({
        run: () => {
          result = { is: run() };
        },
        settle: () => result && resolve(result.is),
        fail: reject,
      });
      if (lane.running) return;
      lane.running = true;
      const running = this.#serve(of, lane).finally(() => this.#running.delete(running));
      this.#running.add(running);
    });
  }

  writing(of: TastingId): boolean {
    return this.#lanes.has(of);
  }

  async idle(): Promise<void> {
    while (this.#running.size > 0) await Promise.all(this.#running);
  }

  /** What waits for a database that does not answer is told that it is not stored. */
  close(): void {
    this.#closed = true;
  }

  async #serve(of: TastingId, lane: Lane): Promise<void> {
    // What arrives in this turn of the loop is committed together.
    await new Promise<void>((turn) => setImmediate(turn));
    while (lane.waiting.length > 0) await this.#commitAll(of, lane.waiting.splice(0, together));
    lane.running = false;
    this.#lanes.delete(of);
  }

  async #commitAll(of: TastingId, batch: readonly Waiting[]): Promise<void> {
    let good: readonly Waiting[] = [];
    try {
      const tried = this.#parts.changes.tried(batch.map(({ run }) => run));
      good = batch.filter((each, index) => {
        const said = tried[index];
        if (said === undefined || 'failed' in said) each.fail(failure(said?.failed));
        return said !== undefined && 'changes' in said;
      });
      const changes = tried.flatMap((said) => ('changes' in said ? said.changes : []));
      if (changes.length > 0) await this.#commit(of, changes);
      for (const each of good) each.settle();
    } catch (error) {
      // The database minds one of them: then each by itself.
      if (good.length > 1 && isRefused(error)) for (const each of good) await this.#commitAll(of, [each]);
      else for (const each of good) each.fail(databaseFailure(error));
    }
  }

  async #commit(of: TastingId, all: readonly RowChange[]): Promise<void> {
    const { claims, lease, changes, alongWith } = this.#parts;
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
    else if (own === undefined) claims.owned.set(of, { epoch: 1, version: 1, usedAt: performance.now() });
    else own.version += 1;
    changes.apply(rows);
    done();
  }

  /** Until it is known whether it was done. */
  async #send(
    of: TastingId,
    { epoch, version }: OwnHead,
    rows: readonly RowChange[],
    removed: boolean,
  ): Promise<void> {
    const { ask, lease, claims } = this.#parts;
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
        await wait(pause);
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
