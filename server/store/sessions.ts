import type { Database } from 'better-sqlite3';
import type { TastingId } from '../../core/ids.ts';
import type { SessionEvent } from '../../core/session/event.ts';
import { answerRows } from './answers.ts';
import { linkOf } from './chain.ts';
import { type DigestedRow, isAsWritten } from './row-digests.ts';
import { SetAside } from './set-aside.ts';
import { Diverged, type KeyRow, type SessionLog } from './store.ts';
import { answerIn } from './stored-answer.ts';
import { eventsIn, type StoredEventRow } from './stored-log.ts';
import type { Summaries } from './summaries.ts';
import type { Writer } from './writer.ts';

export function sessionLog(
  db: Database,
  writer: Writer,
  summaries: Summaries,
  addKey: (key: KeyRow) => void,
): SessionLog {
  const last = db.prepare<[string], Pick<StoredEventRow, 'seq' | 'digest'>>(
    'SELECT seq, digest FROM events WHERE tasting = ? ORDER BY seq DESC LIMIT 1',
  );
  const all = db.prepare<[string], StoredEventRow>(
    'SELECT seq, event, digest FROM events WHERE tasting = ? ORDER BY seq',
  );
  const insert = db.prepare<[string, number, string, string]>('INSERT INTO events VALUES (?, ?, ?, ?)');
  const answers = answerRows(db);
  // A version that a disk has made greater would miss steps that never were.
  const newestAnswers = db.prepare<[string], DigestedRow & { readonly answer: string }>(
    `SELECT * FROM answers WHERE tasting = ? AND scope = '' AND json_valid(answer)
     ORDER BY json_extract(answer, '$.version') DESC`,
  );
  const acknowledged = (tasting: TastingId): number => {
    for (const row of newestAnswers.iterate(tasting))
      if (isAsWritten(row)) return Number((JSON.parse(row.answer) as { version?: number }).version ?? 0);
    return 0;
  };

  const lastAt = db
    .prepare<[string], number | null>(
      "SELECT max(json_extract(event, '$.at')) FROM events WHERE tasting = ? AND json_valid(event)",
    )
    .pluck();

  const read = (tasting: TastingId): SessionEvent[] => {
    let rows: StoredEventRow[];
    try {
      rows = all.all(tasting);
    } catch (error) {
      throw new SetAside(tasting, { kind: 'log-damaged', event: null }, { cause: error });
    }
    return eventsIn(tasting, rows);
  };

  return {
    version: (tasting) => last.get(tasting)?.seq ?? 0,
    read,
    readAnywhere: async (tasting) => read(tasting),
    lastAt: (tasting) => lastAt.get(tasting) ?? 0,
    acknowledged,
    append: ({ tasting, expected, events, answered: said, key }) =>
      writer.write(tasting, () => {
        const found = last.get(tasting);
        if ((found?.seq ?? 0) !== expected) {
          throw new Diverged(
            `Expected ${expected} events and found ${found?.seq ?? 0}: two writers share one session.`,
          );
        }
        let digest: string = found?.digest ?? tasting;
        events.forEach((event, index) => {
          const [seq, text] = [expected + index + 1, JSON.stringify(event)];
          digest = linkOf(digest, seq, text);
          insert.run(tasting, seq, text, digest);
        });
        summaries.happened(tasting, events);
        if (said !== undefined) answers.keepNow(tasting, '', said.command, JSON.stringify(said.answer));
        if (key !== undefined) addKey(key);
      }),
    answerTo(tasting, command) {
      const found = answers.find(tasting, '', command);
      return found === undefined ? undefined : answerIn(found);
    },
  };
}
