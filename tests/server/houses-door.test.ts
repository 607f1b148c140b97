import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { houseId, tastingId } from '../../core/ids.ts';
import { epochMs } from '../../core/units.ts';
import { backUp } from '../../server/ops/backup.ts';
import { storeIn } from '../../server/ops/data-folder.ts';
import { restore } from '../../server/ops/restore.ts';
import { openSqliteStore } from '../../server/store/sqlite.ts';
import { credentials } from './support/device.ts';
import { errandIn } from './support/errand.ts';
import { House } from './support/house.ts';
import { aPlan } from './support/plans.ts';
import { ServerProcess, temporaryFolder } from './support/process.ts';

let folder: ReturnType<typeof temporaryFolder>;
let server: ServerProcess | undefined;
beforeEach(() => {
  folder = temporaryFolder();
});
afterEach(async () => {
  await server?.signal('SIGKILL');
  folder.remove();
});

const say = (...words: string[]) => errandIn(folder.path, 'house', ...words);
const keyIn = (said: string): string => /#key=([\w-]+)/.exec(said)?.[1] ?? '';

describe('npm run house', () => {
  it('works beside a running server and without one, and lets go whoever is in what it takes away', async () => {
    const added = await say('add', 'The mill', 'language=de');
    expect(added).toMatchObject({ code: 0, stderr: '' });
    expect(added.stdout).toContain('/host?language=de#key=');

    server = new ServerProcess(folder.path);
    const house = new House({ url: (await server.started()).url, stop: async () => undefined });
    const made = await house.plan(aPlan({ title: 'At the mill' }), keyIn(added.stdout));
    const cellar = await say('add', 'The cellar');
    const beside = keyIn(cellar.stdout);
    const listed = () => house.ask('GET', '/api/tastings/list', { key: beside });
    expect(await listed()).toMatchObject({
      status: 200,
      body: { tastings: [], house: { name: 'The cellar' } },
    });
    const id = /is house (\S+)\./.exec(added.stdout)?.[1] ?? '';
    expect((await say('list')).stdout).toContain(`${id}  The mill: evenings 1,`);

    const host = await house.enter(credentials('host', made.tasting, made.hostKey));
    expect(await say('delete', id, 'The cellar')).toMatchObject({
      code: 1,
      stdout: '',
      stderr: expect.stringContaining('write its name after it: The mill'),
    });
    expect((await say('delete', id, 'The mill')).stdout).toContain('gone with 1 evening;');
    await host.until('dismissal', (why) => why === 'tasting-deleted');
    expect((await house.ask('GET', '/api/tastings/list', { key: keyIn(added.stdout) })).status).toBe(401);
    expect((await listed()).status).toBe(200);
    host.close();
  }, 60_000);
});

describe('a backup of before', () => {
  it('brings back no house that was deleted since, and no evening of it', async () => {
    const of = (name: string) => ({
      house: houseId(name),
      name,
      keyHash: `hash of the ${name}`,
      createdAt: epochMs(5),
      open: false,
      limits: { evenings: null, seats: null, bytes: null },
      ways: { language: null, volumeUnit: null },
    });
    const opened = () => openSqliteStore(storeIn(folder.path));
    const before = opened();
    for (const name of ['mill', 'cellar']) {
      await before.houses.add(of(name));
      const evening = {
        tasting: tastingId(`${name}1`),
        code: `${name.slice(0, 4).toUpperCase()}2`,
        revision: 1,
      };
      await before.tastings.create({
        ...evening,
        plan: aPlan(),
        createdAt: epochMs(9),
        house: houseId(name),
      });
    }
    await before.close();
    const file = join(folder.path, 'copy.db');
    await backUp(folder.path, file);
    const since = opened();
    await since.houses.remove(houseId('mill'));
    await since.close();
    await restore(folder.path, file, { now: new Date(0) });
    const after = opened();
    expect(await after.houses.list()).toEqual([of('cellar')]);
    expect((await after.tastings.list()).map(({ tasting }) => tasting)).toEqual(['cellar1']);
    expect(after.tastings.summary(tastingId('mill1'))).toBeUndefined();
    await after.close();
  });
});
