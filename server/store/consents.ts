import type { Database } from 'better-sqlite3';
import { type PourId, pourId, type SeatId, seatId, type TastingId, tastingId } from '../../core/ids.ts';
import { keptConsentsSchema } from '../../shared/wire/notebook.ts';
import { type KeptConsents, withConsents } from '../../shared/wire/permits.ts';
import { type Forgotten, forgetAgain } from './forgettings.ts';
import { puttingSealed, undated } from './sealed-rows.ts';
import type { Seals } from './seals/seals.ts';
import type { StoredConsents } from './store.ts';
import { cutLog } from './writer.ts';

/** Among the fields of a page, under a name that no field of a note has: it is sealed and goes with the notebook. */
const field = 'consents';
/** Every box is as long as any other, so that the file does not tell who gave what. */
const length = 320;

interface Row {
  readonly notebook: string;
  readonly pour: string;
  readonly value: Uint8Array;
}

/** What guests have answered about their pages. */
export interface ConsentShelf {
  of(tasting: TastingId, seat: SeatId): StoredConsents[];
  /** Seat by seat. */
  ofAll(tasting: TastingId): (StoredConsents & { readonly seat: SeatId })[];
  /** Inside a write of somebody else's. */
  giveNow(tasting: TastingId, seat: SeatId, pour: PourId, given: KeptConsents): void;
}

export function consentShelf(db: Database, seals: Seals): ConsentShelf {
  const ofSeat = db.prepare<[string, string, string], Row>(
    'SELECT notebook, pour, value FROM sealed_notes WHERE tasting = ? AND notebook = ? AND field = ? ORDER BY pour',
  );
  const ofTasting = db.prepare<[string, string], Row>(
    'SELECT notebook, pour, value FROM sealed_notes WHERE tasting = ? AND field = ? ORDER BY notebook, pour',
  );
  const ofPage = db.prepare<[string, string, string, string], Row>(
    'SELECT notebook, pour, value FROM sealed_notes WHERE tasting = ? AND notebook = ? AND pour = ? AND field = ?',
  );
  const put = putting(db, seals);
  const read = (tasting: TastingId, { notebook, pour, value }: Row): StoredConsents[] => {
    const at = { tasting, notebook: seatId(notebook), pour: pourId(pour), field, column: 'value' } as const;
    const consents = consentsIn(seals.open(at, value));
    return consents === undefined ? [] : [{ pour: at.pour, consents }];
  };
  return {
    of: (tasting, seat) => ofSeat.all(tasting, seat, field).flatMap((row) => read(tasting, row)),
    ofAll: (tasting) =>
      ofTasting
        .all(tasting, field)
        .flatMap((row) => read(tasting, row).map((each) => ({ ...each, seat: seatId(row.notebook) }))),
    giveNow(tasting, seat, pour, given) {
      const row = ofPage.get(tasting, seat, pour, field);
      const [kept] = row === undefined ? [] : read(tasting, row);
      put(tasting, seat, pour, withConsents(kept?.consents ?? {}, given));
    },
  };
}

function putting(db: Database, seals: Seals) {
  const put = puttingSealed(db);
  return (tasting: TastingId, seat: SeatId, pour: PourId, consents: KeptConsents): void => {
    const at = { tasting, notebook: seat, pour, field } as const;
    const value = seals.seal({ ...at, column: 'value' }, JSON.stringify(consents).padEnd(length));
    put({ ...at, ...undated, value });
  };
}

/** What cannot be read was never permitted. */
function consentsIn(text: string | undefined): KeptConsents | undefined {
  if (text === undefined) return undefined;
  try {
    return keptConsentsSchema.safeParse(JSON.parse(text)).data;
  } catch {
    return undefined;
  }
}

/**
 * Seals what an earlier release kept in plain words of who permits what. The plain table goes last: whatever breaks this
 * off, it is done again.
 */
export function sealPlainShares(db: Database, seals: Seals, forgotten: readonly Forgotten[]): void {
  const plain = db
    .prepare("SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = 'plain_shares'")
    .get();
  if (plain === undefined) return;
  // It may be an old backup.
  forgetAgain(db, forgotten);
  const rows = db
    .prepare<[], Record<'tasting' | 'seat' | 'pour' | 'consents', string>>('SELECT * FROM plain_shares')
    .all();
  const put = putting(db, seals);
  db.transaction(() => {
    for (const { tasting, seat, pour, consents } of rows) {
      const kept = consentsIn(consents);
      if (kept !== undefined) put(tastingId(tasting), seatId(seat), pourId(pour), kept);
    }
    db.exec('DELETE FROM plain_shares');
  })();
  db.exec('DROP TABLE plain_shares');
  cutLog(db);
}
