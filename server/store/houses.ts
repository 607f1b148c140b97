import type { Database } from 'better-sqlite3';
import { type HouseId, tastingId } from '../../core/ids.ts';
import {
  bytesOfHouse,
  emptyOpenHouses,
  type HouseRow,
  type HouseShelf,
  houseColumns,
  houseFromRow,
  limitsOf,
  valuesOf,
} from './house.ts';
import { StoreFailure, type TastingShelf } from './store.ts';
import type { Writer } from './writer.ts';

/** What is written of a house changes nothing in any evening. */
const noEvening = tastingId('');

interface HouseParts {
  readonly tastings: Pick<TastingShelf, 'remove'>;
  /** Called before a house goes, so that no backup brings it back. */
  readonly forget: (house: HouseId) => Promise<void> | void;
}

export function houseShelf(db: Database, writer: Writer, { tastings, forget }: HouseParts): HouseShelf {
  const where = (which: string) =>
    db.prepare<[string], HouseRow>(`SELECT ${houseColumns} FROM houses WHERE ${which}`);
  const [byId, byKey] = [where('house = ?'), where('key_hash = ?')];
  const all = db.prepare<[], HouseRow>(`SELECT ${houseColumns} FROM houses ORDER BY created_at, house`);
  const insert = db.prepare<unknown[]>(
    `INSERT INTO houses (${houseColumns}) VALUES (${houseColumns.replaceAll(/\w+/g, '?')})`,
  );
  const rekey = db.prepare<[string, string]>('UPDATE houses SET key_hash = ? WHERE house = ?');
  const relimit = db.prepare<unknown[]>(
    'UPDATE houses SET most_evenings = ?, most_seats = ?, most_bytes = ? WHERE house = ?',
  );
  const remove = db.prepare<[string]>('DELETE FROM houses WHERE house = ?');
  const sweep = db.prepare<[number]>(`DELETE FROM houses WHERE ${emptyOpenHouses('?')}`);
  const count = db.prepare<[string], number>('SELECT count(*) FROM tastings WHERE house = ?').pluck();
  const bytes = db.prepare<[{ house: string }], number>(`SELECT ${bytesOfHouse('@house')}`).pluck();
  const evenings = db.prepare<[string], string>('SELECT tasting FROM tastings WHERE house = ?').pluck();
  const known = db.prepare<[string], number>('SELECT 1 FROM tastings WHERE tasting = ?').pluck();
  // Every table that says of a house, also one that is added later.
  const left = db
    .prepare<[], string>(
      "SELECT m.name FROM sqlite_schema m JOIN pragma_table_info(m.name) c WHERE m.type = 'table' AND c.name = 'house'",
    )
    .pluck()
    .all()
    .map((table) => db.prepare<[string], number>(`SELECT count(*) FROM ${table} WHERE house = ?`).pluck());

  const found = (row: HouseRow | undefined) => row && houseFromRow(row);
  const ids = (house: HouseId) => evenings.all(house).map(tastingId);
  const changed = (run: () => { readonly changes: number }): Promise<boolean> =>
    writer.write(noEvening, () => run().changes === 1);
  return {
    add: (house) => writer.write(noEvening, () => void insert.run(...valuesOf(house))),
    list: async () => all.all().map(houseFromRow),
    find: async (house) => found(byId.get(house)),
    ofKey: async (hash) => found(byKey.get(hash)),
    changeKey: (house, hash) => changed(() => rekey.run(hash, house)),
    limit: (house, limits) => changed(() => relimit.run(...limitsOf(limits), house)),
    sweep: (before) => writer.write(noEvening, () => void sweep.run(before)),
    usage: async (house) => ({ evenings: count.get(house) ?? 0, bytes: bytes.get({ house }) ?? 0 }),
    evenings: async (house) => ids(house),
    gone: async (of) => of.filter((tasting) => known.get(tasting) === undefined),
    async remove(house) {
      await forget(house);
      for (const tasting of ids(house)) await tastings.remove(tasting);
      const was = await changed(() => remove.run(house));
      await writer.cut();
      if (left.some((lying) => lying.get(house) !== 0))
        throw new StoreFailure('Something of a deleted house is still in the store.');
      return was;
    },
  };
}
