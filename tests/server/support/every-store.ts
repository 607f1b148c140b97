import { join } from 'node:path';
import { afterAll } from 'vitest';
import { openPostgresStore } from '../../../server/store/postgres/postgres.ts';
import { openSqliteStore } from '../../../server/store/sqlite.ts';
import type { Store } from '../../../server/store/store.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { type PostgresServer, startPostgres } from '../../support/postgres-server.ts';

type Opened = readonly [name: string, open: (folder: string) => Store | Promise<Store>];

/** Every kind of store, empty, for a file of tests that each has to pass. */
export function everyStore(): readonly Opened[] {
  let postgres: PostgresServer | undefined;
  afterAll(() => postgres?.stop());
  return [
    ['a store in a file', (folder) => openSqliteStore(join(folder, 'store.sqlite'))],
    [
      'a store in a file that a thread writes',
      (folder) => openSqliteStore(join(folder, 'store.sqlite'), { inThread: true }),
    ],
    ['a store in memory', () => memoryStore()],
    [
      'a store in PostgreSQL',
      async () => {
        postgres ??= await startPostgres();
        const url = await postgres.database();
        return openPostgresStore({ url, notesKey: Buffer.alloc(32, 7), houseKey: 'house' });
      },
    ],
  ];
}
