import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { hashOf } from '../../server/access/keys.ts';
import { backUp } from '../../server/ops/backup.ts';
import { doorOf, storeIn } from '../../server/ops/data-folder.ts';
import { openDoor } from '../../server/ops/door.ts';
import { restore } from '../../server/ops/restore.ts';
import { openSqliteStore } from '../../server/store/sqlite.ts';
import { credentials } from './support/device.ts';
import { errandIn } from './support/errand.ts';
import { House, houseKey as keyOfTests, listeningLog } from './support/house.ts';
import { ServerProcess, temporaryFolder } from './support/process.ts';

let folder: ReturnType<typeof temporaryFolder>;
let running: ServerProcess[] = [];
beforeEach(() => {
  folder = temporaryFolder();
});
afterEach(async () => {
  await Promise.all(running.map((each) => each.signal('SIGKILL')));
  running = [];
  folder.remove();
});

const data = () => join(folder.path, 'data');

async function start(): Promise<{ server: ServerProcess; house: House; houseKey: string }> {
  const server = new ServerProcess(data());
  running.push(server);
  const { url, houseKey } = await server.started();
  return { server, house: new House({ url, stop: async () => undefined }), houseKey };
}

const errand = (...words: string[]) => errandIn(data(), ...words);

/** The same without a process of its own. */
async function openHere() {
  mkdirSync(data(), { recursive: true });
  const store = openSqliteStore(storeIn(data()));
  const house = await House.open({ store });
  const closeDoor = await openDoor({
    folder: data(),
    store,
    houses: async (asked) => asked.join(' '),
    log: listeningLog(),
  });
  return { house, close: () => closeDoor().then(() => house.close()) };
}

const sentenceOf = (promise: Promise<string>): Promise<string> =>
  promise.catch((error: unknown) => (error instanceof Error ? error.message : 'no error'));

async function evening(house: House, houseKey: string) {
  const made = await house.plan(undefined, houseKey);
  const host = await house.host(made);
  await host.host({ type: 'OpenDoors' });
  const noor = await house.guest(made, 'Noor');
  await host.host({ type: 'JumpTo', cue: 'one/first/look' });
  return { made, noor };
}

describe('a backup', () => {
  it('is taken while the server runs, and brings everything back', async () => {
    const { server, house, houseKey } = await start();
    const { made, noor } = await evening(house, houseKey);
    expect(await noor.save({ value: 'before the backup' })).toMatchObject({ ok: true });
    const file = join(folder.path, 'copy.db');
    // Two at once: each process keeps its own account of what it has not finished.
    const others = join(folder.path, 'other.db');
    for (const exit of await Promise.all([errand('backup', file), errand('backup', others)])) {
      expect(exit).toMatchObject({
        code: 0,
        stderr: '',
        stdout: expect.stringMatching(/holds 1 tasting and was read back/),
      });
    }
    expect(statSync(file).mode & 0o077).toBe(0);
    expect(readdirSync(data()).filter((name) => /part$|unfinished/.test(name))).toEqual([]);
    expect(await noor.save({ value: 'after the backup', base: 1 })).toMatchObject({ ok: true, revision: 2 });
    expect((await errand('restore', file)).stderr).toMatch(/^A server uses this store: stop it/);
    await server.signal('SIGTERM');

    expect(await errand('restore', file)).toMatchObject({
      code: 0,
      stdout: expect.stringMatching(/1 tasting is back; start the server again.*kept in/),
    });
    const again = await start();
    const back = await again.house.enter(credentials('guest', made.tasting, noor.key));
    expect((await back.until('notebook')).entries).toMatchObject([{ value: 'before the backup' }]);
    // What was there is set aside, whole.
    const aside = readdirSync(data()).find((name) => /\.before-[\w-]+$/.test(name)) ?? '';
    const old = openSqliteStore(join(data(), aside));
    expect(old.notebooks.read(made.tasting, noor.seat).entries).toMatchObject([
      { value: 'after the backup' },
    ]);
    await old.close();
    back.close();
  });

  it('is taken while the server is stopped, and never over another', async () => {
    const { house, close } = await openHere();
    const { made, noor } = await evening(house, keyOfTests);
    await noor.save({ value: 'kept' });
    await close();
    const file = join(folder.path, 'copy.db');
    expect(await backUp(data(), file)).toMatch(/holds 1 tasting and was read back/);
    // Neither a word nor a key that opens one is in it.
    expect(readFileSync(file).includes('kept')).toBe(false);
    expect(await restore(data(), file, { now: new Date(0) })).toMatch(/1 tasting is back/);
    const back = openSqliteStore(storeIn(data()));
    expect(back.notebooks.read(made.tasting, noor.seat).entries).toMatchObject([{ value: 'kept' }]);
    await back.close();
    await expect(backUp(data(), file)).rejects.toThrow(/exists already/);
    expect(readdirSync(folder.path).sort()).toEqual(['copy.db', 'data']);
  });

  it('goes through a door of its own even where a killed server left one', async () => {
    mkdirSync(data());
    writeFileSync(doorOf(data()), '');
    const { close } = await openHere();
    expect(await backUp(data(), join(folder.path, 'copy.db'))).toMatch(/holds 0 tastings/);
    await close();
    expect(readdirSync(data()).sort()).toEqual(['notes.key', 'quietpour.db', 'quietpour.db.keys']);
  });

  it('needs the server to be stopped where no door can be opened', async () => {
    mkdirSync(data());
    const store = openSqliteStore(storeIn(data()));
    await expect(backUp(data(), join(folder.path, 'copy.db'))).rejects.toThrow(/stop it, then back up again/);
    await store.close();
  });

  it('says in a sentence what stands in the way', async () => {
    const path = (name: string) => join(folder.path, name);
    writeFileSync(path('list.db'), 'eggs, flour, butter. '.repeat(500));
    const whole = openSqliteStore(path('whole.db'));
    await whole.backup(path('copied.db'));
    await whole.close();
    const bytes = readFileSync(path('copied.db'));
    writeFileSync(path('torn.db'), bytes.subarray(0, bytes.length / 2));
    expect(await sentenceOf(backUp(data(), path('copy.db')))).toMatch(/^There is no store in /);
    for (const name of ['list.db', 'torn.db']) {
      expect(await sentenceOf(restore(data(), path(name), { now: new Date(0) }))).toMatch(
        /is not a sound store/,
      );
    }
    expect(await sentenceOf(restore(data(), path('none.db'), { now: new Date(0) }))).toMatch(
      /name the backup/,
    );
    expect(existsSync(storeIn(data()))).toBe(false);
    const { close } = await openHere();
    await close();
    expect(await sentenceOf(backUp(data(), path('none/copy.db')))).toMatch(/cannot be written/);
    const nothing = await errand('brew');
    expect(nothing).toMatchObject({
      code: 1,
      stderr: expect.stringMatching(/^Say "backup FILE", "restore FILE" or "house"/),
    });
    expect(nothing.stderr.trim().split('\n')).toHaveLength(1);
  });

  it('takes the place of a store that is damaged', async () => {
    const first = await openHere();
    await evening(first.house, keyOfTests);
    const file = join(folder.path, 'copy.db');
    await backUp(data(), file);
    await first.close();
    writeFileSync(storeIn(data()), 'spilled wine '.repeat(1000));
    expect(() => openSqliteStore(storeIn(data()))).toThrow(/^The store is/);
    expect(await restore(data(), file, { now: new Date(0) })).toMatch(/1 tasting is back/);
    const again = await openHere();
    const list = await again.house.ask('GET', '/api/tastings', { key: keyOfTests });
    expect(list.body).toHaveLength(1);
    await again.close();
  });

  it('[Q7] brings back nothing that was forgotten or deleted since, and no key that opens it', async () => {
    const { house, close } = await openHere();
    const { made, noor } = await evening(house, keyOfTests);
    const tomas = await house.guest(made, 'Tomas');
    await noor.save({ value: 'canary-of-the-cellar' });
    await tomas.save({ value: 'robin-of-the-yard' });
    const doomed = await house.plan(undefined, keyOfTests);
    const file = join(folder.path, 'copy.db');
    await backUp(data(), file);
    const path = `/api/keepsake/${made.tasting}`;
    expect(await house.ask('DELETE', path, { key: noor.key })).toMatchObject({ status: 204 });
    await house.ask('DELETE', `/api/tastings/${doomed.tasting}`, { key: doomed.hostKey });
    await close();
    const forgotten = readFileSync(`${storeIn(data())}.forgotten`, 'utf8');
    // Ids only.
    const ids = new Set(forgotten.split('\n').filter((line) => line !== ''));
    const seat = { tasting: made.tasting, seat: noor.seat };
    expect([...ids].map((line) => JSON.parse(line))).toEqual([seat, { tasting: doomed.tasting, seat: null }]);

    expect(await restore(data(), file, { now: new Date(0) })).toMatch(
      /^1 tasting is back; .* 1 that had been deleted since the backup stayed deleted/,
    );
    const keys = readFileSync(`${storeIn(data())}.keys`);
    const store = openSqliteStore(storeIn(data()));
    expect(store.tastings.find(doomed.tasting)).toBeUndefined();
    expect(store.notebooks.read(made.tasting, noor.seat).entries).toEqual([]);
    expect(store.keys.find(hashOf(noor.key))).toBeUndefined();
    expect(store.notebooks.read(made.tasting, tomas.seat).entries).toMatchObject([
      { value: 'robin-of-the-yard' },
    ]);
    await store.close();
    // Two guests wrote, and one key came back.
    expect(keys.toString('latin1').split('key\n').length - 1).toBe(1);
  });

  it('opens only with the key of its server; without it the rest comes back and says so', async () => {
    const { house, close } = await openHere();
    const { made, noor } = await evening(house, keyOfTests);
    await noor.save({ value: 'canary-of-the-cellar' });
    const file = join(folder.path, 'copy.db');
    expect(await backUp(data(), file)).toMatch(/open only with .*notes\.key, which is not in it/);
    await close();
    for (const name of readdirSync(data())) rmSync(join(data(), name));
    expect(await sentenceOf(restore(data(), file, { now: new Date(0) }))).toMatch(
      /put that file at .*notes\.key/,
    );
    writeFileSync(join(data(), 'notes.key'), `${Buffer.alloc(32, 9).toString('base64url')}\n`);
    expect(await sentenceOf(restore(data(), file, { now: new Date(0) }))).toMatch(
      /put that file at .*notes\.key/,
    );
    expect(existsSync(storeIn(data()))).toBe(false);
    expect(await restore(data(), file, { now: new Date(0), withoutNotes: true })).toMatch(
      /1 tasting is back/,
    );
    const store = openSqliteStore(storeIn(data()));
    expect(store.notebooks.read(made.tasting, noor.seat).entries).toEqual([]);
    expect(store.sessions.version(made.tasting)).toBeGreaterThan(0);
    await store.close();
  });

  it('that was killed leaves its half behind only until the next start or backup', async () => {
    const { close } = await openHere();
    const half = join(folder.path, 'half.db.part');
    const mine = join(folder.path, 'shopping.txt');
    const marks = (process = 2 ** 30): void => {
      for (const [at, part] of [half, mine].entries())
        writeFileSync(join(data(), `${process}-${at}.unfinished-backup`), part);
    };
    for (const path of [half, mine]) writeFileSync(path, 'canary-of-the-cellar');
    // Another one is still being written: the process that runs these tests in a worker's place.
    marks(process.ppid);
    await backUp(data(), join(folder.path, 'beside.db'));
    expect(existsSync(half)).toBe(true);
    marks();
    await backUp(data(), join(folder.path, 'copy.db'));
    // And nothing else that somebody put there.
    expect([existsSync(half), existsSync(mine)]).toEqual([false, true]);
    await close();
    writeFileSync(half, 'canary-of-the-cellar');
    marks();
    await (await openHere()).close();
    expect(existsSync(half)).toBe(false);
    expect(readdirSync(data()).filter((name) => name.startsWith(`${2 ** 30}`))).toEqual([]);
  });
});
