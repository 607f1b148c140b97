import type { Database } from 'better-sqlite3';
import { pourId, seatId, tastingId } from '../../core/ids.ts';
import { type Forgotten, forgetAgain } from './forgettings.ts';
import { puttingSealed } from './sealed-rows.ts';
import type { Seals } from './seals/seals.ts';
import { cutLog } from './writer.ts';

interface PlainRow {
  readonly tasting: string;
  readonly seat: string;
  readonly pour: string;
  readonly field: string;
  readonly value: string;
  readonly sealed_value: string | null;
  readonly revision: number;
  readonly saved_at: number;
}

/**
 * Seals what an earlier release kept in plain words, and then writes the whole file anew, so that none of them stays
 * behind in pages that are no longer used. The plain table goes last: whatever breaks this off, it is done again.
 */
export function sealPlainNotes(db: Database, seals: Seals, forgotten: readonly Forgotten[]): void {
  if (!hasTable(db, 'notes')) return;
  // It may be an old backup.
  forgetAgain(db, forgotten);
  const rows = db.prepare<[], PlainRow>('SELECT * FROM notes').all();
  const put = puttingSealed(db);
  const answered = Number(db.prepare("SELECT count(*) FROM answers WHERE scope <> ''").pluck().get());
  db.transaction(() => {
    for (const row of rows) {
      const at = {
        tasting: tastingId(row.tasting),
        notebook: seatId(row.seat),
        pour: pourId(row.pour),
        field: row.field,
      };
      const value = seals.seal({ ...at, column: 'value' }, row.value);
      const sealed =
        row.sealed_value === null ? null : seals.seal({ ...at, column: 'sealed_value' }, row.sealed_value);
      put({ ...at, value, sealed_value: sealed, revision: row.revision, saved_at: row.saved_at });
    }
    db.exec('DELETE FROM notes');
  })();
  if (rows.length + answered > 0) {
    db.exec('VACUUM');
    cutLog(db);
  }
  db.exec('DROP TABLE notes');
  cutLog(db);
}

const hasTable = (db: Database, name: string): boolean =>
  db.prepare("SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = ?").get(name) !== undefined;
