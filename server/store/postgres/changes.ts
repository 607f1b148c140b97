import type { Database } from 'better-sqlite3';
import { type MirroredTable, mirroredTables } from './tables.ts';

export type Value = string | number | Buffer | null;
export type Row = readonly Value[];

/** What a write makes of one row. */
export type RowChange =
  | { readonly table: MirroredTable; readonly kind: 'insert' | 'put'; readonly row: Row }
  | { readonly table: MirroredTable; readonly kind: 'delete'; readonly row: Row };

/** Sees every row that a write changes in the copy of an evening that lies in memory. */
export interface Changes {
  /** Runs these writes one after another, each whole or not at all, and takes all of them back. */
  tried(writes: readonly (() => void)[]): readonly Tried[];
  /** Puts into the copy what is committed elsewhere. */
  apply(changes: readonly RowChange[]): void;
}
type Tried = { readonly changes: readonly RowChange[] } | { readonly failed: unknown };

const keyOf = ({ table, row }: RowChange): string =>
  JSON.stringify([table.name, ...row.slice(0, table.keys)]);

export function changesIn(db: Database): Changes {
  let seen: RowChange[] | undefined;
  for (const table of mirroredTables) watch(db, table, (change) => void seen?.push(change));

  const applying = new Map(mirroredTables.map((table) => [table.name, statements(db, table)]));
  const apply = db.transaction((changes: readonly RowChange[]) => {
    // An evening goes as a whole, and its first row has to be there before the others.
    for (const change of changes) {
      const to = applying.get(change.table.name);
      if (change.kind === 'delete') to?.remove.run(...change.row.slice(0, change.table.keys));
      else to?.put.run(...change.row);
    }
  });
  return {
    tried(writes) {
      const all: Tried[] = [];
      db.exec('BEGIN');
      try {
        for (const write of writes) {
          seen = [];
          db.exec('SAVEPOINT one');
          try {
            write();
            all.push({ changes: merged(seen) });
          } catch (error) {
            db.exec('ROLLBACK TO one');
            all.push({ failed: error });
          }
          db.exec('RELEASE one');
        }
        return all;
      } finally {
        seen = undefined;
        db.exec('ROLLBACK');
      }
    },
    apply,
  };
}

/** Each row once, as it is in the end. */
function merged(changes: readonly RowChange[]): RowChange[] {
  const last = new Map<string, RowChange>();
  for (const change of changes) {
    const key = keyOf(change);
    const before = last.get(key);
    last.delete(key);
    const fresh = before?.kind === 'insert';
    if (change.kind !== 'delete' && fresh) last.set(key, { ...change, kind: 'insert' });
    // What was there before the write and comes again takes its place.
    else if (change.kind === 'insert' && before !== undefined) last.set(key, { ...change, kind: 'put' });
    else last.set(key, change);
  }
  return [...last.values()];
}

function statements(db: Database, { name, columns, keys }: MirroredTable) {
  const names = columns.map(([column]) => column);
  const rest = names.slice(keys);
  const put = `INSERT INTO ${name} (${names.join(', ')}) VALUES (${names.map(() => '?').join(', ')})
    ON CONFLICT (${names.slice(0, keys).join(', ')}) DO UPDATE SET ${rest.map((each) => `${each} = excluded.${each}`).join(', ')}`;
  const where = names.slice(0, keys).map((each) => `${each} = ?`);
  return {
    put: db.prepare<Value[]>(put),
    remove: db.prepare<Value[]>(`DELETE FROM ${name} WHERE ${where.join(' AND ')}`),
  };
}

function watch(db: Database, table: MirroredTable, tell: (change: RowChange) => void): void {
  const { name, columns } = table;
  const kinds = [
    ['INSERT', table.replaces ? 'put' : 'insert', 'NEW'],
    ['UPDATE', 'put', 'NEW'],
    ['DELETE', 'delete', 'OLD'],
  ] as const;
  for (const [event, kind, which] of kinds) {
    const told = `changed_${name}_${event.toLowerCase()}`;
    db.function(told, { varargs: true }, (...row: Value[]) => {
      tell({ table, kind, row });
      return null;
    });
    const row = columns.map(([column]) => `${which}.${column}`).join(', ');
    db.exec(
      `CREATE TEMP TRIGGER watch_${name}_${event} AFTER ${event} ON main.${name} BEGIN SELECT ${told}(${row}); END`,
    );
  }
}
