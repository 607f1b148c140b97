import { existsSync } from 'node:fs';
import SqliteDatabase from 'better-sqlite3';
import { slotOf } from './key-slots.ts';
import { masterKeyFrom, masterKeyIn } from './master-key.ts';
import { packedKeysIn } from './packed-keys.ts';
import { fits } from './seals.ts';

/** Whether the notes of a backup open with the key in this file; a backup without notes opens with any. */
export function opensWith(backup: string, masterFile: string): boolean {
  const db = new SqliteDatabase(backup, { readonly: true });
  try {
    const slots = packedKeysIn(db).flatMap((bytes) => slotOf(bytes) ?? []);
    if (slots.length === 0) return true;
    if (!existsSync(masterFile)) return false;
    const master = masterKeyFrom(masterKeyIn(masterFile, false));
    return slots.some((slot) => fits(master, slot));
  } finally {
    db.close();
  }
}

/** Takes all that guests wrote and chose out of a copy of a store. */
export function leaveNotesBehind(copy: string): void {
  const db = new SqliteDatabase(copy);
  try {
    const found = db.prepare<[], string>("SELECT name FROM sqlite_schema WHERE type = 'table'").pluck().all();
    for (const table of ['sealed_notes', 'notes', 'packed_keys', 'seat_words', 'shares'])
      if (found.includes(table)) db.exec(`DELETE FROM ${table}`);
    db.exec("DELETE FROM answers WHERE scope <> ''");
    db.exec('VACUUM');
  } finally {
    db.close();
  }
}
