import type { Database } from 'better-sqlite3';
import { type TastingId, tastingId } from '../../core/ids.ts';
import { planSchema } from '../../core/tasting.ts';
import { epochMs } from '../../core/units.ts';
import { SetAside } from './set-aside.ts';
import { StoreFailure, type TastingRow, type TastingShelf, type UnreadableTasting } from './store.ts';
import { planOfToday } from './upcasts.ts';
import { cutLog, type Writer } from './writer.ts';

interface Row {
  readonly tasting: string;
  readonly code: string;
  readonly plan: string;
  readonly revision: number;
  readonly created_at: number;
}

/** @param forget to be called before a removal; what it answers with, once the removal is on disk */
export function tastingShelf(
  db: Database,
  writer: Writer,
  forget: (tasting: TastingId) => () => void,
): TastingShelf {
  const insert = db.prepare<[string, string, string, number, number]>(
    'INSERT INTO tastings VALUES (?, ?, ?, ?, ?)',
  );
  const byId = db.prepare<[string], Row>('SELECT * FROM tastings WHERE tasting = ?');
  const known = db.prepare<[string], number>('SELECT 1 FROM tastings WHERE tasting = ?').pluck();
  const byCode = db.prepare<[string], Row>('SELECT * FROM tastings WHERE code = ?');
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
      }),
    has: (tasting) => known.get(tasting) !== undefined,
    find: (tasting) => orThrow(byId.get(tasting)),
    findByCode: (code) => orThrow(byCode.get(code)),
    list: (most = -1) =>
      newest.all(most).flatMap((row) => {
        const read = fromRow(row);
        return read instanceof SetAside ? [] : [read];
      }),
    unreadable: () =>
      newest.all(-1).flatMap((row) => {
        const read = fromRow(row);
        return read instanceof SetAside ? [unreadable(row, read)] : [];
      }),
    savePlan: (tasting, plan, base) =>
      writer.write(() =>
        update.run(JSON.stringify(plan), tasting, base).changes === 1 ? base + 1 : undefined,
      ),
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

function fromRow(row: Row): TastingRow | SetAside {
  const tasting = tastingId(row.tasting);
  try {
    return {
      tasting,
      code: row.code,
      plan: planSchema.parse(planOfToday(JSON.parse(row.plan))),
      revision: row.revision,
      createdAt: epochMs(row.created_at),
    };
  } catch (error) {
    return new SetAside(tasting, { kind: 'plan-unreadable', event: null }, { cause: error });
  }
}

function orThrow(row: Row | undefined): TastingRow | undefined {
  const read = row && fromRow(row);
  if (read instanceof SetAside) throw read;
  return read;
}

const unreadable = (row: Row, { tasting, trouble }: SetAside): UnreadableTasting => ({
  tasting,
  code: row.code,
  title: titleIn(row.plan),
  createdAt: epochMs(row.created_at),
  trouble,
});

/** The title, where it still stands in what is left of the plan. */
function titleIn(plan: string): string {
  const quoted = /"title":("(?:[^"\\]|\\.){0,200}")/.exec(plan)?.[1];
  try {
    return String(JSON.parse(quoted ?? '""'));
  } catch {
    return '';
  }
}
