import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { backUp } from '../../server/ops/backup.ts';
import { openBackupDoor } from '../../server/ops/backup-door.ts';
import { backupDoorOf, storeIn } from '../../server/ops/data-folder.ts';
import { restore } from '../../server/ops/restore.ts';
import { openSqliteStore } from '../../server/store/sqlite.ts';
import { credentials } from './support/device.ts';
import { House, houseKey as keyOfTests, listeningLog } from './support/house.ts';
import { type Exit, ServerProcess, temporaryFolder } from './support/process.ts';

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

/** As `npm run backup` and `npm run restore` do, from the sources. */
function errand(...words: string[]): Promise<Exit> {
  const root = new URL('../..', import.meta.url).pathname;
  const child = spawn(process.execPath, ['--import', 'tsx', 'server/main.ts', ...words], {
    cwd: root,
    env: { ...process.env, QUIETPOUR_DATA: data() },
  });
  const said = { stdout: '', stderr: '' };
  child.stdout.on('data', (text) => {
    said.stdout += String(text);
  });
  child.stderr.on('data', (text) => {
    said.stderr += String(text);
  });
  return new Promise((resolve) => child.once('close', (code) => resolve({ code, ...said })));
}

/** The same without a process of its own. */
async function openHere() {
  mkdirSync(data(), { recursive: true });
  const store = openSqliteStore(storeIn(data()));
  const house = await House.open({ store });
  const closeDoor = await openBackupDoor(data(), store, listeningLog());
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
    expect(await errand('backup', file)).toMatchObject({
      code: 0,
      stderr: '',
      stdout: expect.stringMatching(/holds 1 tasting and was read back/),
    });
    expect(statSync(file).mode & 0o077).toBe(0);
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
    const aside = readdirSync(data()).find((name) => name.includes('.before-')) ?? '';
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
    const copy = openSqliteStore(file);
    expect(copy.notebooks.read(made.tasting, noor.seat).entries).toMatchObject([{ value: 'kept' }]);
    await copy.close();
    await expect(backUp(data(), file)).rejects.toThrow(/exists already/);
    expect(readdirSync(folder.path).sort()).toEqual(['copy.db', 'data']);
  });

  it('goes through a door of its own even where a killed server left one', async () => {
    mkdirSync(data());
    writeFileSync(backupDoorOf(data()), '');
    const { close } = await openHere();
    expect(await backUp(data(), join(folder.path, 'copy.db'))).toMatch(/holds 0 tastings/);
    await close();
    expect(readdirSync(data())).toEqual(['quietpour.db']);
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
      expect(await sentenceOf(restore(data(), path(name), new Date(0)))).toMatch(/is not a sound store/);
    }
    expect(await sentenceOf(restore(data(), path('none.db'), new Date(0)))).toMatch(/name the backup/);
    expect(existsSync(storeIn(data()))).toBe(false);
    const { close } = await openHere();
    await close();
    expect(await sentenceOf(backUp(data(), path('none/copy.db')))).toMatch(/cannot be written/);
    const nothing = await errand('brew');
    expect(nothing).toMatchObject({ code: 1, stderr: expect.stringMatching(/^Say "backup FILE" or/) });
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
    expect(await restore(data(), file, new Date(0))).toMatch(/1 tasting is back/);
    const again = await openHere();
    const list = await again.house.ask('GET', '/api/tastings', { key: keyOfTests });
    expect(list.body).toHaveLength(1);
    await again.close();
  });
});
