import { closeSync, fsyncSync, openSync, writeSync } from 'node:fs';
import { parentPort, workerData } from 'node:worker_threads';
import SqliteDatabase from 'better-sqlite3';
import { forgettingsIn } from '../forgettings.ts';
import { applying } from '../row-changes.ts';
import { packInto } from '../seals/packed-keys.ts';
import { cutLog } from '../writer.ts';
import { tablesIn } from './kept-tables.ts';
import { makeRoom } from './log-room.ts';
import type { Asked, Done, SlotWrite, Task, ThreadGiven } from './task.ts';

/**
 * The one hand that writes the store's file: it waits for the disk, and no tap waits with it. Each task is whole before the
 * next is begun, but for a copy, which lets others in between its pages.
 */
const given = workerData as ThreadGiven;
const db = new SqliteDatabase(given.file, { timeout: 500 });
db.pragma('synchronous = FULL');
// What is deleted is overwritten: a guest's words must not linger in free pages.
db.pragma('secure_delete = ON');
if (given.pages !== undefined) db.pragma(`max_page_count = ${given.pages}`);
const apply = applying(db, tablesIn(db));
const slots = openSync(given.slots, 'r+');
const forgettings = forgettingsIn(given.forgotten);

let roomy = false;

function keep(writes: readonly SlotWrite[]): void {
  if (writes.length === 0) return;
  for (const [at, bytes] of writes) writeSync(slots, bytes, 0, bytes.length, at * bytes.length);
  fsyncSync(slots);
}

function carryOut(task: Task): unknown {
  switch (task.do) {
    case 'commit':
      keep(task.slots);
      return apply(task.changes);
    case 'forget':
      return forgettings.add(task.forgotten);
    case 'cut':
      roomy = false;
      return cutLog(db);
    case 'copy':
      return db.backup(task.to);
    case 'pack':
      return packInto(task.copy, task.slots);
    case 'close':
      db.close();
      return closeSync(slots);
  }
}

parentPort?.on('message', async ({ id, task }: Asked) => {
  let done: Done = { id };
  try {
    await carryOut(task);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : undefined;
    done = { id, failed: { code, message: error instanceof Error ? error.message : 'unknown' } };
  }
  parentPort?.postMessage(done);
  // It is answered: nobody waits for this.
  if (!roomy && task.do !== 'close') roomy = makeRoom(`${given.file}-wal`);
});
