import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { houseId } from '../../core/ids.ts';
import type { StageView } from '../../core/session/views/stage.ts';
import { epochMs } from '../../core/units.ts';
import { hashOf } from '../../server/access/keys.ts';
import { settingsFrom } from '../../server/settings.ts';
import { openPostgresStore, type PostgresStore } from '../../server/store/postgres/postgres.ts';
import { type LossyLine, lossyLineTo } from '../support/lossy-line.ts';
import { credentials, newId } from './support/device.ts';
import { House, houseKey } from './support/house.ts';
import { postgresForTests } from './support/postgres-processes.ts';

/** Several processes on one PostgreSQL, each a server of its own. */
const database = postgresForTests();
const advance = { type: 'Advance', from: 'gathering' } as const;
const begun = (view: StageView): boolean => 'cue' in view && view.cue.id !== 'gathering';
const notesKey = Buffer.alloc(32, 7);

interface Process {
  readonly house: House;
  readonly store: PostgresStore;
}
let open: House[] = [];
let line: LossyLine;
beforeEach(async () => {
  line = await lossyLineTo(database.server.port);
});
afterEach(async () => {
  line.mend();
  await Promise.all(open.map((house) => house.close()));
  open = [];
  await line.close();
});

async function process(url = database.url, seenWithin = 0, opened?: PostgresStore): Promise<Process> {
  const store = opened ?? (await openPostgresStore({ url, notesKey, houseKey }));
  const cluster = { others: store.cluster, address: (port: number) => `127.0.0.1:${port}`, seenWithin };
  const house = await House.open({ store, cluster });
  open.push(house);
  return { house, store };
}
const cutOff = () => process(database.url.replace(`:${database.server.port}/`, `:${line.port}/`));
async function gone({ house }: Process): Promise<void> {
  open = open.filter((each) => each !== house);
  await house.close();
}

describe('any device at any process', () => {
  it('is at the evening that another conducts, with its notes, over HTTP and sockets', async () => {
    const [one, other] = [await process(), await process()];
    const made = await one.house.plan();
    // The host at one, a guest at the other: who sits down there is passed on as well.
    const host = await one.house.host(made);
    await host.host({ type: 'OpenDoors' });
    const noor = await other.house.guest(made, 'Noor');
    await host.until('host', ({ seats }) => seats.length === 1);
    await host.host(advance);
    await noor.until('stage', begun);
    expect(one.store.cluster.figures().owned).toBe(1);
    expect(other.store.cluster.figures().owned).toBe(0);
    const keepsake = await other.house.ask('GET', `/api/keepsake/${made.tasting}`, { key: noor.key });
    expect(keepsake).toMatchObject({ status: 200, body: { guest: 'Noor' } });
    const list = await other.house.ask('GET', '/api/tastings/list', { key: houseKey });
    expect(list.body).toMatchObject({ tastings: [{ tasting: made.tasting, stage: 'under-way' }] });
    expect((await other.house.ask('GET', `/api/tastings/${made.tasting}/plan`)).status).toBe(401);
    expect(
      (await other.house.ask('DELETE', `/api/tastings/${made.tasting}`, { key: made.hostKey })).status,
    ).toBe(204);
    expect(await database.server.query(database.url, 'SELECT 1 FROM heads')).toEqual([]);
  });

  it('is let go within seconds when its house is deleted beside the processes', async () => {
    const one = await process();
    const beside = await openPostgresStore({ url: database.url, notesKey, houseKey });
    const mill = houseId('mill');
    const key = 'key-of-the-mill-0123456789-abcdefgh';
    await beside.houses.add({
      house: mill,
      name: 'The mill',
      keyHash: hashOf(key),
      createdAt: epochMs(5),
      open: false,
      limits: { evenings: null, seats: null, bytes: null },
      ways: { language: null, volumeUnit: null },
    });
    const made = await one.house.plan(undefined, key);
    const firsts = await one.house.plan();
    const host = await one.house.host(made);
    await host.host({ type: 'OpenDoors' });
    expect(one.store.cluster.figures().owned).toBe(2);
    expect(await beside.houses.remove(mill)).toBe(true);
    await beside.close();
    await expect.poll(() => one.store.cluster.figures().owned, { timeout: 5000 }).toBe(1);
    const plan = (of: typeof made) =>
      one.house.ask('GET', `/api/tastings/${of.tasting}/plan`, { key: of.hostKey });
    expect((await plan(made)).status).toBe(401);
    expect((await plan(firsts)).status).toBe(200);
    await expect(one.house.host(made)).rejects.toThrow();
  });

  it('finds it again at another when the one that conducted it ends, and what was answered stays answered', async () => {
    const [one, other] = [await process(), await process()];
    const { made, host, noor } = await one.house.evening();
    const id = newId();
    const first = await host.raw('host:ask', { id, ask: advance });
    expect(first).toMatchObject({ ok: true });
    await gone(one);
    const again = await other.house.host(made);
    expect(await again.raw('host:ask', { id, ask: advance })).toEqual(first);
    const seat = await other.house.enter(credentials('guest', made.tasting, noor.key));
    expect(await seat.until('stage')).toMatchObject({ version: (first as { version: number }).version });
    expect((await other.house.ask('GET', '/ready')).status).toBe(200);
    const metrics = await (await fetch(`${other.house.url}/metrics`)).text();
    expect(metrics).toMatch(/quietpour_cluster\{figure="owned"\} 1\n/);
    expect(metrics).toMatch(/quietpour_cluster\{figure="takeMs"\} \d+\n/);
    expect(metrics).not.toContain(made.tasting);
  });

  it('is read by the next before its process ends, and its devices are told to come at once', async () => {
    const [one, other] = [await process(database.url, 500), await process()];
    // Devices of their own: those of a house go with it.
    const visitors = new House({ url: one.house.url, stop: async () => undefined });
    const { made, host, noor } = await visitors.evening();
    const moved: string[] = [];
    noor.socket.on('moved', () => void moved.push('noor'));
    host.socket.on('moved', () => void moved.push('host'));
    const ending = gone(one);
    await expect.poll(async () => (await one.house.ask('GET', '/ready')).status).toBe(404);
    // Whoever is here stays until it is another's.
    expect(await host.host(advance)).toMatchObject({ ok: true });
    expect(moved).toEqual([]);
    await expect.poll(() => noor.closed, { timeout: 10_000 }).toBe(true);
    expect(moved.toSorted()).toEqual(['host', 'noor']);
    expect(other.store.cluster.figures(), 'before anybody asked for it there').toMatchObject({
      owned: 1,
      taken: 1,
    });
    await ending;
    const again = await other.house.host(made);
    const seat = await other.house.enter(credentials('guest', made.tasting, noor.key));
    await seat.until('stage', begun);
    expect(await again.host({ type: 'Hold' })).toMatchObject({ ok: true });
    expect(one.store.cluster.figures()).toMatchObject({ gaveAway: 1, owned: 0, fenced: 0 });
    const rows = await database.server.query(database.url, 'SELECT epoch FROM heads');
    expect(rows, 'one update').toEqual([{ epoch: '2' }]);
  });

  it('comes anew at once when the process that passes it on ends, while its evening stays where it is', async () => {
    const [one, other] = [await process(), await process()];
    const { made, host, noor } = await one.house.evening();
    const visitors = new House({ url: other.house.url, stop: async () => undefined });
    const passed = await visitors.enter(credentials('guest', made.tasting, noor.key));
    await passed.until('stage');
    const heard: string[] = [];
    passed.socket.on('moved', () => void heard.push('moved'));
    await gone(other);
    await expect.poll(() => passed.closed).toBe(true);
    expect(heard).toEqual(['moved']);
    expect(noor.closed).toBe(false);
    expect(await host.host(advance)).toMatchObject({ ok: true });
    expect(one.store.cluster.figures()).toMatchObject({ owned: 1, gaveAway: 0 });
  });

  it('is not refused over HTTP when the evening goes to another between two steps of a request', async () => {
    const store = await openPostgresStore({ url: database.url, notesKey, houseKey });
    const [one, other] = [await process(database.url, 0, store), await process()];
    const made = await one.house.plan();
    let goes = true;
    const count = store.photos.count;
    vi.spyOn(store.photos, 'count').mockImplementation(async (tasting) => {
      if (goes) await other.store.cluster.draining.takeFrom(store.cluster.name, tasting);
      if (goes) store.cluster.draining.gaveAway(tasting);
      goes = false;
      return count(tasting);
    });
    const send = async (key: string) =>
      fetch(`${one.house.url}/api/tastings/${made.tasting}/photos`, {
        method: 'POST',
        headers: { authorization: `Bearer ${key}`, 'content-type': 'image/png' },
        body: 'no photo',
      });
    const first = await send(made.hostKey);
    expect([first.status, first.headers.get('retry-after')]).toEqual([503, '1']);
    // Asked again it is passed on, and whoever has no right there learns so.
    expect((await send(made.hostKey)).status).toBe(415);
    expect((await send('key-of-nobody-0123456789')).status).toBe(401);
    expect(other.store.cluster.figures().owned).toBe(1);
  });

  it('is asked for by a process of the cluster only, and stays where nobody can have it', async () => {
    const [one, other] = [await process(), await process()];
    const { made, host } = await one.house.evening();
    for (const step of ['prepare', 'take', 'moved']) {
      const { name } = one.store.cluster;
      const body = { tasting: made.tasting, from: name, through: name };
      expect((await other.house.ask('POST', `/api/peers/${step}`, { body })).status).toBe(404);
    }
    expect(await host.host(advance)).toMatchObject({ ok: true });
    // What another conducts under another name is not to be had.
    expect(await other.store.cluster.draining.takeFrom('nobody', made.tasting as never)).toBe(false);
    expect(await host.host({ type: 'Hold' })).toMatchObject({ ok: true });
  });

  it('is read again by the next where something happened after it was read', async () => {
    const [one, other] = [await process(), await process()];
    const { made, host } = await one.house.evening();
    expect(await other.store.cluster.draining.prepare(made.tasting)).toBe(true);
    await host.host(advance);
    const events = one.store.sessions.read(made.tasting);
    expect(await other.store.cluster.draining.takeFrom(one.store.cluster.name, made.tasting)).toBe(true);
    expect(other.store.sessions.read(made.tasting)).toEqual(events);
  });

  it('says nothing while it may be another’s, lets its devices go, and the evening goes on elsewhere', async () => {
    const [one, other] = [await cutOff(), await process()];
    const { made, host, noor } = await one.house.evening();
    line.silence();
    await expect.poll(() => one.store.cluster.holds(), { interval: 10 }).toBe(false);
    const heard = noor.heard.length;
    expect(
      other.store.cluster.figures().taken,
      'by its own clock, before the lease ends on the database’s',
    ).toBe(0);
    expect((await one.house.ask('GET', '/ready')).status).toBe(503);
    // The host taps where nobody may answer.
    const tapped = host.raw('host:ask', { id: newId(), ask: advance });
    void tapped.catch(() => undefined);
    await expect.poll(() => noor.closed, { timeout: 20_000 }).toBe(true);
    expect(noor.heard.slice(heard).filter(({ event }) => event !== 'dismissal')).toEqual([]);
    await expect.poll(() => other.store.cluster.figures().owned, { timeout: 20_000 }).toBe(1);
    const [again, seat] = [
      await other.house.host(made),
      await other.house.enter(credentials('guest', made.tasting, noor.key)),
    ];
    expect(await again.host(advance)).toMatchObject({ ok: true });
    await seat.until('stage', begun);
    line.mend();
    await expect.poll(() => one.store.cluster.figures().owned, { timeout: 20_000 }).toBe(0);
  });
});

describe('settings of a process among others', () => {
  it.each([
    [{ QUIETPOUR_ADDRESS: 'somewhere' }, 'QUIETPOUR_ADDRESS must say where'],
    [{ QUIETPOUR_ADDRESS: '10.0.0.5' }, 'QUIETPOUR_ADDRESS must say where'],
  ])('%j is a sentence', (environment, sentence) => {
    expect(() => settingsFrom(environment)).toThrow(sentence);
  });

  it('are none by default, and an empty one is none', () => {
    expect(settingsFrom({})).toMatchObject({ databaseUrl: undefined, ownAddress: undefined });
    expect(settingsFrom({ QUIETPOUR_DATABASE_URL: '' }).databaseUrl).toBeUndefined();
  });
});

describe('a request that says it was passed on', () => {
  it('is believed from a process of the cluster and from nobody else', async () => {
    const [one, other] = [await process(), await process()];
    const made = await one.house.plan();
    const forged = { 'x-quietpour-passed': 'f'.repeat(64), 'x-forwarded-for': '10.9.8.7' };
    const plan = `/api/tastings/${made.tasting}/plan`;
    // A forged mark changes nothing: it is passed on like any other.
    expect((await other.house.ask('GET', plan, { key: made.hostKey, headers: forged })).status).toBe(200);
  });
});
