import { StoreFailure } from '../store.ts';
import type { Connections } from './connections.ts';
import { type PostgresMigration, postgresMigrations } from './migrations.ts';

/** The oldest server with which everything here was tried; `clock_timestamp` and `unnest` of several arrays are older. */
const oldestServer = 150_000;

/**
 * Each pending migration once, each whole or not at all; several processes may start at the same moment. Throws a sentence
 * when the database is too old, or was brought further by a version that this one cannot live with.
 */
export async function migratePostgres(
  connections: Connections,
  known: readonly PostgresMigration[] = postgresMigrations,
): Promise<void> {
  await connections.together(async (ask) => {
    const [server] = await ask<{ version: string; readonly: boolean }>(
      "SELECT current_setting('server_version_num') AS version, pg_is_in_recovery() AS readonly",
    );
    if (Number(server?.version) < oldestServer)
      throw new StoreFailure('This PostgreSQL is too old: Quietpour needs version 15 or later.');
    if (server?.readonly === true)
      throw new StoreFailure(
        'This PostgreSQL is a copy that may only be read: name the primary in QUIETPOUR_DATABASE_URL.',
      );
    await laidOnce(() =>
      ask(
        'CREATE TABLE IF NOT EXISTS migrations (number integer PRIMARY KEY, name text NOT NULL, needs integer NOT NULL, at timestamptz NOT NULL DEFAULT now())',
      ),
    );
    for (let more = true; more; ) more = await step(ask, known);
  });
}

type Ask = Parameters<Parameters<Connections['together']>[0]>[0];

/** One migration, in a transaction in which nobody else migrates. False when none is pending. */
async function step(ask: Ask, known: readonly PostgresMigration[]): Promise<boolean> {
  await ask('BEGIN');
  try {
    await ask("SET LOCAL lock_timeout = '10s'");
    await ask('LOCK TABLE migrations IN SHARE ROW EXCLUSIVE MODE');
    const [done] = await ask<{ count: number; needs: number | null }>(
      'SELECT count(*)::int AS count, max(needs) AS needs FROM migrations',
    );
    const count = done?.count ?? 0;
    if ((done?.needs ?? 0) > known.length) {
      throw new StoreFailure(
        `The database was brought up to date by a newer Quietpour (it needs ${done?.needs} changes of its tables, this one knows ${known.length}): start that version instead.`,
      );
    }
    const next = known[count];
    if (next === undefined) {
      await ask('COMMIT');
      return false;
    }
    await ask(next.sql);
    await ask('INSERT INTO migrations (number, name, needs) VALUES ($1, $2, $3)', [
      count + 1,
      next.name,
      next.needs,
    ]);
    await ask('COMMIT');
    return true;
  } catch (error) {
    await ask('ROLLBACK').catch(() => undefined);
    throw error;
  }
}

/** Two processes that lay the first table at the same moment: one of them is told that it, or its type, is there. */
async function laidOnce(lay: () => Promise<unknown>): Promise<void> {
  try {
    await lay();
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    if (code !== '23505' && code !== '42P07' && code !== '42710') throw error;
  }
}
