import type { Database } from 'better-sqlite3';
import type { TastingId } from '../../core/ids.ts';
import { blankPlan } from '../../core/tasting.ts';
import { epochMs } from '../../core/units.ts';
import { orNothing, tastingsIn } from './readable.ts';
import { SetAside } from './set-aside.ts';
import { moves, type Summaries, summariesIn, summaryColumns } from './summaries.ts';
import { fromRow, houseIn, type Row, titleIn } from './tasting-row.ts';
import { isDamage } from './writer.ts';

/**
 * Writes the summaries of tastings that have none, as after an upgrade. Of what cannot be read it says what can be said:
 * a tasting is never missing from the list.
 */
function addMissing(db: Database, summaries: Summaries, among: readonly TastingId[]): void {
  const rowOf = db.prepare<[string], Row>('SELECT * FROM tastings WHERE tasting = ?');
  // Whatever else of a log cannot be read.
  const told = db.prepare<[string, string], { type: string; at: number; title: string }>(
    `SELECT json_extract(event, '$.type') AS type, json_extract(event, '$.at') AS at,
       json_extract(event, '$.title') AS title FROM events
     WHERE tasting = ? AND json_valid(event) AND json_extract(event, '$.type') IN (SELECT value FROM json_each(?))
     ORDER BY seq`,
  );

  const read = (tasting: TastingId) => {
    const row = orNothing(() => rowOf.get(tasting));
    const whole = row && fromRow(row);
    const plan = { ...blankPlan('spirit'), title: titleIn(row?.plan ?? '') };
    const createdAt = epochMs(row?.created_at ?? 0);
    const rest = {
      ...{ tasting, code: row?.code ?? '', plan, revision: row?.revision ?? 1, createdAt },
      ...houseIn(row),
    };
    return {
      row: whole === undefined || whole instanceof SetAside ? rest : whole,
      events: orNothing(() => told.all(tasting, JSON.stringify([...moves, 'TitleMended']))) ?? [],
    };
  };

  // Read before anything is written: a transaction that has met a damaged page commits nothing.
  const missing = among.filter((tasting) => summaries.find(tasting) === undefined);
  const rows = missing.map(read);
  db.transaction(() => {
    for (const { row, events } of rows) {
      summaries.add(row);
      summaries.happened(row.tasting, events);
    }
  })();
}

/**
 * The summaries, whole. Where the table lies on a damaged part of the disk they are made anew from what reads, beside the
 * file and for as long as the server runs; the next one does so again, until a backup is put in place.
 */
export function wholeSummaries(db: Database, onDamage: () => void): Summaries {
  let used = summariesIn(db);
  let mended = false;
  /** Since it was mended: what is only tried here leaves nothing in a table that is beside the file. */
  const written = new Set<TastingId>();
  const mend = (): void => {
    if (mended) return;
    mended = true;
    onDamage();
    // A table of this name in the temporary part is found before the one in the file.
    db.exec(`CREATE TEMP TABLE summaries (${summaryColumns})`);
    used = summariesIn(db);
    addMissing(db, used, tastingsIn(db));
  };
  const whole = <Result>(ask: () => Result): Result => {
    try {
      return ask();
    } catch (error) {
      if (!isDamage(error) || mended) throw error;
      // A write that meets the damage fails; the one that comes after it finds the new table.
      if (db.inTransaction) {
        queueMicrotask(mend);
        throw error;
      }
      mend();
      return ask();
    }
  };
  whole(() => addMissing(db, used, tastingsIn(db)));
  const changed = (tasting: TastingId, change: () => void): void => {
    if (mended) written.add(tasting);
    whole(change);
  };
  const asStored = (): void => {
    if (written.size === 0 || db.inTransaction) return;
    const stored = tastingsIn(db).filter((tasting) => written.has(tasting));
    for (const tasting of written) used.gone(tasting);
    addMissing(db, used, stored);
  };
  const read = <Result>(ask: () => Result): Result =>
    whole(() => {
      asStored();
      return ask();
    });
  return {
    add: (row) => changed(row.tasting, () => used.add(row)),
    planned: (tasting, plan) => changed(tasting, () => used.planned(tasting, plan)),
    happened: (tasting, events) => changed(tasting, () => used.happened(tasting, events)),
    find: (tasting) => read(() => used.find(tasting)),
    isOf: (tasting, house) => read(() => used.isOf(tasting, house)),
    page: (search) => read(() => used.page(search)),
    gone: (tasting) => changed(tasting, () => used.gone(tasting)),
  };
}
