import type { Database } from 'better-sqlite3';
import { seatId, tastingId } from '../../core/ids.ts';
import { epochMs } from '../../core/units.ts';
import type { KeyRing, KeyRole, KeyRow } from './store.ts';
import type { Writer } from './writer.ts';

interface Row {
  readonly hash: string;
  readonly tasting: string;
  readonly role: string;
  readonly seat: string | null;
  readonly expires_at: number | null;
}

export interface SqliteKeyRing extends KeyRing {
  /** For a write that is part of another one's commit. */
  readonly addNow: (key: KeyRow) => void;
}

export function keyRing(db: Database, writer: Writer): SqliteKeyRing {
  const insert = db.prepare<[string, string, string, string | null, number | null]>(
    'INSERT INTO keys VALUES (?, ?, ?, ?, ?)',
  );
  const byHash = db.prepare<[string], Row>('SELECT * FROM keys WHERE hash = ?');
  const revoke = db.prepare<[string, string, string | null, string]>(
    'DELETE FROM keys WHERE tasting = ? AND role = ? AND seat IS ? AND hash <> ?',
  );
  const addNow = (key: KeyRow): void => {
    insert.run(key.hash, key.tasting, key.role, seatOf(key), key.expiresAt);
  };
  return {
    addNow,
    add: (key) => writer.write(() => addNow(key)),
    find(hash) {
      const row = byHash.get(hash);
      return row && fromRow(row);
    },
    revoke: (tasting, which, spared = '') =>
      writer.write(() => {
        revoke.run(tasting, which.role, seatOf(which), spared);
      }),
  };
}

const seatOf = (key: KeyRole): string | null => (key.role === 'seat' ? key.seat : null);

function fromRow(row: Row): KeyRow | undefined {
  const common = {
    hash: row.hash,
    tasting: tastingId(row.tasting),
    expiresAt: row.expires_at === null ? null : epochMs(row.expires_at),
  };
  if (row.role === 'seat' && row.seat !== null) return { ...common, role: 'seat', seat: seatId(row.seat) };
  if (row.role === 'host' || row.role === 'screen') return { ...common, role: row.role };
  return undefined;
}
