import { closeSync, copyFileSync, existsSync, fsyncSync, openSync, renameSync, rmSync } from 'node:fs';
import SqliteDatabase, { type Database } from 'better-sqlite3';
import { type Migration, migrations } from './migrations.ts';

/** What an upgrade did to a file. */
export interface Upgrade {
  readonly from: number;
  readonly to: number;
  /** The file as it was before. */
  readonly copy: string;
}

/** Throws a sentence when the file was written by a newer server, or is somebody else's. */
function storedVersion(db: Database, known: readonly Migration[] = migrations): number {
  const found = Number(db.pragma('user_version', { simple: true }));
  if (found > known.length) {
    throw new Error(
      `The store was written by a newer Quietpour (it counts ${found} changes of its tables, this one knows ${known.length}): start that version instead.`,
    );
  }
  const tables = Number(db.prepare('SELECT count(*) FROM sqlite_schema').pluck().get());
  if (found === 0 && tables > 0)
    throw new Error('The store is not a store of Quietpour: choose another data folder.');
  return found;
}

/**
 * Copies the file aside when something is pending and there is anything in it. To be called while nobody has it open:
 * to close a copy's handle lets go of every lock that this process holds on the file.
 *
 * @returns undefined when nothing is pending
 */
export function copyBeforeUpgrade(
  file: string,
  known: readonly Migration[] = migrations,
): Upgrade | undefined {
  if (!existsSync(file)) return undefined;
  const db = new SqliteDatabase(file, { timeout: 500 });
  let from: number;
  try {
    from = storedVersion(db, known);
    if (from === 0 || from === known.length) return undefined;
    // Also proves that no server has it.
    db.pragma('locking_mode = EXCLUSIVE');
    db.pragma('wal_checkpoint(TRUNCATE)');
    db.exec('BEGIN EXCLUSIVE; COMMIT');
  } finally {
    db.close();
  }
  const copy = freeName(`${file}.version-${from}`);
  const part = `${copy}.part`;
  copyFileSync(file, part);
  const written = openSync(part, 'r+');
  fsyncSync(written);
  closeSync(written);
  renameSync(part, copy);
  return { from, to: known.length, copy };
}

/** Each pending migration once, each whole or not at all. */
export function migrate(db: Database, known: readonly Migration[] = migrations): void {
  const from = storedVersion(db, known);
  // Tables are replaced by dropping them, which must not take the rows that point at them along.
  db.pragma('foreign_keys = OFF');
  known.slice(from).forEach(({ name, run }, index) => {
    db.transaction(() => {
      run(db);
      const broken = db.pragma('foreign_key_check') as readonly unknown[];
      if (broken.length > 0) throw new Error(`The store could not be brought up to date ("${name}").`);
      db.pragma(`user_version = ${from + index + 1}`);
    })();
  });
  db.pragma('foreign_keys = ON');
}

/** An upgrade that failed changed nothing, so that its copy is one too many. */
export function dropCopy(upgrade: Upgrade | undefined): void {
  if (upgrade !== undefined) rmSync(upgrade.copy, { force: true });
}

/** A copy from before is never written over: the file may have been put back since. */
function freeName(wanted: string): string {
  for (let number = 1; ; number += 1) {
    const name = number === 1 ? wanted : `${wanted}-${number}`;
    if (!existsSync(name)) return name;
  }
}
