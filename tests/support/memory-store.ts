import { openSqliteStore } from '../../server/store/sqlite.ts';
import type { Store } from '../../server/store/store.ts';

/** The store without a file. */
export const memoryStore = (): Store => openSqliteStore(':memory:');
