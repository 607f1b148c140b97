import SqliteDatabase, { type Database, type Statement } from 'better-sqlite3';
import type { Ask, Connections } from '../../../../server/store/postgres/connections.ts';
import { postgresMigrations } from '../../../../server/store/postgres/migrations.ts';
import type { Chances } from '../../chances.ts';
import type { VirtualTime } from '../../virtual-time.ts';
import { arraysIn, inSqlite, partsOfCommit } from './dialect.ts';
import { beginning, type Machine } from './machine.ts';

/** What lies between one process and the database. */
export interface DatabaseLine {
  /** Nothing goes through, and nobody is told. */
  cut: boolean;
}

/** Ms after which an answer is not waited for any longer, as connections.ts has it. */
const patience = { usual: 5000, apart: 1000 };

/**
 * PostgreSQL as its processes see it: the product's own statements, each whole or not at all, in the tables of its own
 * migrations (SQLite carries them out), behind a network that delays, and loses answers after the commit. It may stand still,
 * go away, and come back as a copy with another clock.
 */
export class SimulatedPostgres {
  state: 'up' | 'down' | 'read-only' = 'up';
  /** How often the answer to what was done is lost, and what is asked comes late. */
  trouble = { lost: 0, late: 0 };
  /** Ms by which its clock is off. */
  off = 0;
  readonly #time: VirtualTime;
  readonly #chances: Chances;
  readonly #bent: (statement: string) => string;
  readonly #db: Database;
  readonly #arrays;
  readonly #prepared = new Map<string, Statement<[object]>>();
  #stands: (() => void)[] | undefined;
  /** Commits that were done for one who was not the owner at that moment. */
  stale = 0;

  /** @param bent what a planted fault makes of a statement */
  constructor(time: VirtualTime, chances: Chances, bent: (statement: string) => string) {
    this.#time = time;
    this.#chances = chances;
    this.#bent = bent;
    this.#db = new SqliteDatabase(':memory:');
    this.#db.function(
      'clock_timestamp',
      { deterministic: false },
      () => beginning + this.off + this.#time.now,
    );
    this.#arrays = arraysIn(this.#db);
    // What the database itself does for servers of before is left out: all that run here know every column.
    for (const { sql } of postgresMigrations)
      if (!sql.includes('plpgsql')) this.#db.exec(inSqlite(bent(sql)));
  }

  /** Takes no statement until it goes on; those that wait are carried out then, whoever still wants to know. */
  stop(): void {
    this.#stands ??= [];
  }
  goOn(): void {
    const waiting = this.#stands ?? [];
    this.#stands = undefined;
    for (const run of waiting) run();
  }

  connections(machine: Machine, line: DatabaseLine): Connections {
    const asking =
      (atMost: number): Ask =>
      <Row>(text: string, values: readonly unknown[] = []) =>
        new Promise<Row[]>((resolve, reject) => {
          const cancel = machine.after(atMost, () => reject(new Error('Query read timeout')));
          const answered = (tell: () => void): void => {
            this.#time.after(this.#delay(), () => {
              if (line.cut) return;
              cancel();
              machine.does(tell);
            });
          };
          this.#time.after(this.#delay(), () => {
            if (!line.cut) this.#takes(text, values, answered, resolve as (rows: unknown[]) => void, reject);
          });
        });
    const ask = asking(patience.usual);
    return {
      ask,
      askApart: asking(patience.apart),
      together: (run) => run(ask),
      close: async () => undefined,
    };
  }

  /** What the log says of an evening in the end. */
  rows<Row>(text: string, values: readonly unknown[]): Row[] {
    return this.#carriedOut(text, values) as Row[];
  }

  #takes(
    text: string,
    values: readonly unknown[],
    answered: (tell: () => void) => void,
    resolve: (rows: unknown[]) => void,
    reject: (error: Error) => void,
  ): void {
    if (this.#stands !== undefined) {
      this.#stands.push(() => this.#takes(text, values, answered, resolve, reject));
      return;
    }
    const refused =
      this.state === 'down'
        ? 'ECONNREFUSED'
        : this.state === 'read-only' && !/^\s*SELECT/.test(text) && '25006';
    if (refused) {
      answered(() => reject(withCode(refused)));
      return;
    }
    try {
      const rows = this.#carriedOut(text, values);
      if (this.#chances.happens(this.trouble.lost)) answered(() => reject(withCode('ECONNRESET')));
      else answered(() => resolve(rows));
    } catch (error) {
      if (!/^SQLITE_CONSTRAINT/.test(String((error as { code?: unknown }).code))) throw error;
      answered(() => reject(withCode('23505')));
    }
  }

  #carriedOut(text: string, values: readonly unknown[]): unknown[] {
    const bent = this.#bent(text);
    const parts = partsOfCommit(bent);
    const bound = this.#arrays.bound(values);
    if (parts === undefined) return this.#run(bent, bound);
    return this.#db.transaction(() => {
      // PostgreSQL looks at what hangs on what when the whole statement is done.
      this.#db.pragma('defer_foreign_keys = ON');
      const [first = '', ...rest] = parts;
      const isStale = this.#isStale(values);
      const rows = this.#run(first, bound);
      if (rows.length === 0) return [];
      for (const part of rest) this.#run(part, bound);
      if (isStale) this.stale += 1;
      return rows;
    })();
  }

  /** Whether the head of this evening names another owner than this commit, or the same in another epoch. */
  #isStale([tasting, owner, epoch]: readonly unknown[]): boolean {
    const sql = 'SELECT 1 FROM heads WHERE tasting = $1 AND (owner IS NOT $2 OR epoch <> $3)';
    return this.#run(sql, { p1: tasting, p2: owner, p3: epoch }).length > 0;
  }

  #run(text: string, bound: Readonly<Record<string, unknown>>): unknown[] {
    const statement = this.#prepared.get(text) ?? this.#db.prepare<[object]>(inSqlite(text));
    this.#prepared.set(text, statement);
    if (statement.reader) return statement.all(bound);
    statement.run(bound);
    return [];
  }

  #delay(): number {
    const late = this.#chances.happens(this.trouble.late) ? this.#chances.between(300, 4000) : 0;
    return late + this.#chances.between(0.2, 1.5);
  }
}

const withCode = (code: string): Error => Object.assign(new Error(code), { code, severity: 'ERROR' });
