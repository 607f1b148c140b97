import type { Database } from 'better-sqlite3';
import { tastingId } from '../../core/ids.ts';
import { blankPlan } from '../../core/tasting.ts';
import { epochMs } from '../../core/units.ts';
import { SetAside } from './set-aside.ts';
import { moves, type Summaries } from './summaries.ts';
import { fromRow, type Row, titleIn } from './tasting-row.ts';

/**
 * Writes the summaries of tastings that have none, as after an upgrade. Of what cannot be read it says what can be said:
 * a tasting is never missing from the list.
 */
export function addMissingSummaries(db: Database, summaries: Summaries): void {
  const missing = db
    .prepare<[], string>('SELECT tasting FROM tastings EXCEPT SELECT tasting FROM summaries')
    .pluck();
  const rowOf = db.prepare<[string], Row>('SELECT * FROM tastings WHERE tasting = ?');
  // Whatever else of a log cannot be read.
  const movedTo = db.prepare<[string, string], { type: string; at: number }>(
    `SELECT json_extract(event, '$.type') AS type, json_extract(event, '$.at') AS at FROM events
     WHERE tasting = ? AND json_valid(event) AND json_extract(event, '$.type') IN (SELECT value FROM json_each(?))
     ORDER BY seq DESC LIMIT 1`,
  );

  function add(id: string): void {
    const tasting = tastingId(id);
    const row = orNothing(() => rowOf.get(id));
    const read = row && fromRow(row);
    if (read !== undefined && !(read instanceof SetAside)) summaries.add(read);
    else {
      const plan = { ...blankPlan('spirit'), title: titleIn(row?.plan ?? '') };
      const createdAt = epochMs(row?.created_at ?? 0);
      summaries.add({ tasting, code: row?.code ?? '', plan, revision: row?.revision ?? 1, createdAt });
    }
    const last = orNothing(() => movedTo.get(id, JSON.stringify(moves)));
    if (last !== undefined) summaries.happened(tasting, [last]);
  }

  db.transaction(() => {
    for (const id of orNothing(() => missing.all()) ?? []) add(id);
  })();
}

/** What lies on a damaged part of the disk, or makes no sense, is as good as not there. */
function orNothing<Value>(read: () => Value): Value | undefined {
  try {
    return read();
  } catch {
    return undefined;
  }
}
