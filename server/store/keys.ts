import type { Database } from 'better-sqlite3';
import { seatId, tastingId } from '../../core/ids.ts';
import { epochMs } from '../../core/units.ts';
import { cameBy, deviceId } from '../../shared/wire/devices.ts';
import type { RowDigests } from './row-digests.ts';
import type { KeyRing, KeyRole, KeyRow, SeatDevice } from './store.ts';
import type { Writer } from './writer.ts';

export interface StoredKey {
  readonly hash: string;
  readonly tasting: string;
  readonly role: string;
  readonly seat: string | null;
  readonly expires_at: number | null;
  readonly device: string | null;
  readonly came: string | null;
  readonly came_at: number | null;
  readonly opens: number | null;
  readonly own: number | null;
}

export interface SqliteKeyRing extends KeyRing {
  /** For a write that is part of another one's commit. */
  readonly addNow: (key: KeyRow) => void;
}

export function keyRing(db: Database, writer: Writer, digests: RowDigests): SqliteKeyRing {
  const insert = db.prepare<(string | number | null)[]>(
    'INSERT INTO keys (hash, tasting, role, seat, expires_at, device, came, came_at, opens, own)' +
      ' VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)',
  );
  const byHash = db.prepare<[string], StoredKey>('SELECT * FROM keys WHERE hash = ?');
  const revoke = db.prepare<[string, string, string | null, string]>(
    'DELETE FROM keys WHERE tasting = ? AND role = ? AND seat IS ? AND hash <> ?',
  );
  const addNow = (key: KeyRow): void => {
    const { device } = key;
    const came =
      device === undefined
        ? [null, null, null, null, null]
        : [device.id, device.came, device.at, Number(device.opens), Number(device.own)];
    insert.run(key.hash, key.tasting, key.role, seatOf(key), key.expiresAt, ...came);
    digests.keep('keys', key.hash);
  };
  return {
    addNow,
    add: (key) => writer.write(key.tasting, () => addNow(key)),
    find(hash) {
      const row = byHash.get(hash);
      return row && keyFromRow(row);
    },
    revoke: (tasting, which, spared = '') =>
      writer.write(tasting, () => {
        revoke.run(tasting, which.role, seatOf(which), spared);
      }),
  };
}

const seatOf = (key: KeyRole): string | null => (key.role === 'seat' ? key.seat : null);

export function keyFromRow(row: StoredKey): KeyRow | undefined {
  const common = {
    hash: row.hash,
    tasting: tastingId(row.tasting),
    expiresAt: row.expires_at === null ? null : epochMs(row.expires_at),
  };
  if (row.role === 'seat' && row.seat !== null) {
    return { ...common, role: 'seat', seat: seatId(row.seat), ...deviceOf(row) };
  }
  if (row.role === 'host' || row.role === 'helper' || row.role === 'screen')
    return { ...common, role: row.role };
  return undefined;
}

function deviceOf({ device, came, came_at, opens, own }: StoredKey): { readonly device?: SeatDevice } {
  const by = cameBy.find((each) => each === came);
  if (device === null || by === undefined) return {};
  return {
    device: { id: deviceId(device), came: by, at: epochMs(came_at ?? 0), opens: opens === 1, own: own === 1 },
  };
}
