import { copyFileSync, existsSync, mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import SqliteDatabase from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { commandId, photoId, pourId, seatId, tastingId } from '../../../core/ids.ts';
import type { SessionEvent } from '../../../core/session/event.ts';
import { epochMs } from '../../../core/units.ts';
import { openSqliteStore, type SqliteStore, type StoreOptions } from '../../../server/store/sqlite.ts';
import { Diverged } from '../../../server/store/store.ts';
import { CommitThread } from '../../../server/store/thread/commit-thread.ts';
import { planOf } from '../../support/plans.ts';
import { temporaryFolder } from '../support/process.ts';

/** A store's file that a thread writes. What every store does is in the contract. */
const tasting = tastingId('harvest');
const row = { tasting, code: 'ABC234', plan: planOf(3), revision: 1, createdAt: epochMs(1000) };
const held: SessionEvent = { type: 'ReminderCleared' };
const robin = seatId('robin');

let folder: ReturnType<typeof temporaryFolder>;
let file: string;
let open: SqliteStore[] = [];
beforeEach(() => {
  folder = temporaryFolder();
  file = join(folder.path, 'quietpour.db');
});
afterEach(async () => {
  for (const store of open) await store.close();
  open = [];
  folder.remove();
});
function opened(options: StoreOptions = {}): SqliteStore {
  const store = openSqliteStore(file, { inThread: true, ...options });
  open.push(store);
  return store;
}
async function closed(store: SqliteStore): Promise<void> {
  open = open.filter((each) => each !== store);
  await store.close();
}
const append = (store: SqliteStore, expected: number) =>
  store.sessions.append({ tasting, expected, events: [held] });
function note(store: SqliteStore, value: string, revision = 1): Promise<void> {
  const [savedAt, field] = [epochMs(5), 'nose' as const];
  const entry = { pour: pourId('pour-1'), field, value, revision, savedAt };
  const answered = {
    command: commandId(`save-${revision}`),
    answer: { ok: true, revision, value, savedAt },
  } as const;
  return store.notebooks.save({ tasting, seat: robin, entry, answered });
}

describe('what is read while a thread writes', () => {
  it('is what is on disk, never what is only tried', async () => {
    const store = opened();
    await store.tastings.create(row);
    const seen = new Set<number>();
    let settled = false;
    const writing = append(store, 0).then(() => {
      settled = true;
    });
    for (; !settled; await new Promise((turn) => setImmediate(turn))) {
      const version = store.sessions.version(tasting);
      // Another reader of the same file, as it would be found after a fall.
      const other = new SqliteDatabase(file, { readonly: true });
      const there = other.prepare('SELECT count(*) FROM events').pluck().get();
      other.close();
      expect(there).toBeGreaterThanOrEqual(version);
      seen.add(version);
    }
    await writing;
    expect(seen).toContain(0);
    expect(store.sessions.version(tasting)).toBe(1);
  });

  it('and nothing is written to the disk by the thread that serves everybody', async (test) => {
    if (!existsSync('/proc/thread-self/io'))
      return test.skip('This system does not count what a thread writes.');
    const written = () =>
      Number(/^write_bytes: (\d+)/m.exec(readFileSync('/proc/thread-self/io', 'utf8'))?.[1]);
    const many = async (store: SqliteStore) => {
      await note(store, 'the first makes a key');
      const before = written();
      for (let count = 0; count < 20; count += 1)
        await store.photos.add(tasting, photoId(`photo-of-a-label-${count}`), Buffer.alloc(100_000, count));
      await note(store, 'wet slate', 2);
      await store.notebooks.forget(tasting, robin);
      return written() - before;
    };
    const store = opened();
    await store.tastings.create(row);
    expect(await many(store)).toBe(0);
    expect(store.notebooks.read(tasting, robin).entries).toEqual([]);
    await store.tastings.remove(tasting);
    await closed(store);
    const here = opened({ inThread: false });
    await here.tastings.create(row);
    expect(await many(here), 'the measure sees it where this thread writes').toBeGreaterThan(2_000_000);
  });
});

describe('a file that a thread writes', () => {
  it('keeps a second server away, whichever way that one writes, and is free when it is closed', async () => {
    const store = opened();
    await store.tastings.create(row);
    for (const inThread of [true, false])
      expect(() => openSqliteStore(file, { inThread })).toThrow(
        /Another server uses this store.*SQLITE_BUSY/,
      );
    await append(store, 0);
    await closed(store);
    const again = opened({ inThread: false });
    expect(again.sessions.version(tasting)).toBe(1);
    expect(() => openSqliteStore(file, { inThread: true })).toThrow(/Another server uses this store/);
  });

  it('that may not grow refuses what is too much with a sentence, and takes what has room', async () => {
    const store = opened({ pages: 60 });
    await store.tastings.create(row);
    const large = store.photos.add(tasting, photoId('too-large-for-this-disk'), Buffer.alloc(300_000));
    await expect(large).rejects.toThrow(/The disk is full.*SQLITE_FULL/);
    await append(store, 0);
    expect(await store.photos.count(tasting)).toBe(0);
    await store.photos.add(tasting, photoId('small-enough-for-the-disk'), Buffer.alloc(3000));
    expect(await store.photos.count(tasting)).toBe(1);
  });

  it('has the key of a notebook on disk before the first note, and destroys it with the last', async () => {
    const store = opened();
    await store.tastings.create(row);
    const keys = () => readFileSync(`${file}.keys`);
    await note(store, 'wet slate');
    const whole = keys();
    expect(whole.length).toBeGreaterThan(0);
    expect(whole.every((byte) => byte === 0)).toBe(false);
    // As after a fall: a copy of what lies there at this moment, opened by another server.
    const copy = join(folder.path, 'copy.db');
    await store.backup(copy);
    await store.notebooks.forget(tasting, robin);
    expect(keys().length).toBe(whole.length);
    expect(keys().every((byte) => byte === 0)).toBe(true);
    const kept = new SqliteDatabase(copy);
    expect(kept.prepare('SELECT slot FROM packed_keys').pluck().all()).toEqual([whole]);
    kept.close();
  });

  it('has room in its log before it is needed, also after it was cut, and a fall reads no more out of it', async () => {
    const store = opened();
    await store.tastings.create(row);
    const log = () => readFileSync(`${file}-wal`);
    let version = 0;
    /** Room is made between commits, a step at a time. */
    const filled = async () => {
      const most = version + 100;
      for (; log().length < 4_120_000 && version < most; version += 1) await append(store, version);
      return log().length;
    };
    const size = await filled();
    expect(size).toBeGreaterThan(4_120_000);
    await append(store, version);
    version += 1;
    expect(log().length, 'a commit writes over what lies there').toBe(size);
    await note(store, 'wet slate');
    await store.notebooks.forget(tasting, robin);
    expect(
      log().some((byte) => byte !== 0),
      'what was forgotten',
    ).toBe(false);
    expect(await filled()).toBeGreaterThan(4_120_000);
    // As after a fall: the files as they lie at this moment.
    const copy = join(folder.path, 'copy');
    mkdirSync(copy);
    for (const name of ['quietpour.db', 'quietpour.db-wal', 'quietpour.db.keys', 'notes.key'])
      copyFileSync(join(folder.path, name), join(copy, name));
    const fallen = openSqliteStore(join(copy, 'quietpour.db'), { inThread: true });
    open.push(fallen);
    expect(fallen.sessions.version(tasting)).toBe(version);
    expect(fallen.check()).toEqual([]);
  });

  it('is written on when a thread has ended, and what nobody knows of is not called stored', async () => {
    const given = { file, slots: `${file}.keys`, forgotten: `${file}.forgotten`, pages: undefined };
    const thread = new CommitThread(given);
    // No such file of keys: the thread falls.
    await expect(thread.ask({ do: 'cut' })).rejects.toThrow(Diverged);
    await closed(opened());
    await thread.ask({ do: 'cut' });
    await thread.close();
  });
});
