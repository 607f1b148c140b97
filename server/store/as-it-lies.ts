import type { Database } from 'better-sqlite3';
import type { TastingId } from '../../core/ids.ts';

/** What each table holds of a tasting that is the host's to see: no notes, no answers that may hold some, no keys. */
const tables = {
  tastings: 'SELECT code, plan, revision, created_at FROM tastings WHERE tasting = ?',
  events: 'SELECT seq, event, digest FROM events WHERE tasting = ? ORDER BY seq',
  documents: 'SELECT name, body, revision FROM documents WHERE tasting = ? ORDER BY name',
  surveys: 'SELECT answers FROM surveys WHERE tasting = ?',
} as const;

/** The rows of each table as they lie there; null for a table that lies on a damaged part of the disk. */
export type AsItLies = { readonly [Table in keyof typeof tables]: readonly unknown[] | null };

/** An evening for whoever wants to mend it: text as it was stored, read by nothing of today's. */
export function asItLies(db: Database): (tasting: TastingId) => AsItLies {
  const rowsOf = (sql: string, tasting: TastingId): readonly unknown[] | null => {
    try {
      return db.prepare<[string], unknown>(sql).all(tasting);
    } catch {
      return null;
    }
  };
  return (tasting) => ({
    tastings: rowsOf(tables.tastings, tasting),
    events: rowsOf(tables.events, tasting),
    documents: rowsOf(tables.documents, tasting),
    surveys: rowsOf(tables.surveys, tasting),
  });
}
