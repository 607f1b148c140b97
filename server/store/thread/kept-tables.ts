import type { Database } from 'better-sqlite3';
import type { KeptTable } from '../row-changes.ts';

/** Every table of the file with all its columns, so that one which a migration adds is written like the others. */
export function tablesIn(db: Database): readonly KeptTable[] {
  const names = db
    .prepare<[], string>("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%'")
    .pluck()
    .all();
  const columnsOf = db.prepare<[string], { readonly name: string; readonly pk: number }>(
    'SELECT name, pk FROM pragma_table_info(?) ORDER BY pk = 0, pk, cid',
  );
  return names.map((name) => {
    const columns = columnsOf.all(name);
    const keys = columns.filter(({ pk }) => pk > 0).length;
    if (keys === 0) throw new Error(`The table ${name} has no key.`);
    // What may not be written over has been refused where it was tried.
    return { name, columns: columns.map((each) => [each.name] as const), keys, replaces: true };
  });
}
