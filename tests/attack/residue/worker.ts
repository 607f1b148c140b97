import { rmSync } from 'node:fs';
import { join } from 'node:path';
import type { SeatId, TastingId } from '../../../core/ids.ts';
import { backUp } from '../../../server/ops/backup.ts';
import { openSqliteStore } from '../../../server/store/sqlite.ts';
import { Chances } from '../chances.ts';
import { type Forgotten, forget, write } from './words.ts';

/**
 * Goes on until it is killed: `worker.ts FOLDER write|back-up FIRST SEED FORGOTTEN`. Tells its parent when it has begun, and whom it
 * has forgotten once that is acknowledged.
 */
const [, , folder = '', work = 'write', first = '0', seed = '1', gone = '[]'] = process.argv;
const data = join(folder, 'data');
const chances = new Chances(Number(seed));
const forgotten: Forgotten = new Map(
  JSON.parse(gone) as (readonly [string, { tasting: TastingId; seat: SeatId }])[],
);

process.on('disconnect', () => process.exit(0));
if (work === 'back-up') {
  const copy = join(folder, 'backup-killed.db');
  for (;;) {
    rmSync(copy, { force: true });
    process.send?.({ begun: true });
    await backUp(data, copy);
  }
}
const store = openSqliteStore(join(data, 'quietpour.db'), { inThread: true });
const revisions = new Map<string, number>();
for (let word = Number(first); ; word += 1) {
  await write(store, word, chances, revisions, forgotten);
  process.send?.({ begun: true });
  if (!chances.happens(0.05)) continue;
  const before = new Set(forgotten.keys());
  await forget(store, chances, forgotten);
  for (const [key, who] of forgotten) if (!before.has(key)) process.send?.(who);
}
