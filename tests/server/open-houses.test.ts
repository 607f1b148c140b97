import { afterEach, describe, expect, it } from 'vitest';
import { houseId } from '../../core/ids.ts';
import { epochMs } from '../../core/units.ts';
import { hashOf } from '../../server/access/keys.ts';
import { settingsFrom } from '../../server/settings.ts';
import type { CreatedTasting, OpenedHouse, TastingPage } from '../../shared/wire/http.ts';
import { memoryStore } from '../support/memory-store.ts';
import { credentials } from './support/device.ts';
import { House } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';
import { aPlan } from './support/plans.ts';

let house: House;
afterEach(() => house.close());

const from = (address: string) => ({ 'x-forwarded-for': address });
const make = (address = '192.0.2.1') =>
  house.ask<OpenedHouse>('POST', '/api/houses', { body: { language: 'de' }, headers: from(address) });
const plan = (key: string) =>
  house.ask<CreatedTasting>('POST', '/api/tastings', { key, body: { plan: aPlan() } });

describe('a house that a stranger makes', () => {
  it('is offered only where whoever runs the server says so', async () => {
    const offers = ['1', '0', undefined].map(
      (QUIETPOUR_OPEN_HOUSE) => settingsFrom({ QUIETPOUR_OPEN_HOUSE }).openHouses,
    );
    expect(offers).toEqual([true, false, false]);
    expect(() => settingsFrom({ QUIETPOUR_OPEN_HOUSE: 'yes' })).toThrow('must be 1');
    house = await House.open();
    expect(await house.ask('GET', '/api/houses')).toMatchObject({ status: 200, body: null });
    expect((await make()).status).toBe(403);
  });

  it('is its own, with small limits, and nothing leads from it to another', async () => {
    const store = memoryStore();
    house = await House.open({ store, openHouses: true });
    expect((await house.ask('GET', '/api/houses')).body).toEqual({ evenings: 5, seats: 20 });
    const [{ key }, { key: other }] = [(await make()).body, (await make()).body];
    const made = await plan(key);
    expect(made.status).toBe(201);
    const listed = async (shown: string) =>
      (await house.ask<TastingPage>('GET', '/api/tastings/list', { key: shown })).body;
    expect(await listed(key)).toMatchObject({
      house: { name: null, volumeUnit: null },
      tastings: [{ tasting: made.body.tasting }],
    });
    expect((await listed(other)).tastings).toEqual([]);
    expect((await house.ask('GET', `/api/tastings/${made.body.tasting}/plan`, { key: other })).status).toBe(
      404,
    );
    for (let more = 1; more < 5; more += 1) expect((await plan(key)).status).toBe(201);
    expect((await plan(key)).body).toMatchObject({ code: 'too-many-evenings' });
    expect((await store.houses.list()).map(({ open, ways }) => [open, ways.language])).toEqual([
      [true, 'de'],
      [true, 'de'],
    ]);
  });

  it('is refused to an address that makes one after another, and to all when all do', async () => {
    const clock = new ManualClock();
    house = await House.open({ clock, openHouses: true });
    const times = async (count: number, address: (at: number) => string) => {
      const made: number[] = [];
      for (let at = 0; at < count; at += 1) made.push((await make(address(at))).status);
      return made.filter((status) => status === 201).length;
    };
    expect(await times(12, () => '192.0.2.1')).toBe(10);
    expect((await make()).body).toMatchObject({ code: 'too-many-houses' });
    await clock.advance(20 * 60_000);
    expect(await times(3, () => '192.0.2.1')).toBe(1);
    expect(await times(110, (at) => `198.51.100.${at}`)).toBeLessThan(100);
  });

  it('is gone after a week in which nothing was planned', async () => {
    const clock = new ManualClock();
    const store = memoryStore();
    house = await House.open({ clock, store, openHouses: true });
    const [empty, used] = [(await make()).body.key, (await make()).body.key];
    await plan(used);
    await clock.advance(7 * 24 * 3600_000 + 1);
    const fresh = (await make()).body.key;
    const asked = [empty, used, fresh].map((key) => house.ask('GET', '/api/tastings/list', { key }));
    expect((await Promise.all(asked)).map(({ status }) => status)).toEqual([401, 200, 200]);
  });

  it('does not make its address one that guesses codes without a turn', async () => {
    const clock = new ManualClock();
    const store = memoryStore();
    house = await House.open({ clock, store, openHouses: true });
    const { key } = (await make()).body;
    await store.houses.add({
      house: houseId('mill'),
      name: 'The mill',
      keyHash: hashOf('key-of-the-mill-0123456789-abcdefgh'),
      createdAt: epochMs(5),
      open: false,
      limits: { evenings: null, seats: null, bytes: null },
      ways: { language: null, volumeUnit: null },
    });
    const mill = await house.plan(aPlan(), 'key-of-the-mill-0123456789-abcdefgh');
    const strangers = (await plan(key)).body;
    const comeIn = ({ tasting, hostKey }: CreatedTasting, address: string) =>
      house.enter(credentials('host', tasting, hostKey), from(address));
    await comeIn(strangers, '203.0.113.1');
    await comeIn(mill, '203.0.113.2');
    const guess = (address: string) =>
      house.ask('GET', '/api/invitations/ABCDEF', { headers: from(address) }).then(({ status }) => status);
    // Too many wrong codes over the whole server: from now on others wait, and no hand of this clock moves.
    for (let at = 0; at < 501; at += 1) await guess(`2001:db8:${at.toString(16)}::1`);
    const answered: string[] = [];
    void guess('203.0.113.1').then(() => answered.push('a stranger’s'));
    for (let at = 0; at < 3; at += 1) expect(await guess('203.0.113.2')).toBeGreaterThanOrEqual(400);
    expect(answered).toEqual([]);
    await clock.advance(60_000);
    await expect.poll(() => answered).toEqual(['a stranger’s']);
  });
});
