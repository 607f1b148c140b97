import type { Database } from 'better-sqlite3';
import type { PhotoShelf } from './photo-shelf.ts';
import { digestOf } from './row-digests.ts';
import type { Writer } from './writer.ts';

export function photoShelf(db: Database, writer: Writer): PhotoShelf {
  const insert = db.prepare<[string, string, Buffer, string]>(
    'INSERT INTO photos (photo, tasting, jpeg, digest) VALUES (?, ?, ?, ?)',
  );
  const find = db.prepare<[string], Buffer>('SELECT jpeg FROM photos WHERE photo = ?').pluck();
  const count = db.prepare<[string], number>('SELECT count(*) FROM photos WHERE tasting = ?').pluck();
  const remove = db.prepare<[string, string]>('DELETE FROM photos WHERE tasting = ? AND photo = ?');
  return {
    add: (tasting, photo, jpeg) =>
      writer.write(tasting, () => {
        insert.run(photo, tasting, jpeg, digestOf({ photo, tasting, jpeg }));
      }),
    find: async (photo) => find.get(photo),
    count: async (tasting) => count.get(tasting) ?? 0,
    remove: (tasting, photo) =>
      writer.write(tasting, () => {
        remove.run(tasting, photo);
      }),
  };
}
