import type { Database } from 'better-sqlite3';
import { type TastingId, tastingId } from '../../core/ids.ts';
import type { TastingTrouble } from '../../shared/wire/http.ts';
import { orNothing, tastingsIn } from './readable.ts';
import type { RowDigests } from './row-digests.ts';
import { SetAside } from './set-aside.ts';
import { StoreFailure, type TastingRow, type TastingShelf } from './store.ts';
import type { Summaries } from './summaries.ts';
import { fromRow, houseIn, orThrow, type Row, unreadable } from './tasting-row.ts';
import { isDamage, type Writer } from './writer.ts';

interface Listed {
  readonly summaries: Summaries;
  readonly digests: RowDigests;
  readonly troubles: ReadonlyMap<TastingId, TastingTrouble>;
}

/** @param forget to be called before a removal; what it answers with, once the removal is on disk */
export function tastingShelf(
  db: Database,
  writer: Writer,
  { summaries, digests, troubles }: Listed,
  forget: (tasting: TastingId) => Promise<() => Promise<void>>,
): TastingShelf {
  const insert = db.prepare<[string, string, string, number, number, string | null]>(
    'INSERT INTO tastings (tasting, code, plan, revision, created_at, house) VALUES (?, ?, ?, ?, ?, ?)',
  );
  const byId = db.prepare<[string], Row>('SELECT * FROM tastings WHERE tasting = ?');
  const known = db.prepare<[string], number>('SELECT 1 FROM tastings WHERE tasting = ?').pluck();
  // By the index alone, so that only the evening that is meant has to be readable.
  const byCode = db.prepare<[string], string>('SELECT tasting FROM tastings WHERE code = ?').pluck();
  const houseOf = db.prepare<[string], Pick<Row, 'house'>>('SELECT house FROM tastings WHERE tasting = ?');
  const newest = db.prepare<[], Row>('SELECT * FROM tastings ORDER BY created_at DESC, tasting');
  const newestOf = db.prepare<[string | null, number], Row>(
    'SELECT * FROM tastings WHERE house IS ? ORDER BY created_at DESC, tasting LIMIT ?',
  );
  const update = db.prepare<[string, string, number]>(
    'UPDATE tastings SET plan = ?, revision = revision + 1 WHERE tasting = ? AND revision = ?',
  );
  const remove = db.prepare<[string]>('DELETE FROM tastings WHERE tasting = ?');
  const counts = tablesOf(db).map((table) =>
    db.prepare<[string], number>(`SELECT count(*) FROM ${table} WHERE tasting = ?`).pluck(),
  );

  /** One by one where they cannot be read together. */
  const rows = (together: () => Row[]): Row[] => {
    try {
      return together();
    } catch (error) {
      if (!isDamage(error)) throw error;
      return tastingsIn(db)
        .flatMap((tasting) => orNothing(() => byId.get(tasting)) ?? [])
        .sort((one, other) => other.created_at - one.created_at);
    }
  };
  const readable = (found: readonly Row[]): TastingRow[] =>
    found.flatMap((row) => {
      const read = fromRow(row);
      return read instanceof SetAside ? [] : [read];
    });
  const find = (tasting: TastingId): TastingRow | undefined => {
    let row: Row | undefined;
    try {
      row = byId.get(tasting);
    } catch (error) {
      if (!isDamage(error)) throw error;
      throw new SetAside(tasting, { kind: 'plan-unreadable', event: null }, { cause: error });
    }
    return orThrow(row);
  };

  return {
    create: (row) =>
      writer.write(row.tasting, () => {
        const { tasting, code, plan, revision, createdAt, house } = row;
        insert.run(tasting, code, JSON.stringify(plan), revision, createdAt, house ?? null);
        digests.keep('tastings', row.tasting);
        summaries.add(row);
      }),
    has: (tasting) =>
      orNothing(() => known.get(tasting)) !== undefined || summaries.find(tasting) !== undefined,
    find,
    isOf(tasting, house) {
      const read = orNothing(() => houseOf.get(tasting));
      return read === undefined ? summaries.isOf(tasting, house) : read.house === (house ?? null);
    },
    houseOf: (tasting) => houseIn(houseOf.get(tasting)).house,
    async findByCode(code) {
      const tasting = byCode.get(code);
      return tasting === undefined ? undefined : find(tastingId(tasting));
    },
    list: async () => readable(rows(() => newest.all())),
    async latest(house, most) {
      const of = house ?? null;
      const found = rows(() => newestOf.all(of, most));
      return readable(found.filter((row) => row.house === of).slice(0, most));
    },
    ids: async () => tastingsIn(db),
    summary: summaries.find,
    page: async (search) => summaries.page(search),
    troubles: () => troubles,
    altered: () => digests.altered,
    unreadable: async () =>
      rows(() => newest.all()).flatMap((row) => {
        const read = fromRow(row);
        return read instanceof SetAside ? [unreadable(row, read)] : [];
      }),
    savePlan: (tasting, plan, base) =>
      writer.write(tasting, () => {
        if (update.run(JSON.stringify(plan), tasting, base).changes !== 1) return undefined;
        digests.keep('tastings', tasting);
        summaries.planned(tasting, plan);
        return base + 1;
      }),
    async remove(tasting) {
      const forgotten = await forget(tasting);
      await writer.write(tasting, () => {
        remove.run(tasting);
        summaries.gone(tasting);
      });
      await forgotten();
      await writer.cut();
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
