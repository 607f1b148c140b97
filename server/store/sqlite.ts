import { accessSync, constants, existsSync } from 'node:fs';
import SqliteDatabase, { type Database } from 'better-sqlite3';
import type { HouseId, TastingId } from '../../core/ids.ts';
import type { TastingTrouble } from '../../shared/wire/http.ts';
import { asItLies } from './as-it-lies.ts';
import { sealPlainShares } from './consents.ts';
import { deviceShelf } from './devices.ts';
import { documentShelf } from './documents.ts';
import {
  type Forgettings,
  forgettingsFileOf,
  forgettingsIn,
  noForgettings,
  readForgettings,
} from './forgettings.ts';
import { houseShelf } from './houses.ts';
import { keyRing } from './keys.ts';
import { copyBeforeUpgrade, dropCopy, migrate, type Upgrade } from './migrate.ts';
import { wholeSummaries } from './missing-summaries.ts';
import { notebooks } from './notebooks.ts';
import { photoShelf } from './photos.ts';
import { sealPlainNotes } from './plain-notes.ts';
import { orNothing } from './readable.ts';
import { releaseShelf } from './releases.ts';
import { rowDigests } from './row-digests.ts';
import { notebooksIn, notebooksOf, packInto, unpackKeys } from './seals/packed-keys.ts';
import { type Seals, sealsBeside, sealsInMemory } from './seals/seals.ts';
import { sessionLog } from './sessions.ts';
import { SetAside } from './set-aside.ts';
import { type Store, StoreFailure } from './store.ts';
import { surveyShelf } from './surveys.ts';
import { tastingShelf } from './tastings.ts';
import { type FileInThread, fileInThread, lockOf } from './thread/file-in-thread.ts';
import { createWriter, failure, isDamage, type Writer } from './writer.ts';

export interface StoreOptions {
  /** Of 4 kB: a file that would grow larger is answered as a full disk is. */
  readonly pages?: number;
  /** Whether a thread of its own writes the file, so that nothing else waits for the disk. */
  readonly inThread?: boolean;
}

export interface SqliteStore extends Store {
  /** Writes everything that is on disk at this moment into a new file, while the store goes on working. */
  backup(file: string): Promise<void>;
  /** Absent when the file was of this version already, or new. */
  readonly upgrade?: Upgrade;
}

/**
 * A store in one SQLite file. The lock is held for as long as the server runs, so a second server on the same file is
 * refused at once, and a killed one leaves nothing to clean up. Throws `StoreFailure` with a sentence.
 */
export function openSqliteStore(file: string, { pages, inThread = false }: StoreOptions = {}): SqliteStore {
  if (inThread) return openInThread(file, pages);
  const { db, seals, upgrade } = open(file);
  try {
    if (pages !== undefined) db.pragma(`max_page_count = ${pages}`);
    const gone = inMemory(file) ? noForgettings : forgettingsIn(forgettingsFileOf(file));
    const writer = createWriter(db);
    const copyInto = async (copy: string) => {
      await db.backup(copy);
      packInto(copy, seals.slots());
    };
    const close = async () => void db.close();
    return storeOf({ db, writer, copyInto, close }, seals, gone, upgrade);
  } catch (error) {
    // A handle that nobody holds would keep the lock.
    db.close();
    seals.close();
    throw failure(error);
  }
}

function openInThread(file: string, pages: number | undefined): SqliteStore {
  let lock: ReturnType<typeof lockOf> | undefined;
  try {
    lock = lockOf(file);
    const { db, seals, upgrade } = open(file);
    db.close();
    seals.close();
    const whole = fileInThread(file, pages);
    const close = () => whole.close().finally(() => lock?.close());
    return storeOf({ ...whole, close }, sealsBeside(file, whole.slots), whole.forgettings, upgrade);
  } catch (error) {
    lock?.close();
    throw failure(error);
  }
}

type OpenFile = Pick<FileInThread, 'db' | 'writer' | 'copyInto' | 'close'>;

function storeOf(
  { db, writer, copyInto, close }: OpenFile,
  seals: Seals,
  gone: Forgettings,
  upgrade: Upgrade | undefined,
): SqliteStore {
  return {
    ...shelvesOf(db, seals, gone, writer),
    ...(upgrade === undefined ? {} : { upgrade }),
    async backup(copy) {
      try {
        await copyInto(copy, seals.slots);
      } catch (error) {
        throw failure(error);
      }
    },
    async close() {
      await writer.idle();
      await close();
      seals.close();
    },
  };
}

const inMemory = (file: string): boolean => file === ':memory:';

/** @param db what the shelves read from; the writer commits what they write */
export function shelvesOf(
  db: Database,
  seals: Seals,
  gone: Forgettings,
  writer: Writer,
): Omit<Store, 'close'> {
  const digests = rowDigests(db);
  const keys = keyRing(db, writer, digests);
  let damaged = false;
  const summaries = wholeSummaries(db, () => {
    damaged = true;
  });
  const troubles = new Map<TastingId, TastingTrouble>();
  /** What the database throws while reading becomes a `StoreFailure`, as it does while writing; what is set aside is known from then on. */
  const inSentences = <Shelf extends object>(shelf: Shelf): Shelf =>
    told(shelf, (error) => {
      if (error instanceof SetAside) troubles.set(error.tasting, error.trouble);
      damaged ||= isDamage(error) || isDamage(error instanceof SetAside && error.cause);
      return failure(error);
    });
  const notes = notebooks(db, writer, seals, gone);
  const tastings = tastingShelf(db, writer, { summaries, digests, troubles }, async (tasting) => {
    await gone.add({ tasting, seat: null });
    return () => {
      troubles.delete(tasting);
      return seals.destroyAll(tasting);
    };
  });
  const forget = (house: HouseId) => gone.add({ house });
  return {
    tastings: inSentences(tastings),
    houses: inSentences(houseShelf(db, writer, { tastings, forget })),
    sessions: inSentences(sessionLog(db, writer, summaries, keys.addNow)),
    notebooks: inSentences(notes),
    keys: inSentences(keys),
    devices: inSentences(deviceShelf(db, writer, { keys, notebooks: notes, seals, digests })),
    releases: inSentences(releaseShelf(db, writer, seals)),
    documents: inSentences(documentShelf(db, writer, digests)),
    photos: inSentences(photoShelf(db, writer)),
    surveys: inSentences(surveyShelf(db, writer, digests)),
    asItLies: asItLies(db),
    lookThrough(tasting) {
      digests.lookThrough(tasting);
      const lost = orNothing(() => notebooksOf(db, tasting).some((each) => !seals.holds(tasting, each)));
      if (lost !== false) digests.tell(tasting, 'notes');
    },
    check() {
      digests.check();
      const damage = checked(db);
      damaged ||= damage.length > 0;
      return damage;
    },
    damaged: () => damaged,
  };
}

/** A shelf of which every method throws, or rejects with, what `tell` makes of an error. */
function told<Shelf extends object>(shelf: Shelf, tell: (error: unknown) => StoreFailure): Shelf {
  const methods = Object.entries(shelf).map(([name, ask]) => {
    if (typeof ask !== 'function') return [name, ask];
    const asked = (...args: unknown[]) => {
      try {
        const said: unknown = ask(...args);
        if (!(said instanceof Promise)) return said;
        return said.catch((error: unknown) => {
          throw tell(error);
        });
      } catch (error) {
        throw tell(error);
      }
    };
    return [name, asked];
  });
  return Object.fromEntries(methods) as Shelf;
}

function checked(db: Database): readonly string[] {
  try {
    const said = db.pragma('integrity_check(20)') as readonly { readonly integrity_check: string }[];
    const lost = db.pragma('foreign_key_check') as readonly { readonly table: string }[];
    return [
      ...said.map((each) => each.integrity_check).filter((each) => each !== 'ok'),
      ...new Set(lost.map(({ table }) => `A row of ${table} names an evening that is not there.`)),
    ];
  } catch (error) {
    return [failure(error).message];
  }
}

function open(file: string): {
  readonly db: Database;
  readonly seals: Seals;
  readonly upgrade?: Upgrade;
} {
  let upgrade: Upgrade | undefined;
  try {
    // A file that may only be read would be taken for a disk that does not answer.
    if (existsSync(file)) accessSync(file, constants.W_OK);
    upgrade = copyBeforeUpgrade(file);
    const db = new SqliteDatabase(file, { timeout: 500 });
    try {
      db.pragma('locking_mode = EXCLUSIVE');
      db.pragma('journal_mode = WAL');
      db.pragma('synchronous = FULL');
      // What is deleted is overwritten: a guest's words must not linger in free pages.
      db.pragma('secure_delete = ON');
      migrate(db);
      // Last, when the lock says that no other server uses the keys either.
      const seals = inMemory(file) ? sealsInMemory() : sealsBeside(file);
      try {
        const forgotten = inMemory(file) ? [] : readForgettings(forgettingsFileOf(file));
        unpackKeys(db, seals, forgotten);
        sealPlainNotes(db, seals, forgotten);
        sealPlainShares(db, seals, forgotten);
        // Still on this thread: done, or thrown, when it returns.
        const used = orNothing(() => notebooksIn(db));
        // Where a part of the disk hides them, no key is known to be unused, and all else can be served.
        if (used !== undefined) void seals.destroyUnused(used);
      } catch (error) {
        seals.close();
        throw error;
      }
      return { db, seals, ...(upgrade === undefined ? {} : { upgrade }) };
    } catch (error) {
      db.close();
      throw error;
    }
  } catch (error) {
    dropCopy(upgrade);
    if (error instanceof Error && !('code' in error)) throw new StoreFailure(error.message, { cause: error });
    throw failure(error);
  }
}
