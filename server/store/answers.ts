import type { Database } from 'better-sqlite3';
import type { CommandId, TastingId } from '../../core/ids.ts';
import { type DigestedRow, digestOf, isAsWritten } from './row-digests.ts';
import { StoreFailure } from './store.ts';

/** What each command was answered, as text. The scope is a notebook for notes, and empty for the session's own commands. */
export interface AnswerRows {
  /** Inside a write of somebody else's. */
  keepNow(tasting: TastingId, scope: string, command: CommandId, answer: string): void;
  /** Throws `StoreFailure` when it is not what was answered: to do it once more would be worse than to refuse. */
  find(tasting: TastingId, scope: string, command: CommandId): string | undefined;
  dropNow(tasting: TastingId, scope: string): void;
}

type Row = DigestedRow & { readonly answer: string };

export function answerRows(db: Database): AnswerRows {
  const insert = db.prepare<[string, string, string, string, string]>(
    'INSERT INTO answers (tasting, scope, command, answer, digest) VALUES (?, ?, ?, ?, ?)',
  );
  const one = db.prepare<[string, string, string], Row>(
    'SELECT * FROM answers WHERE tasting = ? AND scope = ? AND command = ?',
  );
  const drop = db.prepare<[string, string]>('DELETE FROM answers WHERE tasting = ? AND scope = ?');
  return {
    keepNow(tasting, scope, command, answer) {
      insert.run(tasting, scope, command, answer, digestOf({ tasting, scope, command, answer }));
    },
    find(tasting, scope, command) {
      const row = one.get(tasting, scope, command);
      if (row !== undefined && !isAsWritten(row))
        throw new StoreFailure('An answer that was given is not as it was stored.');
      return row?.answer;
    },
    dropNow(tasting, scope) {
      drop.run(tasting, scope);
    },
  };
}
