import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import SqliteDatabase from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { commandId, pourId, seatId, tastingId } from '../../../core/ids.ts';
import { epochMs } from '../../../core/units.ts';
import { openSqliteStore } from '../../../server/store/sqlite.ts';
import { planOf } from '../../support/plans.ts';

const tasting = tastingId('harvest');
const row = { tasting, code: 'ABC234', plan: planOf(3), revision: 1, createdAt: epochMs(1000) };

describe('the file of a store', () => {
  let folder: string;
  let file: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'store-'));
    file = join(folder, 'store.sqlite');
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  it('holds what was acknowledged, under the settings that make that true', async () => {
    const store = openSqliteStore(file);
    await store.tastings.create(row);
    await store.close();
    const again = openSqliteStore(file);
    expect(again.tastings.find(tasting)).toEqual(row);
    await again.close();
    const db = new SqliteDatabase(file);
    expect(db.pragma('journal_mode', { simple: true })).toBe('wal');
    db.close();
  });

  it('refuses a second server with a sentence', async () => {
    const store = openSqliteStore(file);
    await store.tastings.create(row);
    expect(() => openSqliteStore(file)).toThrow(/Another server uses this store/);
    await store.close();
  });

  it('refuses a damaged file and a newer one with a sentence', () => {
    writeFileSync(file, 'This is a shopping list, not a database. '.repeat(200));
    expect(() => openSqliteStore(file)).toThrow(/not a store of Quietpour/);
    const newer = join(folder, 'newer.sqlite');
    const db = new SqliteDatabase(newer);
    db.pragma('user_version = 99');
    db.close();
    expect(() => openSqliteStore(newer)).toThrow(/newer Quietpour/);
  });

  it('[Q2] reads no page by a permission that is none, and keeps no row for a page that is private', async () => {
    const store = openSqliteStore(file);
    await store.tastings.create(row);
    const [seat, pour] = [seatId('seat-1'), pourId('ash')];
    const whose = { tasting, seat, pour };
    const answered = (id: string) => ({ command: commandId(id), answer: { ok: true, version: 1 } }) as const;
    await store.notebooks.share({ ...whose, sharing: 'shared', answered: answered('share-001') });
    await store.close();
    const db = new SqliteDatabase(file);
    db.prepare("UPDATE shares SET sharing = 'later'").run();
    db.close();
    const again = openSqliteStore(file);
    expect(again.notebooks.readPermitted(tasting, [pour])).toEqual([]);
    expect(again.notebooks.read(tasting, seat).sharings).toEqual([]);
    await again.notebooks.share({ ...whose, sharing: 'private', answered: answered('share-002') });
    await again.close();
    const after = new SqliteDatabase(file);
    expect(after.prepare('SELECT count(*) FROM shares').pluck().get()).toBe(0);
    after.close();
  });
});
