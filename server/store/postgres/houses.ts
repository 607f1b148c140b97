import { tastingId } from '../../../core/ids.ts';
import {
  bytesOfHouse,
  emptyOpenHouses,
  type HouseRow,
  type HouseShelf,
  houseColumns,
  houseFromRow,
  limitsOf,
  valuesOf,
} from '../house.ts';
import { StoreFailure } from '../store.ts';
import type { Ask } from './connections.ts';

/**
 * Houses, asked of the database each time: another process may have made one, or withdrawn its key, a moment ago. An
 * evening hangs on its house there, so that both go in one statement; its owner finds out with `gone`.
 */
export function housesAfar(ask: Ask): HouseShelf {
  const columns = `SELECT ${houseColumns} FROM houses`;
  const one = async (sql: string, value: string) => {
    const [row] = await ask<HouseRow>(sql, [value]);
    return row && houseFromRow(row);
  };
  const changed = async (sql: string, values: readonly unknown[]): Promise<boolean> =>
    (await ask(`${sql} RETURNING house`, values)).length === 1;
  const number = async (sql: string, house: string): Promise<number> => {
    const [row] = await ask<{ number: string | number }>(`SELECT (${sql}) AS number`, [house]);
    return Number(row?.number ?? 0);
  };
  return {
    async add(house) {
      const values = valuesOf(house);
      const at = values.map((_, index) => `$${index + 1}`);
      await ask(`INSERT INTO houses (${houseColumns}) VALUES (${at.join(', ')})`, values);
    },
    async list() {
      const rows = await ask<HouseRow>(`${columns} ORDER BY created_at, house COLLATE "C"`);
      return rows.map(houseFromRow);
    },
    find: (house) => one(`${columns} WHERE house = $1`, house),
    ofKey: (hash) => one(`${columns} WHERE key_hash = $1`, hash),
    changeKey: (house, hash) => changed('UPDATE houses SET key_hash = $2 WHERE house = $1', [house, hash]),
    limit: (house, limits) =>
      changed('UPDATE houses SET most_evenings = $2, most_seats = $3, most_bytes = $4 WHERE house = $1', [
        house,
        ...limitsOf(limits),
      ]),
    async sweep(before) {
      const empty = emptyOpenHouses(String(before));
      // First their rows are locked, so that no evening is planned in one between the look and the end.
      await ask(
        `DO $$ BEGIN PERFORM FROM houses WHERE ${empty} FOR UPDATE; DELETE FROM houses WHERE ${empty}; END $$`,
      );
    },
    usage: async (house) => ({
      evenings: await number('SELECT count(*) FROM tastings WHERE house = $1', house),
      bytes: await number(bytesOfHouse('$1'), house),
    }),
    async evenings(house) {
      const rows = await ask<{ tasting: string }>('SELECT tasting FROM tastings WHERE house = $1', [house]);
      return rows.map(({ tasting }) => tastingId(tasting));
    },
    async gone(evenings) {
      const rows = await ask<{ tasting: string }>('SELECT tasting FROM tastings WHERE tasting = ANY($1)', [
        evenings,
      ]);
      const there = new Set(rows.map(({ tasting }) => tasting));
      return evenings.filter((tasting) => !there.has(tasting));
    },
    async remove(house) {
      const was = await changed('DELETE FROM houses WHERE house = $1', [house]);
      const left = ['houses', 'tastings', 'summaries'].map(
        (table) => `(SELECT count(*) FROM ${table} WHERE house = $1)`,
      );
      if ((await number(left.join(' + '), house)) > 0)
        throw new StoreFailure('Something of a deleted house is still in the store.');
      return was;
    },
  };
}
