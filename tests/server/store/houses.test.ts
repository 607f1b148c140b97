import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { houseId, photoId, tastingId } from '../../../core/ids.ts';
import type { SessionEvent } from '../../../core/session/event.ts';
import { epochMs } from '../../../core/units.ts';
import type { House } from '../../../server/store/house.ts';
import { type Store, StoreFailure } from '../../../server/store/store.ts';
import { planOf } from '../../support/plans.ts';
import { everyStore } from '../support/every-store.ts';

const tasting = tastingId('harvest');
const row = { tasting, code: 'ABC234', plan: planOf(3), revision: 1, createdAt: epochMs(1000) };
const held: SessionEvent = { type: 'ReminderCleared' };

describe.each(everyStore())('the houses of %s', (_, openIn) => {
  let folder: string;
  let store: Store;
  const [mill, cellar] = [houseId('mill'), houseId('cellar')];
  const houseOf = (house: House['house'], createdAt: number): House => ({
    house,
    name: `The ${house}`,
    keyHash: `hash of the ${house}`,
    createdAt: epochMs(createdAt),
    open: false,
    limits: { evenings: 3, seats: null, bytes: null },
    ways: { language: 'de', volumeUnit: 'fl-oz-imperial' },
  });
  const [theMill, theCellar] = [houseOf(mill, 5), houseOf(cellar, 6)];
  const eveningOf = (house: House['house'], name: string, createdAt: number) =>
    store.tastings.create({
      ...row,
      house,
      tasting: tastingId(name),
      code: name.toUpperCase(),
      createdAt: epochMs(createdAt),
    });
  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), 'store-'));
    store = await openIn(folder);
    await store.tastings.create(row);
    await store.houses.add(theCellar);
    await store.houses.add(theMill);
    await eveningOf(mill, 'mill1', 3000);
    await eveningOf(cellar, 'cellar1', 4000);
    await eveningOf(mill, 'mill2', 5000);
  });

  afterEach(async () => {
    await store.close();
    rmSync(folder, { recursive: true });
  });

  it('finds them by id and by key, oldest first, and refuses a second with the same key', async () => {
    expect(await store.houses.list()).toEqual([theMill, theCellar]);
    expect(await store.houses.find(cellar)).toEqual(theCellar);
    expect(await store.houses.find(houseId('nobody'))).toBeUndefined();
    expect(await store.houses.ofKey(theMill.keyHash)).toEqual(theMill);
    expect(await store.houses.ofKey('')).toBeUndefined();
    const twin = { ...theMill, house: houseId('twin') };
    await expect(store.houses.add(twin)).rejects.toThrow(StoreFailure);
    await expect(store.houses.add({ ...theMill, keyHash: 'other' })).rejects.toThrow(StoreFailure);
    expect(await store.houses.list()).toHaveLength(2);
  });

  it('keeps the evenings of each apart in every list and search, and finds a code whatever its house', async () => {
    const page = async (house?: House['house']) =>
      (await store.tastings.page({ ...(house && { house }), find: '', most: 9 })).map(({ code }) => code);
    const latest = async (house?: House['house']) =>
      (await store.tastings.latest(house, 9)).map(({ code }) => code);
    for (const listed of [page, latest]) {
      expect(await listed()).toEqual(['ABC234']);
      expect(await listed(mill)).toEqual(['MILL2', 'MILL1']);
      expect(await listed(cellar)).toEqual(['CELLAR1']);
      expect(await listed(houseId('nobody'))).toEqual([]);
    }
    expect(await store.tastings.latest(mill, 1)).toHaveLength(1);
    const search = { house: cellar, find: 'mill', most: 9 };
    expect(await store.tastings.page(search)).toEqual([]);
    expect(await store.tastings.page({ ...search, house: mill })).toHaveLength(2);
    const [first] = await store.tastings.page({ house: mill, find: '', most: 1 });
    expect(await store.tastings.page({ house: mill, find: '', most: 9, after: first })).toMatchObject([
      { code: 'MILL1' },
    ]);
    expect((await store.tastings.findByCode('CELLAR1'))?.house).toBe(cellar);
    expect((await store.tastings.list()).map(({ code }) => code)).toEqual([
      'MILL2',
      'CELLAR1',
      'MILL1',
      'ABC234',
    ]);
  });

  it('tells whose an evening is, and of one that is not there nothing', () => {
    const [theirs, nobodys] = [tastingId('mill1'), tastingId('nobody')];
    expect([mill, cellar, undefined].map((house) => store.tastings.isOf(theirs, house))).toEqual([
      true,
      false,
      false,
    ]);
    expect([mill, undefined].map((house) => store.tastings.isOf(tasting, house))).toEqual([false, true]);
    expect([mill, undefined].map((house) => store.tastings.isOf(nobodys, house))).toEqual([false, false]);
    expect(store.tastings.find(theirs)?.house).toBe(mill);
    expect(store.tastings.find(tasting)?.house).toBeUndefined();
  });

  it('changes a key and the limits of one house only', async () => {
    expect(await store.houses.changeKey(mill, 'a new hash')).toBe(true);
    expect(await store.houses.ofKey(theMill.keyHash)).toBeUndefined();
    const limits = { evenings: null, seats: 12, bytes: 1e10 };
    expect(await store.houses.limit(mill, limits)).toBe(true);
    expect(await store.houses.ofKey('a new hash')).toEqual({ ...theMill, keyHash: 'a new hash', limits });
    expect(await store.houses.find(cellar)).toEqual(theCellar);
    expect(await store.houses.changeKey(houseId('nobody'), 'x')).toBe(false);
    expect(await store.houses.limit(houseId('nobody'), limits)).toBe(false);
    await expect(store.houses.changeKey(cellar, 'a new hash')).rejects.toThrow(StoreFailure);
  });

  it('forgets what strangers made before a moment, unless something is planned there', async () => {
    const strangers = ['old', 'used', 'new'].map((name, at) => ({
      ...houseOf(houseId(name), 100 * (at + 1)),
      open: true,
    }));
    for (const each of strangers) await store.houses.add(each);
    // What whoever runs the server has made stays, however old and empty.
    const barn = houseOf(houseId('barn'), 1);
    await store.houses.add(barn);
    await eveningOf(houseId('used'), 'used1', 6000);
    await store.houses.sweep(epochMs(300));
    expect((await store.houses.list()).map(({ house }) => house)).toEqual([
      ...['barn', 'mill', 'cellar', 'used', 'new'],
    ]);
    expect(await store.tastings.findByCode('USED1')).toBeDefined();
  });

  it('counts its evenings, and every byte of theirs', async () => {
    const plan = Buffer.byteLength(JSON.stringify(row.plan));
    expect(await store.houses.usage(mill)).toEqual({ evenings: 2, bytes: 2 * plan });
    const photo = photoId('label-photo-of-the-first');
    await store.photos.add(tastingId('mill1'), photo, Buffer.alloc(5000));
    await store.sessions.append({ tasting: tastingId('mill2'), expected: 0, events: [held] });
    const log = JSON.stringify(held).length;
    expect((await store.houses.usage(mill)).bytes).toBe(2 * plan + 5000 + log);
    expect((await store.houses.usage(cellar)).bytes).toBe(plan);
    expect(await store.houses.usage(houseId('nobody'))).toEqual({ evenings: 0, bytes: 0 });
  });

  it('goes with every evening and all in them, and nothing of another house goes along', async () => {
    const photo = photoId('label-photo-of-the-first');
    await store.photos.add(tastingId('mill1'), photo, Buffer.alloc(50));
    await store.keys.add({ hash: 'aa', tasting: tastingId('mill1'), role: 'host', expiresAt: null });
    expect((await store.houses.evenings(mill)).toSorted()).toEqual(['mill1', 'mill2']);
    expect(await store.houses.remove(mill)).toBe(true);
    expect(await store.houses.list()).toEqual([theCellar]);
    expect(await store.photos.find(photo)).toBeUndefined();
    expect(await store.tastings.findByCode('MILL1')).toBeUndefined();
    expect((await store.tastings.list()).map(({ code }) => code)).toEqual(['CELLAR1', 'ABC234']);
    const all = ['mill1', 'cellar1', 'mill2', 'harvest'].map(tastingId);
    expect(await store.houses.gone(all)).toEqual(['mill1', 'mill2']);
    expect(await store.houses.remove(mill)).toBe(false);
  });
});
