import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { houseId, tastingId } from '../../core/ids.ts';
import { hashOf } from '../../server/access/keys.ts';
import { houseErrand } from '../../server/ops/houses.ts';
import type { House as HouseRow } from '../../server/store/house.ts';
import type { Store } from '../../server/store/store.ts';
import type { CreatedTasting, ListedTasting, TastingPage } from '../../shared/wire/http.ts';
import { memoryStore } from '../support/memory-store.ts';
import { credentials } from './support/device.ts';
import { House, houseKey } from './support/house.ts';
import { aPlan } from './support/plans.ts';

const millKey = 'key-of-the-mill-0123456789-abcdefgh';
const cellarKey = 'key-of-the-cellar-0123456789-abcdef';
const rowOf = (name: string, key: string, limits: Partial<HouseRow['limits']> = {}): HouseRow => ({
  house: houseId(name),
  name: `The hidden ${name}`,
  keyHash: hashOf(key),
  createdAt: 5 as HouseRow['createdAt'],
  open: false,
  limits: { evenings: null, seats: null, bytes: null, ...limits },
  ways: { language: null, volumeUnit: null },
});

let store: Store;
let house: House;
beforeEach(async () => {
  store = memoryStore();
  await store.houses.add(rowOf('mill', millKey));
  await store.houses.add(rowOf('cellar', cellarKey, { evenings: 2, seats: 1 }));
  house = await House.open({ store });
});
afterEach(() => house.close());

describe('whoever holds the key of another house', () => {
  /** Every route that names an evening, as a host asks it. */
  const routes = (tasting: string): readonly (readonly [method: string, path: string, body?: unknown])[] => {
    const at = `/api/tastings/${tasting}`;
    return [
      ['GET', `${at}/plan`],
      ['GET', `${at}/opening`],
      ['PUT', `${at}/plan`, { plan: aPlan(), base: 1 }],
      ['GET', `${at}/as-it-lies`],
      ['POST', `${at}/wake`],
      ['GET', `${at}/recap`],
      ['GET', `${at}/recap.json`],
      ['GET', `${at}/recap.csv`],
      ['POST', `${at}/keys`, { for: 'host' }],
      ['POST', `${at}/keys`, { for: 'helper' }],
      ['POST', `${at}/keys`, { for: 'seat', seat: 'seat-1' }],
      ['DELETE', `${at}/keys/host`],
      ['DELETE', `${at}/keys/helper`],
      ['DELETE', `${at}/keys/seat/seat-1`],
      ['GET', `${at}/crowd`],
      ['POST', `${at}/photos`],
      ['DELETE', `${at}/photos/label-photo-of-the-first`],
      ['POST', `${at}/screens/one`, { admit: true }],
      ['DELETE', `${at}/screens`],
      ['GET', `${at}/call-servers`],
      ['GET', `/api/keepsake/${tasting}`],
      ['DELETE', `/api/keepsake/${tasting}`],
      ['DELETE', at],
    ];
  };

  it('is answered of its evenings as of such that never were, and changes nothing in them', async () => {
    const made = await house.plan(aPlan({ title: 'A secret evening' }), millKey);
    const firsts = await house.plan(aPlan({ title: 'Of the first house' }));
    for (const [theirs, key] of [
      [made.tasting, cellarKey],
      [firsts.tasting, cellarKey],
      [made.tasting, houseKey],
    ] as const) {
      for (const [method, path, body] of routes(theirs)) {
        const there = await house.ask(method, path, { key, body });
        const [, nowhere] = [path, path.replace(theirs, 'neverwas0000')];
        const not = await house.ask(method, nowhere, { key, body });
        expect([there.status, there.body], `${method} ${path}`).toEqual([not.status, not.body]);
        expect(there.status, `${method} ${path}`).toBeGreaterThanOrEqual(400);
      }
      for (const role of ['host', 'guest', 'helper', 'screen'] as const) {
        const refused = (id: string) =>
          house.enter(credentials(role, tastingId(id), key)).then(
            () => 'let in',
            (error: unknown) => JSON.stringify((error as { data?: unknown }).data ?? String(error)),
          );
        const said = await refused(theirs);
        expect(said, role).not.toBe('let in');
        expect(said, role).toBe(await refused('neverwas0000'));
      }
    }
    const own = await house.ask('GET', `/api/tastings/${made.tasting}/plan`, { key: millKey });
    expect(own).toMatchObject({ status: 200, body: { revision: 1, plan: { title: 'A secret evening' } } });
    expect(store.keys.find(hashOf(made.hostKey))).toBeDefined();
  });

  it('finds none of them in a list or a search, nor a word of them in figures or logs', async () => {
    await house.plan(aPlan({ title: 'A secret evening' }), millKey);
    await house.plan(aPlan({ title: 'Of the first house' }));
    await house.plan(aPlan({ title: 'In the cellar' }), cellarKey);
    const titles = async (key: string, find = '') => {
      const page = await house.ask<TastingPage>('GET', `/api/tastings/list?find=${find}`, { key });
      const all = await house.ask<ListedTasting[]>('GET', '/api/tastings', { key });
      if (find === '') expect(all.body).toEqual(page.body.tastings);
      return page.body.tastings.map(({ title }) => title);
    };
    expect(await titles(millKey)).toEqual(['A secret evening']);
    expect(await titles(cellarKey)).toEqual(['In the cellar']);
    expect(await titles(houseKey)).toEqual(['Of the first house']);
    expect(await titles(cellarKey, 'secret')).toEqual([]);
    expect(await titles(houseKey, 'secret')).toEqual([]);
    const figures = await fetch(`${house.url}/metrics`).then((answer) => answer.text());
    for (const told of [figures, house.log.lines.join()]) expect(told).not.toMatch(/mill|cellar|secret/i);
  });

  it('has a code of any house find its evening, for guests know of none', async () => {
    const { code } = await house.plan(aPlan({ title: 'A secret evening' }), millKey);
    const invitation = await house.ask('GET', `/api/invitations/${code}`);
    expect(invitation).toMatchObject({ status: 200, body: { title: 'A secret evening' } });
  });
});

describe('a house', () => {
  it('conducts its evenings as the first does, and its key opens nothing once another took its place', async () => {
    const made = await house.plan(aPlan(), millKey);
    const host = await house.enter(credentials('host', made.tasting, millKey));
    await host.host({ type: 'OpenDoors' });
    await host.until('host');
    await store.houses.changeKey(houseId('mill'), hashOf('another-key-0123456789-0123456789'));
    expect((await house.ask('GET', '/api/tastings/list', { key: millKey })).status).toBe(401);
    await expect
      .poll(async () => (await host.raw('probe', {}).catch(() => 'gone')) ?? 'gone')
      .not.toMatchObject({
        ok: true,
      });
    const again = { key: 'another-key-0123456789-0123456789' };
    expect((await house.ask('GET', `/api/tastings/${made.tasting}/plan`, again)).status).toBe(200);
  });

  it('is refused what is beyond its limits, with a sentence', async () => {
    const ask = () =>
      house.ask<CreatedTasting>('POST', '/api/tastings', { key: cellarKey, body: { plan: aPlan() } });
    const three = await Promise.all([ask(), ask(), ask()]);
    expect(three.map(({ status }) => status).toSorted()).toEqual([201, 201, 409]);
    expect(three.find(({ status }) => status === 409)?.body).toMatchObject({ code: 'too-many-evenings' });
    const made = three.find(({ status }) => status === 201)?.body as CreatedTasting;
    const host = await house.host(made);
    await host.host({ type: 'OpenDoors' });
    expect((await house.takeSeat(made.code, { name: 'Noor' })).status).toBe(201);
    expect((await house.takeSeat(made.code, { name: 'Tomas' })).body).toMatchObject({ code: 'table-full' });
    await store.houses.limit(houseId('cellar'), { evenings: 9, seats: 9, bytes: 10 });
    expect((await ask()).body).toMatchObject({ code: 'house-full' });
    const photo = { key: cellarKey, body: {} };
    const refused = await house.ask('POST', `/api/tastings/${made.tasting}/photos`, photo);
    expect(refused.body).toMatchObject({ code: 'house-full' });
    // What guests do is never refused for it.
    expect((await house.takeSeat(made.code, { name: 'Tomas' })).status).toBe(201);
  });
});

describe('the command for houses', () => {
  const desk = () => ({
    houses: store.houses,
    chance: { id: () => 'barn', key: () => 'key-of-the-barn-0123456789-abcdefgh' },
    now: () => 9,
    origin: 'https://tasting.example',
  });
  const say = (...asked: string[]) => houseErrand(asked, desk());

  it('adds, lists, limits and deletes, each with a sentence', async () => {
    const added = await say('add', 'The barn', 'language=de', 'units=fl-oz-us');
    expect(added).toContain('https://tasting.example/host?language=de#key=key-of-the-barn');
    const key = 'key-of-the-barn-0123456789-abcdefgh';
    await house.plan(aPlan(), key);
    await say('limit', 'barn', 'evenings=3', 'megabytes=20');
    expect(await say('list')).toContain('The barn: evenings 1 of 3, megabytes 0.0 of 20');
    await expect(say('delete', 'barn', 'Another name')).rejects.toThrow('write its name');
    expect(await say('delete', 'barn', 'The barn')).toContain('gone with 1 evening;');
    expect((await house.ask('GET', '/api/tastings/list', { key })).status).toBe(401);
    expect(await say('list')).not.toContain('barn');
  });

  it('says what it does not know', async () => {
    for (const asked of [
      [],
      ['add'],
      ['add', 'A', 'units=pints'],
      ['limit', 'mill'],
      ['limit', 'mill', 'seats=0'],
    ])
      await expect(say(...asked), asked.join(' ')).rejects.toThrow('npm run house -- add');
    await expect(say('key', 'nobody')).rejects.toThrow('There is no such house');
  });
});
