import type { Database } from 'better-sqlite3';
import type { TastingId } from '../../core/ids.ts';
import { StoreFailure } from './store.ts';

/**
 * Commits together what arrives together: one sync to disk for all writes of one turn of the event loop, which is what
 * makes a roomful of notes cheap. A write that fails on its own (a broken expectation) takes no other with it; when the
 * commit itself fails, all of them have failed.
 */
export interface Writer {
  /** @param of the evening in which the write changes something, and in no other */
  write<Result>(of: TastingId, run: () => Result): Promise<Result>;
  /** After a removal: what lies in the write-ahead log is folded into the file, and the log is cut off. */
  cut(): Promise<void>;
  /** Resolves when nothing waits any more. */
  idle(): Promise<void>;
}

interface Waiting {
  /** Runs inside the common transaction; answers with what settles the promise once that is committed. */
  readonly run: () => () => void;
  readonly fail: (reason: StoreFailure) => void;
}

export function createWriter(db: Database): Writer {
  let waiting: Waiting[] = [];
  let flushing: Promise<void> | undefined;

  const runAll = db.transaction((batch: readonly Waiting[]) => batch.map(runOne));
  // Nested, so a savepoint: rolled back alone.
  const inSavepoint = db.transaction((run: () => () => void) => run());
  function runOne(each: Waiting): () => void {
    try {
      return inSavepoint(each.run);
    } catch (error) {
      if (!db.inTransaction) throw error;
      return () => each.fail(failure(error));
    }
  }

  function flush(): void {
    const batch = waiting;
    waiting = [];
    flushing = undefined;
    try {
      for (const settle of runAll.immediate(batch)) settle();
    } catch (error) {
      for (const each of batch) each.fail(failure(error));
    }
  }

  return {
    write: (_of, run) =>
      new Promise((resolve, reject) => {
        waiting.push({
          run: () => {
            const result = run();
            return () => resolve(result);
          },
          fail: reject,
        });
        flushing ??= new Promise<void>((done) => {
          setImmediate(() => {
            flush();
            done();
          });
        });
      }),
    async cut() {
      cutLog(db);
    },
    async idle() {
      while (flushing !== undefined) await flushing;
    },
  };
}

/** After a removal the write-ahead log still holds the pages as they were: folds it in and cuts it off. */
export function cutLog(db: Database): void {
  const [done] = db.pragma('wal_checkpoint(TRUNCATE)') as readonly { readonly busy: number }[];
  if (done?.busy === 1) throw new StoreFailure('The log of the store is being read and could not be cut.');
}

/** The file itself is broken where it was read. */
export const isDamage = (error: unknown): boolean =>
  String((error as { readonly code?: unknown } | undefined)?.code).startsWith('SQLITE_CORRUPT');

/** What the database said, as a sentence for the log; it never holds a value that was to be written. */
export function failure(error: unknown): StoreFailure {
  if (error instanceof StoreFailure) return error;
  const code = (error as { readonly code?: unknown }).code;
  const said = typeof code === 'string' ? code : 'unknown';
  const sentence =
    sentences.find(([prefix]) => said.startsWith(prefix))?.[1] ?? 'The store could not be written.';
  return new StoreFailure(`${sentence} (${said})`, { cause: error });
}

const unwritable = 'The data folder cannot be written: give this user the right to write there.';

const sentences: readonly (readonly [string, string])[] = [
  ['SQLITE_FULL', 'The disk is full: free some space, then try again.'],
  ['SQLITE_READONLY', unwritable],
  ['SQLITE_CANTOPEN', unwritable],
  ['EACCES', unwritable],
  ['ENOSPC', 'The disk is full: free some space, then try again.'],
  ['EROFS', unwritable],
  ['SQLITE_IOERR', 'The disk does not answer as it should: check it, then start again from a backup.'],
  ['SQLITE_CORRUPT', 'The store is damaged: stop the server and put a backup in its place.'],
  ['SQLITE_NOTADB', 'The store is not a store of Quietpour: choose another data folder.'],
  ['SQLITE_BUSY', 'Another server uses this store: stop it, or choose another data folder.'],
];
