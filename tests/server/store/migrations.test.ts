import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import SqliteDatabase, { type Database } from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { pourId, seatId, tastingId } from '../../../core/ids.ts';
import { firstTables } from '../../../server/store/first-tables.ts';
import { migrate } from '../../../server/store/migrate.ts';
import { migrations } from '../../../server/store/migrations.ts';
import { openSqliteStore } from '../../../server/store/sqlite.ts';
import { consentsBefore } from '../../../shared/wire/permits.ts';
import { planOf } from '../../support/plans.ts';

let folder: string;
let file: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'store-'));
  file = join(folder, 'store.sqlite');
});
afterEach(() => rmSync(folder, { recursive: true }));

const tasting = tastingId('harvest');

/** What the four files that all called themselves version 1 lacked, newest first. */
const early: Record<string, (db: Database) => void> = {
  'as it was released': () => undefined,
  'before photos and surveys': (db) => db.exec('DROP TABLE photos; DROP TABLE surveys'),
  'before sharing had three choices': (db) =>
    db.exec('DROP TABLE photos; DROP TABLE surveys; ALTER TABLE shares DROP COLUMN sharing'),
  'before small documents': (db) =>
    db.exec(
      'DROP TABLE photos; DROP TABLE surveys; DROP TABLE documents; ALTER TABLE shares DROP COLUMN sharing',
    ),
};

function fileOfVersion1(lacking: (db: Database) => void): void {
  const db = new SqliteDatabase(file);
  db.exec(firstTables);
  lacking(db);
  db.prepare('INSERT INTO tastings VALUES (?, ?, ?, 1, 1000)').run(
    tasting,
    'ABC234',
    JSON.stringify(planOf(3)),
  );
  const shared = db.prepare('SELECT count(*) FROM pragma_table_info(?)').pluck().get('shares') === 4;
  db.prepare(`INSERT INTO shares VALUES ('harvest', 'seat-1', 'ash'${shared ? ", 'shared'" : ''})`).run();
  db.pragma('user_version = 1');
  db.close();
}

const look = <Value>(path: string, sql: string): Value[] => {
  const db = new SqliteDatabase(path);
  try {
    return db.prepare<[], Value>(sql).pluck().all();
  } finally {
    db.close();
  }
};
const shapeOf = (path: string) =>
  look<string>(path, 'SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY name').map((sql) =>
    sql.replaceAll(/[\s"]+/g, ''),
  );

describe('a file of an earlier version', () => {
  for (const [name, lacking] of Object.entries(early)) {
    it(`becomes one of today with all that was in it: ${name}`, async () => {
      fileOfVersion1(lacking);
      const store = openSqliteStore(file);
      expect(store.tastings.find(tasting)?.code).toBe('ABC234');
      expect(store.notebooks.read(tasting, seatId('seat-1')).consents).toEqual([
        { pour: pourId('ash'), consents: consentsBefore('shared') },
      ]);
      await store.surveys.answer(tasting, 'respondent', {}, 400);
      await store.documents.save(tasting, 'pouring', {}, 0);
      await store.close();
      const fresh = join(folder, 'fresh.sqlite');
      await openSqliteStore(fresh).close();
      expect(shapeOf(file)).toEqual(shapeOf(fresh));
      expect(look(file, 'PRAGMA user_version')).toEqual([migrations.length]);
    });
  }

  it('is copied aside once, before the first change, and says so', async () => {
    fileOfVersion1(() => undefined);
    const store = openSqliteStore(file);
    const copy = `${file}.version-1`;
    expect(store.upgrade).toEqual({ from: 1, to: migrations.length, copy });
    await store.tastings.remove(tasting);
    await store.close();
    expect(look(copy, 'PRAGMA user_version')).toEqual([1]);
    expect(look(copy, 'SELECT code FROM tastings')).toEqual(['ABC234']);
    const again = openSqliteStore(file);
    expect(again.upgrade).toBeUndefined();
    await again.close();
    expect(readdirSync(folder).filter((each) => each.includes('version'))).toEqual([
      'store.sqlite.version-1',
    ]);
  });

  it('that is put back and upgraded again never writes over the first copy', async () => {
    for (const copy of [`${file}.version-1`, `${file}.version-1-2`]) {
      rmSync(file, { force: true });
      fileOfVersion1(() => undefined);
      const store = openSqliteStore(file);
      expect(store.upgrade?.copy).toBe(copy);
      await store.close();
    }
  });

  it('stays as it was, without a copy too many, when a change fails in its middle', () => {
    fileOfVersion1((db) =>
      db.exec('ALTER TABLE shares DROP COLUMN sharing; CREATE TABLE shares_now (seat TEXT)'),
    );
    const before = shapeOf(file);
    expect(() => openSqliteStore(file)).toThrow(/could not be/);
    expect(shapeOf(file)).toEqual(before);
    expect(look(file, 'PRAGMA user_version')).toEqual([1]);
    expect(existsSync(`${file}.version-1`)).toBe(false);
  });
});

it('lets go of a file that has the right number and not the tables', () => {
  fileOfVersion1((db) => db.exec('DROP TABLE notes'));
  const db = new SqliteDatabase(file);
  db.pragma(`user_version = ${migrations.length}`);
  db.close();
  expect(() => openSqliteStore(file)).toThrow(/could not be/);
  expect(look(file, 'SELECT code FROM tastings')).toEqual(['ABC234']);
});

describe('migrations', () => {
  const noted = (name: string, run: (db: Database) => void = () => undefined) => ({ name, run });

  it('run once each, in order, and a failed one takes nothing of the others back', () => {
    const db = new SqliteDatabase(':memory:');
    const ran: string[] = [];
    const first = noted('first', (on) => {
      ran.push('first');
      on.exec('CREATE TABLE kept (n INTEGER)');
    });
    const broken = noted('broken', (on) => {
      ran.push('broken');
      on.exec('CREATE TABLE half (n INTEGER)');
      throw new Error('in its middle');
    });
    expect(() => migrate(db, [first, broken])).toThrow('in its middle');
    expect(db.pragma('user_version', { simple: true })).toBe(1);
    expect(db.prepare('SELECT name FROM sqlite_schema').pluck().all()).toEqual(['kept']);
    const mended = noted('mended', () => ran.push('mended'));
    migrate(db, [first, mended]);
    migrate(db, [first, mended]);
    expect(ran).toEqual(['first', 'broken', 'mended']);
    db.close();
  });

  it('may replace a table that others point at, and may not leave a row that points nowhere', () => {
    const db = new SqliteDatabase(':memory:');
    const tables = noted('tables', (on) =>
      on.exec(`CREATE TABLE parents (id INTEGER PRIMARY KEY);
        CREATE TABLE children (parent REFERENCES parents ON DELETE CASCADE);
        INSERT INTO parents VALUES (1); INSERT INTO children VALUES (1)`),
    );
    const replaced = noted('replaced', (on) =>
      on.exec(`CREATE TABLE parents_now (id INTEGER PRIMARY KEY, name TEXT);
        INSERT INTO parents_now SELECT id, 'Ilse' FROM parents; DROP TABLE parents;
        ALTER TABLE parents_now RENAME TO parents`),
    );
    migrate(db, [tables, replaced]);
    expect(db.prepare('SELECT count(*) FROM children').pluck().get()).toBe(1);
    const orphaning = noted('orphaning', (on) => on.exec('DELETE FROM parents'));
    expect(() => migrate(db, [tables, replaced, orphaning])).toThrow(/"orphaning"/);
    expect(db.prepare('SELECT count(*) FROM parents').pluck().get()).toBe(1);
    db.close();
  });

  it('leave a file of a newer server and somebody else’s database alone, with a sentence', () => {
    const db = new SqliteDatabase(file);
    db.exec('CREATE TABLE recipes (name TEXT)');
    db.close();
    expect(() => openSqliteStore(file)).toThrow(/not a store of Quietpour/);
    const newer = new SqliteDatabase(file);
    newer.pragma(`user_version = ${migrations.length + 1}`);
    newer.close();
    expect(() => openSqliteStore(file)).toThrow(/newer Quietpour .*start that version instead/);
    expect(look(file, 'SELECT name FROM sqlite_schema')).toEqual(['recipes']);
  });
});
