import SqliteDatabase from 'better-sqlite3';
import type { StoredPart } from '../../../shared/wire/http.ts';
import type { Chances } from '../chances.ts';

/** What is told of a row of each table that is not as it was written; events are told of by their number. */
export const partOf: Readonly<Record<string, readonly StoredPart[]>> = {
  tastings: ['plan'],
  documents: ['pour-run', 'kits'],
  surveys: ['survey'],
  keys: ['links'],
  summaries: ['list'],
  answers: ['answers'],
  sealed_notes: ['notes'],
  seat_words: ['words'],
  photos: ['photos'],
};

/** Of each table its rows as text, each with its evening; undefined where they cannot be read. */
export type Rows = ReadonlyMap<string, ReadonlyMap<string, string> | undefined>;

/** Read beside our code, by SQLite alone. */
export function rowsOf(file: string): Rows {
  let db: SqliteDatabase.Database | undefined;
  const read = (table: string): ReadonlyMap<string, string> | undefined => {
    try {
      db ??= new SqliteDatabase(file, { readonly: true });
      const rows = db.prepare<[], { readonly tasting: string }>(`SELECT * FROM ${table}`).all();
      return new Map(rows.map((row) => [JSON.stringify(row), row.tasting]));
    } catch {
      return undefined;
    }
  };
  try {
    return new Map(Object.keys(partOf).map((table) => [table, read(table)]));
  } finally {
    db?.close();
  }
}

export interface Changed {
  readonly table: string;
  readonly tasting: string;
}

/** Whose rows are not what they were; undefined where a table cannot be read any more. */
export function changedIn(before: Rows, now: Rows): readonly Changed[] | undefined {
  const changed: Changed[] = [];
  for (const [table, sound] of before) {
    const found = now.get(table);
    if (found === undefined) return undefined;
    for (const [row, tasting] of sound ?? []) if (!found.has(row)) changed.push({ table, tasting });
  }
  return changed;
}

/** A byte of a page of any table, each table as often as any other, however small it is. */
export function placeIn(file: string, chances: Chances): { readonly table: string; readonly at: number } {
  const db = new SqliteDatabase(file, { readonly: true });
  try {
    const pages = db
      .prepare<[], { readonly name: string; readonly pageno: number }>('SELECT name, pageno FROM dbstat')
      .all();
    const table = chances.anyOf([...new Set(pages.map(({ name }) => name))]) ?? '';
    const page = chances.anyOf(pages.filter(({ name }) => name === table))?.pageno ?? 1;
    const size = Number(db.pragma('page_size', { simple: true }));
    return { table, at: (page - 1) * size + chances.below(size) };
  } finally {
    db.close();
  }
}
