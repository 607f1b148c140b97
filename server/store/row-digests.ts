import { createHash } from 'node:crypto';
import type { Database } from 'better-sqlite3';
import { type TastingId, tastingId } from '../../core/ids.ts';
import type { StoredPart } from '../../shared/wire/http.ts';

/** The tables whose rows carry a digest, by their keys. Events have a chain of their own, and notes are sealed. */
const tables = {
  tastings: ['tasting'],
  documents: ['tasting', 'name'],
  surveys: ['tasting', 'respondent'],
  keys: ['hash'],
} as const;
type Table = keyof typeof tables;

const partIn: Record<Table, StoredPart> = {
  tastings: 'plan',
  documents: 'pour-run',
  surveys: 'survey',
  keys: 'links',
};

/** Each stored row with a digest of itself, so that one which a disk has changed and that still reads is told. */
export interface RowDigests {
  /** To be called inside the write that made or changed this row. */
  keep(table: Table, ...key: readonly string[]): void;
  /** Reads every row, and answers with what of which evening is not as it was written. */
  check(): ReadonlyMap<TastingId, ReadonlySet<StoredPart>>;
  /** As it was found by the last check; a plan that was written since is as good as new. */
  readonly altered: ReadonlyMap<TastingId, ReadonlySet<StoredPart>>;
}

type Row = Readonly<Record<string, string | number | null>>;

export function rowDigests(db: Database): RowDigests {
  const altered = new Map<TastingId, Set<StoredPart>>();
  const statements = (table: Table) => {
    const where = tables[table].map((column) => `${column} = ?`).join(' AND ');
    return {
      find: db.prepare<string[], Row>(`SELECT * FROM ${table} WHERE ${where}`),
      put: db.prepare<string[]>(`UPDATE ${table} SET digest = ? WHERE ${where}`),
    };
  };
  const of = {
    tastings: statements('tastings'),
    documents: statements('documents'),
    surveys: statements('surveys'),
    keys: statements('keys'),
  };
  const look = (table: Table): void => {
    // What lies on a damaged page cannot be compared; that is told by the check of the file.
    try {
      for (const row of db.prepare<[], Row>(`SELECT * FROM ${table}`).iterate()) {
        if (digestOf(row) === row.digest) continue;
        const tasting = tastingId(String(row.tasting));
        const part = row.name === 'kits' ? 'kits' : partIn[table];
        altered.set(tasting, (altered.get(tasting) ?? new Set()).add(part));
      }
    } catch {
      return;
    }
  };
  return {
    altered,
    keep(table, ...key) {
      const { find, put } = of[table];
      const row = find.get(...key);
      if (row === undefined) return;
      put.run(digestOf(row), ...key);
      if (table === 'tastings') altered.get(tastingId(String(row.tasting)))?.delete('plan');
    },
    check() {
      altered.clear();
      for (const table of Object.keys(tables) as Table[]) look(table);
      return altered;
    },
  };
}

/**
 * SHA-256, of which 128 bits are kept, over what stands in the columns in the order of their names. A column without a value
 * does not count, so that one which is added later changes no digest.
 */
function digestOf(row: Row): string {
  const said = Object.entries(row)
    .filter(([column, value]) => column !== 'digest' && value !== null)
    .sort(([one], [other]) => (one < other ? -1 : 1));
  return createHash('sha256').update(JSON.stringify(said)).digest('hex').slice(0, 32);
}
