import type { Database } from 'better-sqlite3';
import { type EpochMs, epochMs } from '../../core/units.ts';
import { keyFromRow, type SqliteKeyRing, type StoredKey } from './keys.ts';
import type { SqliteNotebooks } from './notebooks.ts';
import { type DigestedRow, digestOf, isAsWritten, type RowDigests } from './row-digests.ts';
import type { Seals } from './seals/seals.ts';
import type { DeviceShelf } from './store.ts';
import type { Writer } from './writer.ts';

type WordsRow = DigestedRow & {
  readonly salt: Buffer;
  readonly hash: Buffer;
  readonly wrong: string;
};

export function deviceShelf(
  db: Database,
  writer: Writer,
  {
    keys,
    notebooks,
    seals,
    digests,
  }: { keys: SqliteKeyRing; notebooks: SqliteNotebooks; seals: Seals; digests: RowDigests },
): DeviceShelf {
  const ofSeat = db.prepare<[string, string, number], StoredKey>(
    "SELECT * FROM keys WHERE tasting = ? AND role = 'seat' AND seat = ?" +
      ' AND (expires_at IS NULL OR expires_at > ?) ORDER BY came_at, hash',
  );
  const remove = db.prepare<[string]>('DELETE FROM keys WHERE hash = ?');
  const open = db.prepare<[string]>('UPDATE keys SET opens = 1, expires_at = NULL WHERE hash = ?');
  const wordsOf = db.prepare<[string, string], WordsRow>(
    'SELECT * FROM seat_words WHERE tasting = ? AND seat = ?',
  );
  const setWords = db.prepare<[string, string, Buffer, Buffer, string, string]>(
    'INSERT OR REPLACE INTO seat_words (tasting, seat, salt, hash, wrong, digest) VALUES (?, ?, ?, ?, ?, ?)',
  );
  return {
    pepper: seals.master.pepper,
    of: (tasting, seat, now) =>
      ofSeat.all(tasting, seat, now).flatMap((row) => {
        const key = keyFromRow(row);
        return key?.role === 'seat' ? [key] : [];
      }),
    exchange: (link, key) =>
      writer.write(key.tasting, () => {
        if (remove.run(link).changes === 0) return false;
        keys.addNow(key);
        return true;
      }),
    end: (tasting, hash) =>
      writer.write(tasting, () => {
        remove.run(hash);
      }),
    async letIn({ tasting, seat, hash, aside, entries }) {
      await writer.write(tasting, () => {
        for (const entry of entries) notebooks.putNow(tasting, seat, entry);
        notebooks.dropNow(tasting, aside);
        open.run(hash);
        digests.keep('keys', hash);
      });
      await seals.destroy(tasting, aside);
    },
    words(tasting, seat) {
      const row = wordsOf.get(tasting, seat);
      // No word fits them, and nobody is to type one after the other in vain.
      if (row === undefined || !isAsWritten(row)) return undefined;
      return { salt: row.salt, hash: row.hash, wrong: (JSON.parse(row.wrong) as number[]).map(epochMs) };
    },
    keepWords: (tasting, seat, words) =>
      writer.write(tasting, () => {
        const { salt, hash } = words;
        const wrong = JSON.stringify(words.wrong satisfies readonly EpochMs[]);
        const digest = digestOf({ tasting, seat, salt, hash, wrong });
        setWords.run(tasting, seat, salt, hash, wrong, digest);
      }),
  };
}
