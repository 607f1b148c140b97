import SqliteDatabase, { type Database } from 'better-sqlite3';
import type { SeatId, TastingId } from '../../../core/ids.ts';
import { type Forgotten, forgetAgain } from '../forgettings.ts';
import { cutLog } from '../writer.ts';
import type { Seals } from './seals.ts';

/**
 * In a backup the wrapped keys of the notebooks lie in a table of their own; without the server's notes.key they open
 * nothing. A store that is in use never has it.
 */
const table = 'packed_keys';

function packKeys(copy: Database, slots: readonly Uint8Array[]): void {
  copy.exec(`CREATE TABLE ${table} (slot BLOB NOT NULL) STRICT`);
  const insert = copy.prepare<[Uint8Array]>(`INSERT INTO ${table} VALUES (?)`);
  copy.transaction(() => {
    for (const slot of slots) insert.run(slot);
  })();
}

export function packedKeysIn(db: Database): Buffer[] {
  return isPacked(db) ? db.prepare<[], Buffer>(`SELECT slot FROM ${table}`).pluck().all() : [];
}

/** Makes of a copy one file that stands by itself, without a write-ahead log beside it, with these keys in it. */
export function packInto(file: string, slots: readonly Uint8Array[]): void {
  const copy = new SqliteDatabase(file);
  try {
    copy.pragma('journal_mode = DELETE');
    packKeys(copy, slots);
  } finally {
    copy.close();
  }
}

const isPacked = (db: Database): boolean =>
  db.prepare("SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = ?").get(table) !== undefined;

/**
 * When this store is a backup that was put back: puts its keys where they are used, carries out what was forgotten since it
 * was made, and writes the file anew, so that no key stays behind in it. Can be broken off and done again.
 */
export function unpackKeys(db: Database, seals: Seals, forgotten: readonly Forgotten[]): void {
  if (!isPacked(db)) return;
  seals.take(packedKeysIn(db), forgotten);
  forgetAgain(db, forgotten);
  db.exec(`DELETE FROM ${table}`);
  db.exec('VACUUM');
  db.exec(`DROP TABLE ${table}`);
  cutLog(db);
}

export const notebooksOf = (db: Database, tasting: TastingId): SeatId[] =>
  db
    .prepare<[string], SeatId>('SELECT DISTINCT notebook FROM sealed_notes WHERE tasting = ?')
    .pluck()
    .all(tasting);

/** Every notebook that has notes. */
export const notebooksIn = (db: Database): { readonly tasting: string; readonly notebook: string }[] =>
  db
    .prepare<[], { tasting: string; notebook: string }>('SELECT DISTINCT tasting, notebook FROM sealed_notes')
    .all();
