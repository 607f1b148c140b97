import type { Database } from 'better-sqlite3';
import { pourId, type SeatId, seatId, type TastingId } from '../../core/ids.ts';
import { epochMs } from '../../core/units.ts';
import type { NoteField } from '../../shared/notes/entry.ts';
import { permitsOf } from '../../shared/wire/permits.ts';
import type { CommandAnswer } from '../../shared/wire/protocol.ts';
import { answerRows } from './answers.ts';
import { consentShelf } from './consents.ts';
import type { Forgettings } from './forgettings.ts';
import { figuresNotebook } from './releases.ts';
import { puttingSealed } from './sealed-rows.ts';
import type { Seals } from './seals/seals.ts';
import type { Notebooks, PermittedPage, StoredConsents, StoredEntry } from './store.ts';
import { noteIn } from './stored-note.ts';
import type { Writer } from './writer.ts';

interface Row {
  readonly notebook: string;
  readonly pour: string;
  readonly field: string;
  readonly value: Uint8Array;
  readonly sealed_value: Uint8Array | null;
  readonly revision: number;
  readonly saved_at: number;
}

export interface SqliteNotebooks extends Notebooks {
  /** For writes that are part of another one's commit. */
  readonly putNow: (tasting: TastingId, notebook: SeatId, entry: StoredEntry) => void;
  readonly dropNow: (tasting: TastingId, notebook: SeatId) => void;
}

/** Notes are sealed before they come near the database, so that neither its file nor its log ever holds a word. */
export function notebooks(db: Database, writer: Writer, seals: Seals, gone: Forgettings): SqliteNotebooks {
  const ofNotebook = db.prepare<[string, string], Row>(
    'SELECT * FROM sealed_notes WHERE tasting = ? AND notebook = ?',
  );
  const one = db.prepare<[string, string, string, string], Row>(
    'SELECT * FROM sealed_notes WHERE tasting = ? AND notebook = ? AND pour = ? AND field = ?',
  );
  const page = db.prepare<[string, string, string], Row>(
    'SELECT * FROM sealed_notes WHERE tasting = ? AND notebook = ? AND pour = ?',
  );
  const put = puttingSealed(db);
  const answers = answerRows(db);
  const asides = db
    .prepare<[string, string, string], string>(
      'SELECT DISTINCT notebook FROM sealed_notes WHERE tasting = ? AND substr(notebook, 1, length(?) + 1) = ?',
    )
    .pluck();
  const dropNotes = db.prepare<[string, string]>(
    'DELETE FROM sealed_notes WHERE tasting = ? AND notebook = ?',
  );
  const ofSeat = ['keys', 'seat_words'].map((table) =>
    db.prepare<[string, string]>(`DELETE FROM ${table} WHERE tasting = ? AND seat = ?`),
  );

  const fromRow =
    (tasting: TastingId) =>
    (row: Row): StoredEntry[] => {
      const at = {
        tasting,
        notebook: seatId(row.notebook),
        pour: pourId(row.pour),
        field: row.field as NoteField,
      };
      const value = seals.open({ ...at, column: 'value' }, row.value);
      // Its key is gone, or the disk has lost it: there is nothing to read, and the rest of the notebook can be.
      if (value === undefined) return [];
      const sealed =
        row.sealed_value === null ? null : seals.open({ ...at, column: 'sealed_value' }, row.sealed_value);
      const note = sealed === undefined ? undefined : noteIn(row.field, value, sealed);
      if (note === undefined) return [];
      return [{ pour: at.pour, ...note, revision: row.revision, savedAt: epochMs(row.saved_at) }];
    };
  const putNow = (tasting: TastingId, notebook: SeatId, entry: StoredEntry): void => {
    const { pour, field, value, sealedValue, revision, savedAt } = entry;
    const at = { tasting, notebook, pour, field } as const;
    const sealed =
      sealedValue === undefined
        ? null
        : seals.seal({ ...at, column: 'sealed_value' }, JSON.stringify(sealedValue));
    const box = seals.seal({ ...at, column: 'value' }, JSON.stringify(value));
    put({ ...at, value: box, sealed_value: sealed, revision, saved_at: savedAt });
  };
  const dropNow = (tasting: TastingId, notebook: SeatId): void => {
    dropNotes.run(tasting, notebook);
    answers.dropNow(tasting, notebook);
  };

  const consents = consentShelf(db, seals);
  /** What is permitted of a page, and nothing else of it. */
  const permitted = (
    tasting: TastingId,
    seat: SeatId,
    { pour, consents: given }: StoredConsents,
  ): PermittedPage => {
    const permits = permitsOf(given);
    const entries = page
      .all(tasting, seat, pour)
      .filter(({ field }) => Object.hasOwn(permits, field))
      .flatMap(fromRow(tasting));
    return { seat, pour, consents: given, permits, entries };
  };

  return {
    putNow,
    dropNow,
    read: (tasting, seat) => ({
      entries: ofNotebook.all(tasting, seat).flatMap(fromRow(tasting)),
      consents: consents.of(tasting, seat),
    }),
    consents: consents.of,
    find(tasting, seat, pour, field) {
      const row = one.get(tasting, seat, pour, field);
      return row && fromRow(tasting)(row)[0];
    },
    readPermitted(tasting, pours, only) {
      const given =
        only === undefined
          ? consents.ofAll(tasting)
          : consents.of(tasting, only).map((each) => ({ ...each, seat: only }));
      return pours.flatMap((pour) =>
        given.flatMap((each) => (each.pour === pour ? permitted(tasting, each.seat, each) : [])),
      );
    },
    save: ({ tasting, seat, entry, answered: said }) =>
      writer.write(tasting, () => {
        putNow(tasting, seat, entry);
        answers.keepNow(tasting, seat, said.command, String(entry.revision));
      }),
    consent: ({ tasting, seat, pours, consents: given, answered: said }) =>
      writer.write(tasting, () => {
        for (const pour of pours) consents.giveNow(tasting, seat, pour, given);
        answers.keepNow(tasting, seat, said.command, JSON.stringify(said.answer));
      }),
    answerTo(tasting, seat, command) {
      const found = answers.find(tasting, seat, command);
      if (found === undefined) return undefined;
      const said: unknown = JSON.parse(found);
      return typeof said === 'number' ? { revision: said } : (said as CommandAnswer);
    },
    async forget(tasting, seat) {
      // [Q8] The figures of a recap may have this guest in them.
      const doomed = [seat, ...asides.all(tasting, seat, `${seat}+`).map(seatId), figuresNotebook];
      // First, so that a backup of before never brings back what was answered as gone.
      await gone.add({ tasting, seat });
      await writer.write(tasting, () => {
        for (const each of doomed) dropNow(tasting, each);
        for (const removal of ofSeat) removal.run(tasting, seat);
      });
      for (const each of doomed) await seals.destroy(tasting, each);
      await writer.cut();
    },
    async drop(tasting, aside) {
      await writer.write(tasting, () => dropNow(tasting, aside));
      await seals.destroy(tasting, aside);
    },
  };
}
