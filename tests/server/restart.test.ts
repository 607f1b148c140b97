import { chmodSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { credentials } from './support/device.ts';
import { House } from './support/house.ts';
import { aPlan } from './support/plans.ts';
import { ServerProcess, temporaryFolder } from './support/process.ts';

// Processes start slowly on a busy machine; nothing here is measured.
vi.setConfig({ testTimeout: 90_000 });

let folder: ReturnType<typeof temporaryFolder>;
let running: ServerProcess[] = [];
beforeEach(() => {
  folder = temporaryFolder();
  running = [];
});
afterEach(async () => {
  await Promise.all(running.map((each) => each.signal('SIGKILL')));
  folder.remove();
});

function start(environment: Record<string, string> = {}, data = folder.path): ServerProcess {
  const server = new ServerProcess(data, environment);
  running.push(server);
  return server;
}

async function houseOf(server: ServerProcess): Promise<{ house: House; houseKey: string }> {
  const { url, houseKey } = await server.started();
  return { house: new House({ url, stop: async () => undefined }), houseKey };
}

describe('a server that is killed', () => {
  it('[P7] goes on where it was, with every acknowledged step and note, and answers old commands as before', async () => {
    const first = start();
    const before = await houseOf(first);
    const made = await before.house.plan(aPlan(), before.houseKey);
    const host = await before.house.host(made);
    await host.host({ type: 'OpenDoors' });
    const noor = await before.house.guest(made, 'Noor');
    const stepped = await host.host({ type: 'JumpTo', cue: 'one/first/look' }, 'the-last-step');
    const saved = await noor.save({ id: 'the-last-note', value: 'apples' });
    const stage = await noor.until('stage', ({ version }) => stepped.ok && version === stepped.version);
    await first.signal('SIGKILL');

    const after = await houseOf(start());
    expect(after.houseKey).toBe(before.houseKey);
    const hostAgain = await after.house.host(made);
    const noorAgain = await after.house.enter(credentials('guest', made.tasting, noor.key));
    expect(await noorAgain.until('stage')).toEqual(stage);
    expect((await noorAgain.until('notebook')).entries).toMatchObject([{ value: 'apples', revision: 1 }]);
    expect(await hostAgain.host({ type: 'JumpTo', cue: 'one/first/look' }, 'the-last-step')).toEqual(stepped);
    expect(await noorAgain.save({ id: 'the-last-note', value: 'apples' })).toEqual(saved);
    expect((await hostAgain.until('host')).version).toBe(stage.version);
    for (const device of [hostAgain, noorAgain]) device.close();
  });
});

describe('a server that is stopped', () => {
  it('tells devices, says nothing on stderr, and leaves at once', async () => {
    const server = start();
    const { house, houseKey } = await houseOf(server);
    const made = await house.plan(aPlan(), houseKey);
    const host = await house.host(made);
    const exit = server.signal('SIGTERM');
    expect(await host.dismissed()).toBe('server-stopping');
    expect(await exit).toMatchObject({ code: 0, stderr: '' });
  });
});

describe('a start that cannot be', () => {
  it('keeps the key and the notes to the user who runs the server', async () => {
    await start().started();
    for (const name of ['house.key', 'quietpour.db']) {
      expect(statSync(join(folder.path, name)).mode & 0o077).toBe(0);
    }
    expect(readFileSync(join(folder.path, 'house.key'), 'utf8').trim().length).toBeGreaterThanOrEqual(32);
  });

  it('refuses a second server on the same store', async () => {
    await start().started();
    const { code, stderr } = await start().exited;
    expect({ code, stderr }).toMatchObject({
      code: 1,
      stderr: expect.stringMatching(/^Another server uses this store/),
    });
  });

  it('says who has the port, and how to choose another', async () => {
    const { url } = await start().started();
    const { port } = new URL(url);
    const second = await start({ PORT: port }, join(folder.path, 'second')).exited;
    expect(second).toMatchObject({ code: 1, stdout: '' });
    expect(second.stderr).toMatch(/^Port \d+ is taken by another Quietpour.*PORT=\d+ npm start/);

    const stranger = createServer((_request, response) => response.end('hello'));
    await new Promise<void>((resolve) => stranger.listen(0, '127.0.0.1', resolve));
    const taken = String((stranger.address() as AddressInfo).port);
    const third = await start({ PORT: taken }, join(folder.path, 'third')).exited;
    expect(third.stderr).toMatch(/is taken by another program/);
    await new Promise((resolve) => stranger.close(resolve));
  });

  it('says what is wrong with the data folder or a setting, in one line', async () => {
    const damaged = join(folder.path, 'damaged');
    mkdirSync(damaged);
    writeFileSync(join(damaged, 'quietpour.db'), 'this is no database, and never was one. '.repeat(200));
    const file = join(folder.path, 'file');
    writeFileSync(file, '');
    const wrong: [Record<string, string>, string, RegExp][] = [
      [{}, damaged, /^The store is (damaged|not a store)/],
      [{}, join(file, 'below'), /^The data folder .* cannot be written/],
      [{ PORT: 'eighty' }, folder.path, /^PORT must be a number/],
      [{ QUIETPOUR_ORIGINS: 'tasting' }, folder.path, /^QUIETPOUR_ORIGINS must list addresses/],
      [{ QUIETPOUR_TLS_KEY: '/nowhere' }, folder.path, /^For https give both/],
    ];
    const exits = await Promise.all(wrong.map(([environment, data]) => start(environment, data).exited));
    exits.forEach(({ code, stderr }, index) => {
      expect({ code, stderr }).toMatchObject({
        code: 1,
        stderr: expect.stringMatching(wrong[index]?.[2] ?? /$^/),
      });
      expect(stderr.trim().split('\n')).toHaveLength(1);
    });
    chmodSync(file, 0o600);
  });
});
