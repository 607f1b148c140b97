import type { Database } from 'better-sqlite3';

/** A table whose rows are kept in a second place as well. */
export interface KeptTable {
  readonly name: string;
  /** The key first. */
  readonly columns: readonly (readonly [name: string, ...rest: unknown[]])[];
  /** How many of the columns are the key. */
  readonly keys: number;
  /** What lies there is written over by a row of the same key; else such a row is refused. */
  readonly replaces: boolean;
}

export type Value = string | number | Buffer | null;
export type Row = readonly Value[];

/** What a write makes of one row. */
export interface RowChange<Table extends KeptTable> {
  readonly table: Table;
  readonly kind: 'insert' | 'put' | 'delete';
  /** Whole, also where it is deleted. */
  readonly row: Row;
}

/** Sees every row that a write changes in a database in which nothing is committed. */
export interface Changes<Table extends KeptTable> {
  /** Runs these writes one after another, each whole or not at all, and takes all of them back. */
  tried(writes: readonly (() => void)[]): readonly Tried<Table>[];
}
type Tried<Table extends KeptTable> =
  | { readonly changes: readonly RowChange<Table>[] }
  | { readonly failed: unknown };

export function changesIn<Table extends KeptTable>(db: Database, tables: readonly Table[]): Changes<Table> {
  let seen: RowChange<Table>[] | undefined;
  for (const table of tables) watch(db, table, (change) => void seen?.push(change));
  const [begin, takeBack] = [db.prepare('BEGIN'), db.prepare('ROLLBACK')];
  const [beginOne, takeBackOne, endOne] = [
    db.prepare('SAVEPOINT one'),
    db.prepare('ROLLBACK TO one'),
    db.prepare('RELEASE one'),
  ];
  return {
    tried(writes) {
      const all: Tried<Table>[] = [];
      begin.run();
      try {
        for (const write of writes) {
          seen = [];
          beginOne.run();
          try {
            write();
            all.push({ changes: merged(seen) });
          } catch (error) {
            // A file that may not grow takes back what came before as well.
            if (!db.inTransaction) return writes.map(() => ({ failed: error }));
            takeBackOne.run();
            all.push({ failed: error });
          }
          endOne.run();
        }
        return all;
      } finally {
        seen = undefined;
        if (db.inTransaction) takeBack.run();
      }
    },
  };
}

/** Puts into a database, in one transaction, what was tried in another. */
export function applying(
  db: Database,
  tables: readonly KeptTable[],
): (changes: readonly { readonly table: string; readonly kind: string; readonly row: Row }[]) => void {
  const known = new Map(tables.map((table) => [table.name, { ...statements(db, table), keys: table.keys }]));
  return db.transaction((changes) => {
    // A row may come before the one that it hangs on.
    db.pragma('defer_foreign_keys = ON');
    for (const { table, kind, row } of changes) {
      const to = known.get(table);
      if (kind === 'delete') to?.remove.run(...row.slice(0, to.keys));
      else to?.put.run(...row);
    }
  }).immediate;
}

const keyOf = <Table extends KeptTable>({ table, row }: RowChange<Table>): string =>
  JSON.stringify([table.name, ...row.slice(0, table.keys)]);

/** Each row once, as it is in the end. */
function merged<Table extends KeptTable>(changes: readonly RowChange<Table>[]): RowChange<Table>[] {
  const last = new Map<string, RowChange<Table>>();
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

function statements(db: Database, { name, columns, keys }: KeptTable) {
  const names = columns.map(([column]) => column);
  const rest = names.slice(keys).map((each) => `${each} = excluded.${each}`);
  const put = `INSERT INTO ${name} (${names.join(', ')}) VALUES (${names.map(() => '?').join(', ')})
    ON CONFLICT (${names.slice(0, keys).join(', ')}) DO ${rest.length === 0 ? 'NOTHING' : `UPDATE SET ${rest.join(', ')}`}`;
  const where = names.slice(0, keys).map((each) => `${each} = ?`);
  return {
    put: db.prepare<Value[]>(put),
    remove: db.prepare<Value[]>(`DELETE FROM ${name} WHERE ${where.join(' AND ')}`),
  };
}

function watch<Table extends KeptTable>(
  db: Database,
  table: Table,
  tell: (change: RowChange<Table>) => void,
): void {
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
