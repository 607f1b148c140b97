import type { Database } from 'better-sqlite3';
import { pourId, seatId, type TastingId } from '../../core/ids.ts';
import { puttingSealed, undated } from './sealed-rows.ts';
import type { Seals } from './seals/seals.ts';
import type { ReleaseShelf } from './store.ts';
import type { Writer } from './writer.ts';

/**
 * Kept among the notebooks, each sealed by a key of its own, under names that no seat can have. The figures are apart: with
 * a seat that is forgotten they go, and with their key all that the disk still holds of them.
 */
export const figuresNotebook = seatId('+figures');
const shownNotebook = seatId('+shown');

export function releaseShelf(db: Database, writer: Writer, seals: Seals): ReleaseShelf {
  const find = db
    .prepare<[string, string], Buffer>('SELECT value FROM sealed_notes WHERE tasting = ? AND notebook = ?')
    .pluck();
  const put = puttingSealed(db);
  const placeOf = (tasting: TastingId, notebook: typeof figuresNotebook) =>
    ({ tasting, notebook, pour: pourId('recap'), field: 'recap', column: 'value' }) as const;
  const read = (tasting: TastingId, notebook: typeof figuresNotebook): unknown => {
    const box = find.get(tasting, notebook);
    const text = box && seals.open(placeOf(tasting, notebook), box);
    return text === undefined ? undefined : JSON.parse(text);
  };
  const written = db
    .prepare<[string, string], number>('SELECT 1 FROM sealed_notes WHERE tasting = ? AND notebook = ?')
    .pluck();
  const saveNow = (tasting: TastingId, notebook: typeof figuresNotebook, body: unknown): void => {
    const { column, ...at } = placeOf(tasting, notebook);
    put({ ...at, ...undated, value: seals.seal({ ...at, column }, JSON.stringify(body)) });
  };
  return {
    shown: (tasting) => read(tasting, shownNotebook),
    figures: (tasting) => read(tasting, figuresNotebook),
    saveShown: (tasting, body) => writer.write(tasting, () => saveNow(tasting, shownNotebook, body)),
    saveFigures: (tasting, body, seats) =>
      writer.write(tasting, () => {
        if (seats.every((seat) => written.get(tasting, seat) === 1)) saveNow(tasting, figuresNotebook, body);
      }),
  };
}
