import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import SqliteDatabase from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { commandId, pourId, seatId, tastingId } from '../../../core/ids.ts';
import { epochMs } from '../../../core/units.ts';
import { firstTables } from '../../../server/store/first-tables.ts';
import { openBox, sealBox } from '../../../server/store/seals/cipher.ts';
import { openSqliteStore, type SqliteStore } from '../../../server/store/sqlite.ts';
import { planOf } from '../../support/plans.ts';

let folder: string;
let file: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'sealed-'));
  file = join(folder, 'quietpour.db');
});
afterEach(() => rmSync(folder, { recursive: true }));

const tasting = tastingId('harvest');
const pour = pourId('ash');
const word = 'canary-of-the-cellar';
const other = 'robin-of-the-yard';

/** Everything in the folder that a store may have written. */
const everything = (): string =>
  readdirSync(folder)
    .map((name) => readFileSync(join(folder, name)).toString('latin1'))
    .join('\n');

let commands = 0;
const write = (store: SqliteStore, seat: string, value: string, revision = 1): Promise<void> => {
  commands += 1;
  const entry = {
    pour,
    field: 'nose',
    value,
    sealedValue: `${value}, sealed`,
    revision,
    savedAt: epochMs(5),
  } as const;
  const answer = { ok: true, revision, value, savedAt: epochMs(5) } as const;
  const answered = { command: commandId(`note-${String(commands).padStart(5, '0')}`), answer };
  return store.notebooks.save({ tasting, seat: seatId(seat), entry, answered });
};
const read = (store: SqliteStore, seat: string): readonly unknown[] =>
  store.notebooks.read(tasting, seatId(seat)).entries.map(({ value }) => value);

async function open(): Promise<SqliteStore> {
  const store = openSqliteStore(file);
  if (store.tastings.find(tasting) === undefined) {
    await store.tastings.create({
      tasting,
      code: 'ABC234',
      plan: planOf(3),
      revision: 1,
      createdAt: epochMs(0),
    });
  }
  return store;
}

describe('[Q7] notes at rest', () => {
  it('are nowhere in words, not while they stand, not overwritten, not in an answer', async () => {
    const store = await open();
    await write(store, 'seat-1', word);
    await write(store, 'seat-1', other, 2);
    expect(everything()).not.toMatch(/canary|robin/);
    await store.close();
    expect(everything()).not.toMatch(/canary|robin/);
    const again = await open();
    expect(again.notebooks.read(tasting, seatId('seat-1')).entries).toEqual([
      { pour, field: 'nose', value: other, sealedValue: `${other}, sealed`, revision: 2, savedAt: 5 },
    ]);
    await again.close();
  });

  it('have a key that only its owner may read', async () => {
    await (await open()).close();
    for (const name of ['notes.key', 'quietpour.db.keys']) {
      expect([name, statSync(join(folder, name)).mode & 0o777]).toEqual([name, 0o600]);
    }
  });

  it('open in no other place than where they were put', () => {
    const key = Buffer.alloc(32, 7);
    const box = sealBox(key, Buffer.from(word), 'seat-1, nose');
    expect(openBox(key, box, 'seat-1, nose')?.toString()).toBe(word);
    expect(openBox(key, box, 'seat-2, nose')).toBeUndefined();
    expect(openBox(Buffer.alloc(32, 8), box, 'seat-1, nose')).toBeUndefined();
    for (let at = 0; at < box.length; at += 1) {
      const bent = Buffer.from(box);
      bent.writeUInt8(bent.readUInt8(at) ^ 1, at);
      expect(openBox(key, bent, 'seat-1, nose')).toBeUndefined();
    }
    expect(openBox(key, box.subarray(0, 20), 'seat-1, nose')).toBeUndefined();
  });

  it('are never mistaken for another’s, also when somebody moves rows about in the file', async () => {
    const store = await open();
    await write(store, 'seat-1', word);
    await write(store, 'seat-2', other);
    await store.close();
    const db = new SqliteDatabase(file);
    db.exec("UPDATE sealed_notes SET pour = 'elm' WHERE notebook = 'seat-2'");
    db.exec(
      "UPDATE sealed_notes SET value = (SELECT value FROM sealed_notes WHERE notebook = 'seat-2') WHERE notebook = 'seat-1'",
    );
    db.close();
    const again = await open();
    expect([read(again, 'seat-1'), read(again, 'seat-2')]).toEqual([[], []]);
    await again.close();
  });

  it('are gone with their key when a guest is forgotten, and the others’ are not', async () => {
    const store = await open();
    await write(store, 'seat-1', word);
    await write(store, 'seat-2', other);
    const keys = () => readFileSync(`${file}.keys`);
    const [mine, theirs] = [keys().subarray(0, 96), keys().subarray(96, 192)];
    await store.notebooks.forget(tasting, seatId('seat-1'));
    expect(keys().includes(mine.subarray(0, 92))).toBe(false);
    expect(keys().includes(theirs)).toBe(true);
    // Whatever old bytes still lie about: there is nothing to open them with.
    expect(everything().includes(mine.subarray(32, 92).toString('latin1'))).toBe(false);
    expect([read(store, 'seat-1'), read(store, 'seat-2')]).toEqual([[], [other]]);
    await store.tastings.remove(tasting);
    expect(keys().every((byte) => byte === 0)).toBe(true);
    await store.close();
  });

  it('lose the key of a forgetting that a power cut broke off', async () => {
    const store = await open();
    await write(store, 'seat-1', word);
    await store.close();
    const db = new SqliteDatabase(file);
    db.exec('DELETE FROM sealed_notes');
    db.close();
    await (await open()).close();
    expect(readFileSync(`${file}.keys`).every((byte) => byte === 0)).toBe(true);
  });

  it('are not written over with a new key when the key is gone or is another’s: the server says so', async () => {
    const store = await open();
    await write(store, 'seat-1', word);
    await store.close();
    const key = readFileSync(join(folder, 'notes.key'));
    rmSync(join(folder, 'notes.key'));
    expect(() => openSqliteStore(file)).toThrow(/notes\.key is gone: put the file back/);
    writeFileSync(join(folder, 'notes.key'), `${Buffer.alloc(32, 3).toString('base64url')}\n`);
    expect(() => openSqliteStore(file)).toThrow(/another notes\.key/);
    writeFileSync(join(folder, 'notes.key'), 'a shopping list');
    expect(() => openSqliteStore(file)).toThrow(/does not hold the key of the notes/);
    writeFileSync(join(folder, 'notes.key'), key);
    const again = await open();
    expect(read(again, 'seat-1')).toEqual([word]);
    await again.close();
  });

  it('outlive a key that was half written when the power went', async () => {
    const store = await open();
    await write(store, 'seat-1', word);
    await store.close();
    const slots = readFileSync(`${file}.keys`);
    writeFileSync(`${file}.keys`, Buffer.concat([slots, slots.subarray(0, 40)]));
    const again = await open();
    await write(again, 'seat-2', other);
    await again.close();
    const last = await open();
    expect([read(last, 'seat-1'), read(last, 'seat-2')]).toEqual([[word], [other]]);
    await last.close();
  });

  it('of a release that kept them in plain words are sealed, and no word stays in the file', async () => {
    const db = new SqliteDatabase(file);
    db.exec(firstTables);
    db.prepare('INSERT INTO tastings VALUES (?, ?, ?, 1, 1000)').run(
      tasting,
      'ABC234',
      JSON.stringify(planOf(3)),
    );
    const note = db.prepare("INSERT INTO notes VALUES (?, ?, 'ash', ?, ?, ?, 3, 5)");
    const answer = db.prepare('INSERT INTO answers VALUES (?, ?, ?, ?)');
    for (let seat = 0; seat < 40; seat += 1) {
      for (const field of ['nose', 'palate']) {
        const value = JSON.stringify(`${word} ${seat} ${field}`);
        note.run(tasting, `seat-${seat}`, field, value, field === 'nose' ? JSON.stringify(other) : null);
        const said = `{"ok":true,"revision":3,"value":${value},"savedAt":5}`;
        answer.run(tasting, `seat-${seat}`, `command-${field}`, said);
      }
    }
    db.prepare("INSERT INTO keys VALUES ('aabbccddeeff0011', ?, 'seat', 'seat-1', NULL)").run(tasting);
    db.exec("DELETE FROM notes WHERE seat = 'seat-30'");
    db.pragma('user_version = 1');
    db.close();
    expect(everything()).toMatch(/canary/);

    const store = openSqliteStore(file);
    // The copy of before is a backup like any other, and is told of.
    rmSync(store.upgrade?.copy ?? '');
    expect(everything()).not.toMatch(/canary|robin/);
    expect(store.notebooks.read(tasting, seatId('seat-1')).entries).toEqual([
      { pour, field: 'nose', value: `${word} 1 nose`, sealedValue: other, revision: 3, savedAt: 5 },
      { pour, field: 'palate', value: `${word} 1 palate`, revision: 3, savedAt: 5 },
    ]);
    expect(store.notebooks.answerTo(tasting, seatId('seat-1'), commandId('command-nose'))).toEqual({
      revision: 3,
    });
    // Who had a seat's key had its notes, and goes on having them.
    expect(store.keys.find('aabbccddeeff0011')).toMatchObject({ device: { opens: true, came: 'door' } });
    await store.close();
    expect(existsSync(`${file}-wal`)).toBe(false);
    expect(everything()).not.toMatch(/canary|robin/);
  });
});
