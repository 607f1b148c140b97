import { closeSync, fsyncSync, openSync, readFileSync, writeSync } from 'node:fs';
import type { Database } from 'better-sqlite3';

/** What was forgotten: a seat's notes, a whole tasting (its seat is null), or a house. Ids only. */
export type Forgotten = ForgottenNotes | { readonly house: string };
interface ForgottenNotes {
  readonly tasting: string;
  readonly seat: string | null;
}

/** Remembers that something was forgotten, so that a backup of before does not bring it back. */
export interface Forgettings {
  /** On disk when it is done. */
  add(forgotten: Forgotten): void | Promise<void>;
}

export const forgettingsFileOf = (store: string): string => `${store}.forgotten`;

/** On disk when `add` returns. */
export const forgettingsIn = (path: string) => ({
  add(forgotten: Forgotten): void {
    const file = openSync(path, 'a', 0o600);
    try {
      // A line of its own, also after one that a power cut left half written.
      writeSync(file, `\n${JSON.stringify(forgotten)}\n`);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
  },
});

export const noForgettings: Forgettings = { add: () => undefined };

/** A last line that a power cut left half written is passed over: what it was about had not been answered yet. */
export function readForgettings(path: string): Forgotten[] {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return [];
    throw error;
  }
  return text.split('\n').flatMap((line) => {
    try {
      const read: unknown = JSON.parse(line);
      return isForgotten(read) ? [read] : [];
    } catch {
      return [];
    }
  });
}

const isForgotten = (value: unknown): value is Forgotten =>
  typeof value === 'object' &&
  value !== null &&
  ('house' in value
    ? typeof value.house === 'string'
    : 'tasting' in value &&
      typeof value.tasting === 'string' &&
      'seat' in value &&
      (value.seat === null || typeof value.seat === 'string'));

export const notesAmong = (forgotten: readonly Forgotten[]): ForgottenNotes[] =>
  forgotten.filter((each) => 'tasting' in each);

/** Removes from a store what was forgotten after it was written. */
export function forgetAgain(db: Database, forgotten: readonly Forgotten[]): void {
  const ofTasting = db.prepare<[string]>('DELETE FROM tastings WHERE tasting = ?');
  const ofHouse = ['houses', 'tastings'].map((table) =>
    db.prepare<[string]>(`DELETE FROM ${table} WHERE house = ?`),
  );
  const tables = db
    .prepare<[], string>(
      "SELECT name FROM sqlite_schema WHERE name IN ('notes', 'shares', 'plain_shares', 'keys', 'seat_words')",
    )
    .pluck()
    .all();
  const ofSeat = [
    ...tables.map((table) => `DELETE FROM ${table} WHERE tasting = ? AND seat = ?`),
    'DELETE FROM answers WHERE tasting = ? AND scope = ?',
    // [Q8] With the figures of recaps, which may have this seat in them.
    "DELETE FROM sealed_notes WHERE tasting = ? AND (notebook = '+figures' OR ? IN (notebook, substr(notebook, 1, instr(notebook, '+') - 1)))",
  ].map((sql) => db.prepare<[string, string]>(sql));
  db.transaction(() => {
    for (const each of forgotten) if ('house' in each) for (const removal of ofHouse) removal.run(each.house);
    for (const { tasting, seat } of notesAmong(forgotten)) {
      if (seat === null) ofTasting.run(tasting);
      else for (const removal of ofSeat) removal.run(tasting, seat);
    }
  })();
}
