import type { Database } from 'better-sqlite3';
import { type TastingId, tastingId } from '../../core/ids.ts';

/** What lies on a damaged part of the disk, or makes no sense, is as good as not there. */
export function orNothing<Value>(read: () => Value): Value | undefined {
  try {
    return read();
  } catch {
    return undefined;
  }
}

/** Where the name of a tasting stands; the first holds all of them, and each of the others many of those that it has lost. */
const places = [
  'SELECT tasting FROM tastings',
  'SELECT tasting FROM main.summaries',
  'SELECT tasting FROM tastings ORDER BY tasting DESC',
  'SELECT DISTINCT tasting FROM keys',
  'SELECT DISTINCT tasting FROM events',
];

/** Every tasting in the store, also one whose row cannot be read where another table names it. */
export function tastingsIn(db: Database): TastingId[] {
  const found = new Set<string>();
  for (const sql of places) {
    const whole = orNothing(() => {
      for (const tasting of db.prepare<[], string>(sql).pluck().iterate()) found.add(tasting);
      return true;
    });
    if (whole === true && sql === places[0]) break;
  }
  return [...found].map(tastingId);
}
