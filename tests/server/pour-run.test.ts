import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { commandId, pourId } from '../../core/ids.ts';
import { levelOf, mostPlaces } from '../../core/planning/serving/pouring.ts';
import { openSqliteStore } from '../../server/store/sqlite.ts';
import { StoreFailure } from '../../server/store/store.ts';
import { followAsHost } from '../../shared/follower/host-follower.ts';
import type { PouringView } from '../../shared/wire/pouring.ts';
import { memoryStore } from '../support/memory-store.ts';
import { credentials, type Device, newId } from './support/device.ts';
import { House } from './support/house.ts';

const one = pourId('one');
const tick = (device: Device, places: number[], done = 1, pours: string[] = ['one'], id = newId()) =>
  device.raw('pouring:ask', { id, ask: { type: 'TickGlasses', places, pours, done } });
const level = (view: PouringView, place: number) => levelOf(view.levels, one, place);

describe('the pour run over the wire', () => {
  let house: House;
  beforeEach(async () => {
    house = await House.open();
  });
  afterEach(() => house.close());

  it('is live on the tablet and on the helper’s phone before the doors are open', async () => {
    const made = await house.plan();
    const [tablet, phone] = [await house.host(made), await house.host(made)];
    expect(await phone.until('pouring')).toEqual({ version: 0, levels: [] });
    expect(await tick(tablet, [1, 2, 3])).toEqual({ ok: true, version: 1 });
    const seen = await phone.until('pouring', ({ version }) => version === 1);
    expect([1, 2, 3, 4].map((place) => level(seen, place))).toEqual([1, 1, 1, 0]);
  });

  it('loses no tick of two devices at once', async () => {
    const made = await house.plan();
    const [tablet, phone] = [await house.host(made), await house.host(made)];
    const places = Array.from({ length: 15 }, (_, index) => index + 1);
    await Promise.all(places.flatMap((place) => [tick(tablet, [place]), tick(phone, [place + 15])]));
    await Promise.all([tablet.level(), phone.level()]);
    for (const device of [tablet, phone]) {
      const view = device.last('pouring');
      expect(places.every((place) => view && level(view, place) + level(view, place + 15) === 2)).toBe(true);
    }
  });

  it('does the same request once, and undoes it once', async () => {
    const made = await house.plan();
    const [tablet, phone] = [await house.host(made), await house.host(made)];
    await tick(tablet, [1], 1, ['one'], 'the-same-tick');
    await tick(tablet, [1], 1, ['one'], 'the-same-tick');
    expect(tablet.count('pouring')).toBe(2);
    const undo = () =>
      phone.raw('pouring:ask', { id: newId(), ask: { type: 'UndoTick', tick: 'the-same-tick' } });
    expect(await undo()).toEqual({ ok: true, version: 2 });
    expect(await undo()).toEqual({ ok: true, version: 2 });
    await tick(tablet, [1], 1, ['one'], 'the-same-tick');
    await tablet.level();
    expect(tablet.last('pouring')).toMatchObject({ version: 2, levels: [] });
  });

  it('is for the host’s devices only: nobody else hears of it or may ask', async () => {
    const { made, host, noor } = await house.evening();
    const screen = await house.enter(credentials('screen', made.tasting, made.hostKey));
    await tick(host, [1]);
    expect(await tick(noor, [1])).toMatchObject({ ok: false, code: 'wrong-role' });
    expect(await tick(screen, [1])).toMatchObject({ ok: false, code: 'wrong-role' });
    await Promise.all([noor.level(), screen.level()]);
    expect(noor.count('pouring') + screen.count('pouring')).toBe(0);
    expect(host.last('pouring')?.version).toBe(1);
  });

  it('refuses what no device of ours sends', async () => {
    const host = await house.host(await house.plan());
    expect(await tick(host, [1], 1, ['nowhere'])).toMatchObject({ code: 'no-such-pour' });
    for (const bad of [
      tick(host, []),
      tick(host, [0]),
      tick(host, [1.5]),
      tick(host, [mostPlaces + 1]),
      tick(host, [1], 6),
      tick(host, [1], 0),
      tick(host, [1], 1, []),
      tick(host, [1], 1, ['__proto__']),
      host.raw('pouring:ask', { id: newId(), ask: { type: 'Forget' } }),
      host.raw('pouring:ask', null),
    ]) {
      expect(await bad).toMatchObject({ ok: false, code: expect.stringMatching(/malformed|too-large/) });
    }
    await host.level();
    expect(host.last('pouring')).toEqual({ version: 0, levels: [] });
  });

  it('takes a column of two hundred places in one frame', async () => {
    const host = await house.host(await house.plan());
    const places = Array.from({ length: 200 }, (_, index) => index + 1);
    expect(await tick(host, places, 1, ['one', 'two', 'three'])).toMatchObject({ ok: true });
  });

  it('is followed by the host’s follower', async () => {
    const made = await house.plan();
    const follower = followAsHost({
      origin: house.url,
      tasting: made.tasting,
      key: made.hostKey,
      newId: () => commandId(newId()),
    });
    const ask = { type: 'TickGlasses', places: [2], pours: [one], done: 2 } as const;
    expect(await follower.sendPouringCommand(commandId(newId()), ask)).toEqual({ ok: true, version: 1 });
    const view = follower.pouring.value;
    expect(view && level(view, 2)).toBe(2);
    follower.close();
  });
});

describe('the pour run on disk', () => {
  it('is there after a restart, and its undo too', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'pour-run-'));
    const file = join(folder, 'store.sqlite');
    const before = await House.open({ store: openSqliteStore(file) });
    const made = await before.plan();
    const tablet = await before.host(made);
    await tick(tablet, [1], 2);
    await tick(tablet, [1], 3, ['one'], 'the-last-tick');
    await before.close();
    const after = await House.open({ store: openSqliteStore(file) });
    const phone = await after.host(made);
    expect(level(await phone.until('pouring'), 1)).toBe(3);
    await phone.raw('pouring:ask', { id: newId(), ask: { type: 'UndoTick', tick: 'the-last-tick' } });
    expect(level(await phone.until('pouring', ({ version }) => version === 3), 1)).toBe(2);
    await after.close();
    rmSync(folder, { recursive: true });
  });

  it('says so when it could not be stored, and shows nothing of it', async () => {
    const store = memoryStore();
    let full = false;
    const documents: typeof store.documents = {
      ...store.documents,
      save: (...write) =>
        full ? Promise.reject(new StoreFailure('The disk is full.')) : store.documents.save(...write),
    };
    const house = await House.open({ store: { ...store, documents } });
    const host = await house.host(await house.plan());
    await tick(host, [1]);
    full = true;
    expect(await tick(host, [2])).toMatchObject({ ok: false, code: 'not-stored' });
    await host.level();
    const view = host.last('pouring');
    expect(view && [level(view, 1), level(view, 2)]).toEqual([1, 0]);
    await house.close();
  });
});
