import type { Database } from 'better-sqlite3';
import { pourId, type SeatId, seatId, type TastingId } from '../../core/ids.ts';
import { epochMs } from '../../core/units.ts';
import type { NoteField, NoteValue } from '../../shared/notes/entry.ts';
import type { Ack, NoteAck } from '../../shared/wire/protocol.ts';
import type { Notebooks, PermittedPage, StoredEntry } from './store.ts';
import { cutLog, type Writer } from './writer.ts';

interface Row {
  readonly seat: string;
  readonly pour: string;
  readonly field: string;
  readonly value: string;
  readonly sealed_value: string | null;
  readonly revision: number;
  readonly saved_at: number;
}

interface SharingRow {
  readonly seat: string;
  readonly pour: string;
  readonly sharing: string;
}

export function notebooks(db: Database, writer: Writer): Notebooks {
  const ofSeat = db.prepare<[string, string], Row>('SELECT * FROM notes WHERE tasting = ? AND seat = ?');
  const one = db.prepare<[string, string, string, string], Row>(
    'SELECT * FROM notes WHERE tasting = ? AND seat = ? AND pour = ? AND field = ?',
  );
  const ofSeatShared = db.prepare<[string, string], SharingRow>(
    'SELECT seat, pour, sharing FROM shares WHERE tasting = ? AND seat = ? ORDER BY pour',
  );
  const ofPourShared = db.prepare<[string, string], SharingRow>(
    'SELECT seat, pour, sharing FROM shares WHERE tasting = ? AND pour = ? ORDER BY seat',
  );
  const page = db.prepare<[string, string, string], Row>(
    'SELECT * FROM notes WHERE tasting = ? AND seat = ? AND pour = ?',
  );
  const upsert = db.prepare<[string, string, string, string, string, string | null, number, number]>(
    'INSERT OR REPLACE INTO notes (tasting, seat, pour, field, value, sealed_value, revision, saved_at)' +
      ' VALUES (?, ?, ?, ?, ?, ?, ?, ?)',
  );
  const setShare = db.prepare<[string, string, string, string]>(
    'INSERT OR REPLACE INTO shares (tasting, seat, pour, sharing) VALUES (?, ?, ?, ?)',
  );
  const dropShare = db.prepare<[string, string, string]>(
    'DELETE FROM shares WHERE tasting = ? AND seat = ? AND pour = ?',
  );
  const answer = db.prepare<[string, string, string, string]>('INSERT INTO answers VALUES (?, ?, ?, ?)');
  const answered = db
    .prepare<[string, string, string], string>(
      'SELECT answer FROM answers WHERE tasting = ? AND scope = ? AND command = ?',
    )
    .pluck();

  const forgotten = [
    'notes WHERE tasting = ? AND seat',
    'shares WHERE tasting = ? AND seat',
    'keys WHERE tasting = ? AND seat',
    'answers WHERE tasting = ? AND scope',
  ].map((of) => db.prepare<[string, string]>(`DELETE FROM ${of} = ?`));

  const sharings = (tasting: TastingId, seat: SeatId) =>
    ofSeatShared.all(tasting, seat).flatMap(({ pour, sharing }) => {
      const kept = permittedOf(sharing);
      return kept === undefined ? [] : [{ pour: pourId(pour), sharing: kept }];
    });

  return {
    read: (tasting, seat) => ({
      entries: ofSeat.all(tasting, seat).map(fromRow),
      sharings: sharings(tasting, seat),
    }),
    sharings,
    find(tasting, seat, pour, field) {
      const row = one.get(tasting, seat, pour, field);
      return row && fromRow(row);
    },
    readPermitted: (tasting, pours) =>
      pours.flatMap((pour) =>
        ofPourShared.all(tasting, pour).flatMap(({ seat, sharing }): PermittedPage[] => {
          const kept = permittedOf(sharing);
          const entries = page.all(tasting, seat, pour).map(fromRow);
          return kept === undefined ? [] : [{ seat: seatId(seat), pour, sharing: kept, entries }];
        }),
      ),
    save: ({ tasting, seat, entry, answered: said }) =>
      writer.write(() => {
        upsert.run(...toRow(tasting, seat, entry));
        answer.run(tasting, seat, said.command, JSON.stringify(said.ack));
      }),
    share: ({ tasting, seat, pour, sharing, answered: said }) =>
      writer.write(() => {
        if (sharing === 'private') dropShare.run(tasting, seat, pour);
        else setShare.run(tasting, seat, pour, sharing);
        answer.run(tasting, seat, said.command, JSON.stringify(said.ack));
      }),
    answerTo(tasting, seat, command) {
      const found = answered.get(tasting, seat, command);
      return found === undefined ? undefined : (JSON.parse(found) as NoteAck | Ack);
    },
    async forget(tasting, seat) {
      await writer.write(() => {
        for (const removal of forgotten) removal.run(tasting, seat);
      });
      cutLog(db);
    },
  };
}

/** What is neither of the two permissions is no permission. */
const permittedOf = (sharing: string): PermittedPage['sharing'] | undefined =>
  sharing === 'shared' || sharing === 'counted' ? sharing : undefined;

const toRow = (tasting: TastingId, seat: SeatId, entry: StoredEntry) =>
  [
    tasting,
    seat,
    entry.pour,
    entry.field,
    JSON.stringify(entry.value),
    entry.sealedValue === undefined ? null : JSON.stringify(entry.sealedValue),
    entry.revision,
    entry.savedAt,
  ] as const;

const fromRow = (row: Row): StoredEntry => ({
  pour: pourId(row.pour),
  field: row.field as NoteField,
  value: JSON.parse(row.value) as NoteValue,
  ...(row.sealed_value === null ? {} : { sealedValue: JSON.parse(row.sealed_value) as NoteValue }),
  revision: row.revision,
  savedAt: epochMs(row.saved_at),
});
