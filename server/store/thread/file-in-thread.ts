import SqliteDatabase, { type Database } from 'better-sqlite3';
import { CommitLane } from '../commit-lane.ts';
import { type Forgettings, forgettingsFileOf } from '../forgettings.ts';
import { type Changes, changesIn, type KeptTable, type RowChange } from '../row-changes.ts';
import type { SlotWriting } from '../seals/key-slots.ts';
import { slotFileOf } from '../seals/seals.ts';
import type { Writer } from '../writer.ts';
import { CommitThread } from './commit-thread.ts';
import { tablesIn } from './kept-tables.ts';
import type { SlotWrite } from './task.ts';

/** A store's file that is read here and written by a thread of its own. */
export interface FileInThread {
  readonly db: Database;
  readonly writer: Writer;
  readonly slots: SlotWriting;
  readonly forgettings: Forgettings;
  copyInto(copy: string, slots: () => readonly Uint8Array[]): Promise<void>;
  /** When nothing waits any more. */
  close(): Promise<void>;
}

/**
 * A write is tried on this side's connection and taken back, sent to the thread as the rows that it changes, and answered
 * when the thread has committed it. SQLite shows a reader a commit only after its log is on disk, so nothing that is read
 * here is ever lost by a power cut. The two never want the file's lock at once: whoever tries waits for the thread.
 *
 * @param file of today's version, which nobody else has open: see `lockOf`
 */
export function fileInThread(file: string, pages: number | undefined): FileInThread {
  const db = new SqliteDatabase(file, { timeout: 500 });
  try {
    // Nothing of what is only tried may reach the disk.
    db.pragma('cache_spill = OFF');
    db.pragma('temp_store = MEMORY');
    if (pages !== undefined) db.pragma(`max_page_count = ${pages}`);
    const changes = changesIn(db, tablesIn(db));
    const given = { file, slots: slotFileOf(file), forgotten: forgettingsFileOf(file), pages };
    return parts(db, changes, new CommitThread(given));
  } catch (error) {
    db.close();
    throw error;
  }
}

function parts(db: Database, changes: Changes<KeptTable>, thread: CommitThread): FileInThread {
  // Bytes for places in the file of keys that are not known to be on disk; each goes with whatever is written next.
  const unsaved = new Map<number, Uint8Array>();
  const commit = async (rows: readonly RowChange<KeptTable>[]): Promise<void> => {
    const slots: readonly SlotWrite[] = [...unsaved];
    if (slots.length + rows.length === 0) return;
    const sent = rows.map(({ table, kind, row }) => ({ table: table.name, kind, row }));
    await thread.ask({ do: 'commit', slots, changes: sent });
    for (const [at, bytes] of slots) if (unsaved.get(at) === bytes) unsaved.delete(at);
  };
  const lane = new CommitLane({ changes, commit });
  return {
    db,
    writer: {
      write: (_of, run) => lane.write(run),
      cut: () => lane.alone(() => thread.ask({ do: 'cut' })),
      idle: () => lane.idle(),
    },
    slots: {
      put: (at, bytes) => void unsaved.set(at, bytes),
      saved: () => lane.alone(() => commit([])),
    },
    forgettings: { add: (forgotten) => thread.ask({ do: 'forget', forgotten }) },
    async copyInto(copy, slots) {
      await thread.ask({ do: 'copy', to: copy });
      await thread.ask({ do: 'pack', copy, slots: slots() });
    },
    async close() {
      // The last one who closes it folds the log in.
      db.close();
      await thread.close();
    },
  };
}

/**
 * Held for as long as a server runs, and let go by the system when it is killed: two connections share the store's file, so
 * its own lock keeps no other server away. Throws SQLITE_BUSY when another has it.
 */
export function lockOf(file: string): { close(): void } {
  const lock = new SqliteDatabase(`${file}.lock`, { timeout: 500 });
  try {
    lock.exec('BEGIN EXCLUSIVE');
    return lock;
  } catch (error) {
    lock.close();
    throw error;
  }
}
