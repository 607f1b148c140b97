import SqliteDatabase from 'better-sqlite3';
import { migrations } from './migrations.ts';

/** Reads a copy of a store from end to end. Answers with the number of tastings in it; throws a sentence. */
export function checkCopy(file: string): number {
  try {
    const db = new SqliteDatabase(file, { readonly: true, fileMustExist: true });
    try {
      const sound = db.pragma('integrity_check', { simple: true }) === 'ok';
      const version = Number(db.pragma('user_version', { simple: true }));
      if (version > migrations.length) throw new Error('newer');
      if (!sound || version < 1) throw new Error('unsound');
      return Number(db.prepare('SELECT count(*) FROM tastings').pluck().get());
    } finally {
      db.close();
    }
  } catch (error) {
    if (error instanceof Error && error.message === 'newer') {
      throw new Error(`${file} was written by a newer Quietpour: restore it with that version.`, {
        cause: error,
      });
    }
    throw new Error(`${file} is not a sound store of Quietpour: take another backup.`, { cause: error });
  }
}
