import type { Database } from 'better-sqlite3';
import type { SessionEvent } from '../../core/session/event.ts';
import type { CommandAnswer } from '../../shared/wire/protocol.ts';
import { type KeyRow, type SessionLog, StoreFailure } from './store.ts';
import type { Writer } from './writer.ts';

export function sessionLog(db: Database, writer: Writer, addKey: (key: KeyRow) => void): SessionLog {
  const count = db
    .prepare<[string], number>('SELECT coalesce(max(seq), 0) FROM events WHERE tasting = ?')
    .pluck();
  const all = db.prepare<[string], string>('SELECT event FROM events WHERE tasting = ? ORDER BY seq').pluck();
  const insert = db.prepare<[string, number, string]>('INSERT INTO events VALUES (?, ?, ?)');
  const answer = db.prepare<[string, string, string]>("INSERT INTO answers VALUES (?, '', ?, ?)");
  const answered = db
    .prepare<[string, string], string>(
      "SELECT answer FROM answers WHERE tasting = ? AND scope = '' AND command = ?",
    )
    .pluck();

  return {
    version: (tasting) => count.get(tasting) ?? 0,
    read: (tasting) => all.all(tasting).map((event) => JSON.parse(event) as SessionEvent),
    append: ({ tasting, expected, events, answered: said, key }) =>
      writer.write(() => {
        const found = count.get(tasting) ?? 0;
        if (found !== expected) {
          throw new StoreFailure(
            `Expected ${expected} events and found ${found}: two writers share one session.`,
          );
        }
        events.forEach((event, index) => {
          insert.run(tasting, expected + index + 1, JSON.stringify(event));
        });
        if (said !== undefined) answer.run(tasting, said.command, JSON.stringify(said.answer));
        if (key !== undefined) addKey(key);
      }),
    answerTo(tasting, command) {
      const found = answered.get(tasting, command);
      return found === undefined ? undefined : (JSON.parse(found) as CommandAnswer);
    },
  };
}
