import type { KeptTable, RowChange as RowChangeOf } from '../row-changes.ts';

/** A table that a session's bundle is made of: the same columns stand in SQLite and in PostgreSQL. */
export interface MirroredTable extends KeptTable {
  /** With their types in PostgreSQL; the key first. */
  readonly columns: readonly (readonly [name: string, type: 'text' | 'bigint' | 'bytea'])[];
}
export type RowChange = RowChangeOf<MirroredTable>;

const text = 'text';
const bigint = 'bigint';
const bytea = 'bytea';

/**
 * All that is loaded when a session is claimed, each row of it with its tasting. Photos are not among them: they are large,
 * and asked for by their own names.
 */
export const mirroredTables: readonly MirroredTable[] = [
  {
    name: 'tastings',
    columns: [
      ['tasting', text],
      ['code', text],
      ['plan', text],
      ['revision', bigint],
      ['created_at', bigint],
      ['digest', text],
      ['house', text],
    ],
    keys: 1,
    replaces: false,
  },
  {
    name: 'summaries',
    columns: [
      ['tasting', text],
      ['created_at', bigint],
      ['code', text],
      ['title', text],
      ['starts_at', text],
      ['pours', bigint],
      ['guests', bigint],
      ['stage', text],
      ['finished_at', bigint],
      ['words', text],
      ['house', text],
      ['digest', text],
    ],
    keys: 1,
    replaces: false,
  },
  {
    name: 'events',
    columns: [
      ['tasting', text],
      ['seq', bigint],
      ['event', text],
      ['digest', text],
    ],
    keys: 2,
    replaces: false,
  },
  {
    name: 'answers',
    columns: [
      ['tasting', text],
      ['scope', text],
      ['command', text],
      ['answer', text],
      ['digest', text],
    ],
    keys: 3,
    replaces: false,
  },
  {
    name: 'documents',
    columns: [
      ['tasting', text],
      ['name', text],
      ['body', text],
      ['revision', bigint],
      ['digest', text],
    ],
    keys: 2,
    replaces: false,
  },
  {
    name: 'keys',
    columns: [
      ['hash', text],
      ['tasting', text],
      ['role', text],
      ['seat', text],
      ['expires_at', bigint],
      ['device', text],
      ['came', text],
      ['came_at', bigint],
      ['opens', bigint],
      ['own', bigint],
      ['digest', text],
    ],
    keys: 1,
    replaces: false,
  },
  {
    name: 'surveys',
    columns: [
      ['tasting', text],
      ['respondent', text],
      ['answers', text],
      ['digest', text],
    ],
    keys: 2,
    replaces: true,
  },
  {
    name: 'sealed_notes',
    columns: [
      ['tasting', text],
      ['notebook', text],
      ['pour', text],
      ['field', text],
      ['value', bytea],
      ['sealed_value', bytea],
      ['revision', bigint],
      ['saved_at', bigint],
      ['digest', text],
    ],
    keys: 4,
    replaces: true,
  },
  {
    name: 'seat_words',
    columns: [
      ['tasting', text],
      ['seat', text],
      ['salt', bytea],
      ['hash', bytea],
      ['wrong', text],
      ['digest', text],
    ],
    keys: 2,
    replaces: true,
  },
];

/** The keys of notebooks, wrapped by the server's own. They are no table of SQLite's. */
export const notebookKeys: MirroredTable = {
  name: 'notebook_keys',
  columns: [
    ['tasting', text],
    ['notebook', text],
    ['slot', bytea],
  ],
  keys: 2,
  replaces: true,
};
