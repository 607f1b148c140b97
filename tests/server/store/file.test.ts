import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import SqliteDatabase from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { commandId, pourId, seatId, tastingId } from '../../../core/ids.ts';
import { epochMs } from '../../../core/units.ts';
import { openSqliteStore } from '../../../server/store/sqlite.ts';
import { consentsBefore, type KeptConsents } from '../../../shared/wire/permits.ts';
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

  it('reads a plan once, however many come to the evening, and again when another was saved', async () => {
    const store = openSqliteStore(file);
    const plan = { ...planOf(3), title: 'read once' };
    await store.tastings.create({ ...row, plan });
    const first = store.tastings.find(tasting);
    expect(first?.plan).toEqual(plan);
    expect((await store.tastings.findByCode('ABC234'))?.plan).toBe(first?.plan);
    await store.tastings.savePlan(tasting, { ...plan, title: 'read anew' }, 1);
    expect(store.tastings.find(tasting)?.plan.title).toBe('read anew');
    await store.close();
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

  it('[Q2] tells nothing of who permits what, not by the length of a box, and reads none that was changed', async () => {
    const store = openSqliteStore(file);
    await store.tastings.create(row);
    const [seat, pour] = [seatId('seat-1'), pourId('ash')];
    const lengths = new Set<number>();
    const all: KeptConsents[] = [
      consentsBefore('shared'),
      consentsBefore('counted'),
      { page: { sharing: 'private', parts: [] } },
      { page: { sharing: 'unnamed', parts: ['nose'] }, guess: 'only-for-me', nearest: 'may-be-named' },
    ];
    for (const [index, consents] of all.entries()) {
      const answered = { command: commandId(`share-00${index}`), answer: { ok: true, version: 1 } } as const;
      await store.notebooks.consent({ tasting, seat, pours: [pour], consents, answered });
      const copy = join(folder, `copy-${index}.sqlite`);
      await store.backup(copy);
      expect(readFileSync(copy).includes('only-for-me')).toBe(false);
      const db = new SqliteDatabase(copy);
      lengths.add(Number(db.prepare('SELECT length(value) FROM sealed_notes').pluck().get()));
      db.close();
    }
    expect(lengths.size).toBe(1);
    expect(store.notebooks.consents(tasting, seat)).toEqual([
      { pour, consents: { ...all[0], ...all[2], ...all[3] } },
    ]);
    await store.close();
    const db = new SqliteDatabase(file);
    db.prepare('UPDATE sealed_notes SET value = ?').run(Buffer.alloc(400));
    db.close();
    const again = openSqliteStore(file);
    expect(again.notebooks.readPermitted(tasting, [pour])).toEqual([]);
    expect(again.notebooks.read(tasting, seat).consents).toEqual([]);
    await again.close();
  });
});
