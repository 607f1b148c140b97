import { Buffer } from 'node:buffer';
import type { Value } from '../row-changes.ts';
import type { MirroredTable, RowChange } from './tables.ts';

/** A whole commit as one statement, and so one round trip: nothing of it happens unless the head is as expected. */
export interface CommitStatement {
  readonly text: string;
  readonly values: unknown[];
}

export interface ExpectedHead {
  readonly tasting: string;
  readonly owner: string;
  /** Counts owners. Checked apart from the version: who has lost a session and reads it again knows the version too. */
  readonly epoch: number;
  /** Counts commits. */
  readonly version: number;
  /** Names this commit, so that its outcome can be read when the answer was lost. */
  readonly batch: string;
}

/** @param head undefined epoch 0: the tasting is made by this very commit. The statement answers with one row where it was done. */
export function commitStatement(head: ExpectedHead, changes: readonly RowChange[]): CommitStatement {
  const values: unknown[] = [head.tasting, head.owner, head.epoch, head.version, head.batch];
  const isNew = head.epoch === 0;
  const first = isNew
    ? `INSERT INTO heads (tasting, owner, epoch, version, batch) VALUES ($1, $2, $3::bigint + 1, $4::bigint + 1, $5)
       ON CONFLICT DO NOTHING RETURNING tasting`
    : `UPDATE heads SET version = version + 1, batch = $5
       WHERE tasting = $1 AND owner = $2 AND epoch = $3 AND version = $4 RETURNING tasting`;
  const parts = [...grouped(changes)].map(([, group], index) => {
    const [one] = group;
    return one === undefined ? '' : `c${index} AS (${partOf(one, group, values)})`;
  });
  return {
    text: `WITH head AS (${first})${parts.map((part) => `, ${part}`).join('')} SELECT 1 FROM head`,
    values,
  };
}

function grouped(changes: readonly RowChange[]): Map<string, RowChange[]> {
  const groups = new Map<string, RowChange[]>();
  for (const change of changes) {
    const name = `${change.table.name} ${change.kind}`;
    groups.set(name, [...(groups.get(name) ?? []), change]);
  }
  return groups;
}

function partOf({ table, kind }: RowChange, group: readonly RowChange[], values: unknown[]): string {
  const columns = kind === 'delete' ? table.columns.slice(0, table.keys) : table.columns;
  const arrays = columns.map(([, type], at) => {
    values.push(group.map(({ row }) => wired(row[at] ?? null)));
    return `$${values.length}::${type}[]`;
  });
  const names = columns.map(([column]) => column);
  const rows = `unnest(${arrays.join(', ')}) AS d(${names.join(', ')}), head`;
  if (kind === 'delete') {
    const same = names.map((each) => `t.${each} = d.${each}`).join(' AND ');
    return `DELETE FROM ${table.name} t USING ${rows} WHERE ${same}`;
  }
  const insert = `INSERT INTO ${table.name} (${names.join(', ')}) SELECT ${names.map((each) => `d.${each}`).join(', ')} FROM ${rows}`;
  return kind === 'insert' ? insert : `${insert} ${onConflict(table)}`;
}

/** Never a row of another tasting, should one have the same name. */
function onConflict({ name, columns, keys }: MirroredTable): string {
  const names = columns.map(([column]) => column);
  const rest = names.slice(keys).map((each) => `${each} = excluded.${each}`);
  return `ON CONFLICT (${names.slice(0, keys).join(', ')}) DO UPDATE SET ${rest.join(', ')} WHERE ${name}.tasting = excluded.tasting`;
}

/** In an array the driver writes bytes itself only where they are a Buffer. */
const wired = (value: Value): Value => (value instanceof Uint8Array ? Buffer.from(value) : value);
