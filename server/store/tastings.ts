import type { Database } from 'better-sqlite3';
import { type TastingId, tastingId } from '../../core/ids.ts';
import type { TastingTrouble } from '../../shared/wire/http.ts';
import { SetAside } from './set-aside.ts';
import { StoreFailure, type TastingShelf } from './store.ts';
import type { Summaries } from './summaries.ts';
import { fromRow, orThrow, type Row, unreadable } from './tasting-row.ts';
import { cutLog, type Writer } from './writer.ts';

interface Listed {
  readonly summaries: Summaries;
  readonly troubles: ReadonlyMap<TastingId, TastingTrouble>;
}

/** @param forget to be called before a removal; what it answers with, once the removal is on disk */
export function tastingShelf(
  db: Database,
  writer: Writer,
  { summaries, troubles }: Listed,
  forget: (tasting: TastingId) => () => void,
): TastingShelf {
  const insert = db.prepare<[string, string, string, number, number]>(
    'INSERT INTO tastings VALUES (?, ?, ?, ?, ?)',
  );
  const byId = db.prepare<[string], Row>('SELECT * FROM tastings WHERE tasting = ?');
  const known = db.prepare<[string], number>('SELECT 1 FROM tastings WHERE tasting = ?').pluck();
  const byCode = db.prepare<[string], Row>('SELECT * FROM tastings WHERE code = ?');
  const ids = db.prepare<[], string>('SELECT tasting FROM tastings').pluck();
  // A limit below 0 is none.
  const newest = db.prepare<[number], Row>(
    'SELECT * FROM tastings ORDER BY created_at DESC, tasting LIMIT ?',
  );
  const update = db.prepare<[string, string, number]>(
    'UPDATE tastings SET plan = ?, revision = revision + 1 WHERE tasting = ? AND revision = ?',
  );
  const remove = db.prepare<[string]>('DELETE FROM tastings WHERE tasting = ?');
  const counts = tablesOf(db).map((table) =>
    db.prepare<[string], number>(`SELECT count(*) FROM ${table} WHERE tasting = ?`).pluck(),
  );

  return {
    create: (row) =>
      writer.write(() => {
        insert.run(row.tasting, row.code, JSON.stringify(row.plan), row.revision, row.createdAt);
        summaries.add(row);
      }),
    has: (tasting) => known.get(tasting) !== undefined,
    find: (tasting) => orThrow(byId.get(tasting)),
    findByCode: (code) => orThrow(byCode.get(code)),
    list: (most = -1) =>
      newest.all(most).flatMap((row) => {
        const read = fromRow(row);
        return read instanceof SetAside ? [] : [read];
      }),
    ids: () => ids.all().map(tastingId),
    summary: summaries.find,
    page: summaries.page,
    troubles: () => troubles,
    unreadable: () =>
      newest.all(-1).flatMap((row) => {
        const read = fromRow(row);
        return read instanceof SetAside ? [unreadable(row, read)] : [];
      }),
    savePlan: (tasting, plan, base) =>
      writer.write(() => {
        if (update.run(JSON.stringify(plan), tasting, base).changes !== 1) return undefined;
        summaries.planned(tasting, plan);
        return base + 1;
      }),
    async remove(tasting) {
      const forgotten = forget(tasting);
      await writer.write(() => {
        remove.run(tasting);
      });
      forgotten();
      cutLog(db);
      if (counts.some((count) => count.get(tasting) !== 0))
        throw new StoreFailure('Something of a deleted tasting is still in the store.');
    },
  };
}

/** Every table that keeps something of a tasting, also one that is added later. */
const tablesOf = (db: Database): string[] =>
  db
    .prepare<[], string>(
      "SELECT m.name FROM sqlite_schema m JOIN pragma_table_info(m.name) c WHERE m.type = 'table' AND c.name = 'tasting'",
    )
    .pluck()
    .all();
