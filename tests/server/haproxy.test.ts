import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync, writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { openPostgresStore, type PostgresStore } from '../../server/store/postgres/postgres.ts';
import { freePort, type PostgresServer, startPostgres } from '../support/postgres-server.ts';
import { credentials } from './support/device.ts';
import { House, houseKey } from './support/house.ts';
import { temporaryFolder } from './support/process.ts';

const there = spawnSync('haproxy', ['-v']).status === 0;
if (!there)
  console.log(
    'There is no HAProxy on this machine, so that its example is not tried: apt-get install haproxy.',
  );

let postgres: PostgresServer | undefined;
let proxy: ChildProcess | undefined;
const folder = temporaryFolder();
const houses: House[] = [];
beforeAll(async () => {
  if (there) postgres = await startPostgres();
}, 60_000);
afterAll(async () => {
  if (proxy !== undefined && proxy.exitCode === null) {
    proxy.kill('SIGKILL');
    await once(proxy, 'exit');
  }
  for (const house of houses) await house.close();
  await postgres?.stop();
  folder.remove();
});

const socket = join(folder.path, 'admin.sock');
/** By the names of the example: UP; NOLB while it gets no new devices and keeps those it has; DOWN. */
async function standing(): Promise<Readonly<Record<string, string>>> {
  const line = connect(socket);
  line.write('show stat\n');
  const rows = (await text(line)).split('\n').map((each) => each.split(','));
  const status = rows[0]?.indexOf('status') ?? -1;
  const servers = rows.filter(([backend, name]) => backend === 'processes' && name !== 'BACKEND');
  return Object.fromEntries(servers.map((each) => [each[1], each[status]]));
}

/** The example as it stands, with the addresses of this test. */
async function startProxy(processes: readonly House[]): Promise<string> {
  const port = await freePort();
  const lines = readFileSync(new URL('../../server/ops/haproxy.cfg.example', import.meta.url), 'utf8').split(
    '\n',
  );
  const own = lines.flatMap((line) => {
    if (/^\s*bind :/.test(line)) return [`    bind 127.0.0.1:${port}`];
    if (/^\s*server /.test(line)) return [];
    return line === 'global' ? [line, `    stats socket ${socket}`] : [line];
  });
  const named = processes.map(
    ({ url }, at) => `    server ${['one', 'two'][at]} 127.0.0.1:${new URL(url).port}`,
  );
  const file = join(folder.path, 'haproxy.cfg');
  writeFileSync(file, [...own, ...named, ''].join('\n'));
  proxy = spawn('haproxy', ['-db', '-f', file], { stdio: 'ignore' });
  await expect.poll(standing, { timeout: 20_000 }).toEqual({ one: 'UP', two: 'UP' });
  return `http://127.0.0.1:${port}`;
}

it.skipIf(!there)(
  'gets no new devices to a process that ends, keeps those that are there, and brings them to the next',
  { timeout: 90_000 },
  async () => {
    const url = (await postgres?.database()) ?? '';
    const process = async (): Promise<{ house: House; store: PostgresStore }> => {
      const store = await openPostgresStore({ url, notesKey: Buffer.alloc(32, 7), houseKey });
      const cluster = {
        others: store.cluster,
        address: (port: number) => `127.0.0.1:${port}`,
        seenWithin: 4000,
      };
      const house = await House.open({ store, cluster });
      houses.push(house);
      return { house, store };
    };
    const both = [await process(), await process()] as const;
    const origin = await startProxy(both.map(({ house }) => house));
    const visitors = new House({ url: origin, stop: async () => undefined });
    const { made, host, noor } = await visitors.evening();
    const at = both.findIndex(({ store }) => store.cluster.figures().owned === 1);
    const [ending, next] = at === 0 ? both : [both[1], both[0]];
    const moved: string[] = [];
    noor.socket.on('moved', () => void moved.push('noor'));
    const ended = ending.house.close();
    houses.splice(houses.indexOf(ending.house), 1);
    const names = at === 0 ? { one: 'NOLB', two: 'UP' } : { one: 'UP', two: 'NOLB' };
    await expect.poll(standing, { timeout: 20_000 }).toEqual(names);
    // Whoever is there stays, and goes on; who comes now comes through the other.
    expect(noor.closed).toBe(false);
    expect(await host.host({ type: 'Advance', from: 'gathering' })).toMatchObject({ ok: true });
    const late = await visitors.guest(made, 'Late');
    expect((await visitors.ask('GET', '/ready')).status).toBe(200);
    expect(moved).toEqual([]);
    await expect.poll(() => noor.closed, { timeout: 20_000 }).toBe(true);
    expect(moved).toEqual(['noor']);
    const again = await visitors.enter(credentials('guest', made.tasting, noor.key));
    await again.until('stage', (view) => 'cue' in view && view.cue.id !== 'gathering');
    const anew = await visitors.host(made);
    expect(await anew.host({ type: 'Hold' })).toMatchObject({ ok: true });
    expect(next.store.cluster.figures()).toMatchObject({ owned: 1, taken: 1 });
    await ended;
    for (const device of [host, late, again, anew]) device.close();
  },
);
