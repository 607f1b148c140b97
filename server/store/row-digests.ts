import { hash } from 'node:crypto';
import type { Database } from 'better-sqlite3';
import { type TastingId, tastingId } from '../../core/ids.ts';
import type { StoredPart } from '../../shared/wire/http.ts';

/** The small tables whose rows carry a digest, by their keys. Events have a chain of their own. */
const tables = {
  tastings: ['tasting'],
  documents: ['tasting', 'name'],
  surveys: ['tasting', 'respondent'],
  keys: ['hash'],
} as const;
type Table = keyof typeof tables;
/** Whoever writes it keeps its digest too. */
const small = [...(Object.keys(tables) as Table[]), 'summaries'] as const;

/** Those that grow with every word are looked through one evening at a time. A seal is a digest too, but not of what stands beside it. */
const large = ['answers', 'sealed_notes', 'seat_words', 'photos'] as const;

const partIn: Record<(typeof small)[number] | (typeof large)[number], StoredPart> = {
  tastings: 'plan',
  documents: 'pour-run',
  surveys: 'survey',
  keys: 'links',
  summaries: 'list',
  answers: 'answers',
  sealed_notes: 'notes',
  seat_words: 'words',
  photos: 'photos',
};

/** Each stored row with a digest of itself, so that one which a disk has changed and that still reads is told. */
export interface RowDigests {
  /** To be called inside the write that made or changed this row. */
  keep(table: Table, ...key: readonly string[]): void;
  /** Reads every row of the small tables, and forgets what was found before. */
  check(): void;
  /** Reads every row of the large ones that belongs to this evening. */
  lookThrough(tasting: TastingId): void;
  tell(tasting: TastingId, part: StoredPart): void;
  /** What of which evening is not as it was written, as found by the last check; a plan that was written since is as good as new. */
  readonly altered: ReadonlyMap<TastingId, ReadonlySet<StoredPart>>;
}

export type DigestedRow = Readonly<Record<string, string | number | Uint8Array | null>>;
type Row = DigestedRow;

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
  const tell = (tasting: TastingId, part: StoredPart): void => {
    altered.set(tasting, (altered.get(tasting) ?? new Set()).add(part));
  };
  const look = (table: keyof typeof partIn, rows: () => Iterable<Row>): void => {
    // What lies on a damaged page cannot be compared; that is told by the check of the file.
    try {
      for (const row of rows())
        if (!isAsWritten(row))
          tell(tastingId(String(row.tasting)), row.name === 'kits' ? 'kits' : partIn[table]);
    } catch {
      return;
    }
  };
  const rowsIn = (table: string) => db.prepare<[], Row>(`SELECT * FROM ${table}`);
  const ofEvening = large.map((table) => ({
    table,
    rows: db.prepare<[string], Row>(`SELECT * FROM ${table} WHERE tasting = ?`),
  }));
  return {
    altered,
    tell,
    keep(table, ...key) {
      const { find, put } = of[table];
      const row = find.get(...key);
      if (row === undefined) return;
      put.run(digestOf(row), ...key);
      if (table === 'tastings') altered.get(tastingId(String(row.tasting)))?.delete('plan');
    },
    check() {
      altered.clear();
      for (const table of small) look(table, () => rowsIn(table).iterate());
    },
    lookThrough(tasting) {
      for (const { table, rows } of ofEvening) look(table, () => rows.iterate(tasting));
    },
  };
}

/** A row without a digest was written by a server of before, beside this one in a cluster: nothing can be said of it. */
export const isAsWritten = (row: DigestedRow): boolean => row.digest === null || digestOf(row) === row.digest;

/**
 * SHA-256, of which 128 bits are kept, over what stands in the columns in the order of their names. A column without a value
 * does not count, so that one which is added later changes no digest; bytes count in Base64.
 */
export function digestOf(row: DigestedRow): string {
  const said: [string, unknown][] = [];
  for (const column of Object.keys(row).sort()) {
    const value = row[column];
    if (column === 'digest' || value === null) continue;
    said.push([column, value instanceof Uint8Array ? Buffer.from(value).toString('base64') : value]);
  }
  return hash('sha256', JSON.stringify(said), 'hex').slice(0, 32);
}
