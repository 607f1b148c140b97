import { type HouseId, tastingId } from '../../../core/ids.ts';
import type { HouseShelf } from '../house.ts';
import type { PhotoShelf } from '../photo-shelf.ts';
import { digestOf } from '../row-digests.ts';
import { SetAside } from '../set-aside.ts';
import type { SessionLog, Store, TastingShelf } from '../store.ts';
import { eventsIn, type StoredEventRow } from '../stored-log.ts';
import { listedColumns, type SummaryRow, soughtWords, stageCases, summaryFromRow } from '../summaries.ts';
import { fromRow, orThrow, type Row, unreadable } from '../tasting-row.ts';
import type { Ask } from './connections.ts';
import { databaseFailure } from './failure.ts';
import { housesAfar } from './houses.ts';

/** By code point, as SQLite orders. */
const newestFirst = 'ORDER BY created_at DESC, tasting COLLATE "C"';

type Afar = Pick<TastingShelf, 'findByCode' | 'list' | 'latest' | 'ids' | 'page' | 'unreadable'> &
  Pick<SessionLog, 'readAnywhere'> & { readonly photos: PhotoShelf; readonly houses: HouseShelf };

/** With the house as the second of the values; written so that an index is used. */
const ofHouse = (house: HouseId | undefined): string =>
  house === undefined ? 'house IS NULL AND $2::text IS NULL' : 'house = $2';

/** What is asked of evenings wherever they lie. */
export function lookUps(given: Ask): Afar {
  const ask: Ask = async (text, values) => {
    try {
      return await given(text, values);
    } catch (error) {
      throw databaseFailure(error);
    }
  };
  const rows = () => ask<Row>(`SELECT * FROM tastings ${newestFirst}`);
  const readable = (found: readonly Row[]) =>
    found.map(fromRow).flatMap((row) => (row instanceof SetAside ? [] : [row]));
  return {
    async findByCode(code) {
      const [row] = await ask<Row>('SELECT * FROM tastings WHERE code = $1', [code]);
      return orThrow(row);
    },
    list: async () => readable(await rows()),
    async latest(house, most) {
      const sql = `SELECT * FROM tastings WHERE ${ofHouse(house)} ${newestFirst} LIMIT $1`;
      return readable(await ask<Row>(sql, [most, house]));
    },
    async ids() {
      const found = await ask<{ tasting: string }>('SELECT tasting FROM tastings');
      return found.map(({ tasting }) => tastingId(tasting));
    },
    async page({ house, find, after, most }) {
      const found = await ask<SummaryRow>(
        `SELECT ${listedColumns} FROM summaries
         WHERE ${ofHouse(house)}
           AND ($1::bigint IS NULL OR created_at < $1 OR (created_at = $1 AND tasting COLLATE "C" > $5))
           AND NOT EXISTS (
             SELECT FROM unnest($3::text[]) AS sought
             WHERE strpos(words || lower(' ' || code) || CASE stage ${stageCases} ELSE '' END, sought) = 0)
         ${newestFirst} LIMIT $4`,
        [after?.createdAt ?? null, house, soughtWords(find), most, after?.tasting ?? ''],
      );
      return found.map(summaryFromRow);
    },
    async unreadable() {
      return (await rows()).flatMap((row) => {
        const read = fromRow(row);
        return read instanceof SetAside ? [unreadable(row, read)] : [];
      });
    },
    async readAnywhere(tasting) {
      return eventsIn(
        tasting,
        await ask<StoredEventRow>('SELECT seq, event, digest FROM events WHERE tasting = $1 ORDER BY seq', [
          tasting,
        ]),
      );
    },
    photos: photosAfar(ask),
    houses: housesAfar(ask),
  };
}

function photosAfar(ask: Ask): Store['photos'] {
  return {
    async add(tasting, photo, jpeg) {
      await ask('INSERT INTO photos (photo, tasting, jpeg, digest) VALUES ($1, $2, $3, $4)', [
        photo,
        tasting,
        jpeg,
        digestOf({ photo, tasting, jpeg }),
      ]);
    },
    async find(photo) {
      const [row] = await ask<{ jpeg: Buffer }>('SELECT jpeg FROM photos WHERE photo = $1', [photo]);
      return row?.jpeg;
    },
    async count(tasting) {
      const [row] = await ask<{ count: number }>(
        'SELECT count(*)::int AS count FROM photos WHERE tasting = $1',
        [tasting],
      );
      return row?.count ?? 0;
    },
    async remove(tasting, photo) {
      await ask('DELETE FROM photos WHERE tasting = $1 AND photo = $2', [tasting, photo]);
    },
  };
}
