import type { Database } from 'better-sqlite3';
import type { SeatId, TastingId } from '../../core/ids.ts';
import { digestOf } from './row-digests.ts';

/** A row of what guests wrote and chose, sealed already. */
export interface SealedRow {
  readonly tasting: TastingId;
  readonly notebook: SeatId;
  readonly pour: string;
  readonly field: string;
  readonly value: Buffer;
  readonly sealed_value: Buffer | null;
  readonly revision: number;
  readonly saved_at: number;
}

/** Consents and the figures of a recap are always the first of their kind: when they were given is nobody's business. */
export const undated = { sealed_value: null, revision: 1, saved_at: 0 } as const;

/** Writes a row in the place of one with the same key, inside a write of somebody else's. */
export function puttingSealed(db: Database): (row: SealedRow) => void {
  // By place: to find each value by its name costs more than to write it.
  const upsert = db.prepare<[...(string | Buffer | null | number)[]]>(
    'INSERT OR REPLACE INTO sealed_notes' +
      ' (tasting, notebook, pour, field, value, sealed_value, revision, saved_at, digest)' +
      ' VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)',
  );
  return (row) => {
    const { tasting, notebook, pour, field, value, sealed_value, revision, saved_at } = row;
    const digest = digestOf({ tasting, notebook, pour, field, value, sealed_value, revision, saved_at });
    upsert.run(tasting, notebook, pour, field, value, sealed_value, revision, saved_at, digest);
  };
}
