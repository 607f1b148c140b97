import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { pourId } from '../../core/ids.ts';
import { levelOf } from '../../core/planning/serving/pouring.ts';
import { openSqliteStore } from '../../server/store/sqlite.ts';
import type { StoredPlan } from '../../shared/wire/http.ts';
import { strictHost } from '../support/strict-views.ts';
import { credentials, newId } from './support/device.ts';
import { House, houseKey } from './support/house.ts';
import { aPlan } from './support/plans.ts';

const bottle = { name: 'Ferry House', producer: 'Low Quay', abv: 43 };
const codes = { one: '731', two: '402', three: '566' };

describe('the plan after the doors have opened', () => {
  let house: House;
  beforeEach(async () => {
    house = await House.open({ store: openSqliteStore(':memory:') });
  });
  afterEach(() => house.close());

  const planNow = async ({ tasting, hostKey }: { tasting: string; hostKey: string }) =>
    (await house.ask<StoredPlan>('GET', `/api/tastings/${tasting}/plan`, { key: hostKey })).body.plan;

  it('[P22, Q4] swaps a blind bottle without a byte to any guest or screen, and tells every host’s device', async () => {
    const { made, host, noor } = await house.evening(aPlan({ blind: true, codes }));
    const screen = await house.enter(credentials('screen', made.tasting, made.hostKey));
    const second = await house.host(made);
    await host.host({ type: 'JumpTo', cue: 'two/first/nose' });
    for (const device of [noor, screen])
      await device.until('stage', (stage) => 'cue' in stage && stage.cue.id === 'two/first/nose');
    await Promise.all([noor.level(), screen.level()]);
    const heard = [noor.heard.length, screen.heard.length];
    for (const pour of ['one', 'two', 'three']) {
      expect(await host.host({ type: 'SwapBottle', pour, bottle })).toMatchObject({ ok: true });
      expect(
        await host.host({ type: 'MendPour', pour, bottle: { ...bottle, story: 'A tale.' } }),
      ).toMatchObject({ ok: true });
    }
    const view = await second.until('host', ({ planChanges }) => planChanges === 6);
    strictHost.parse(view);
    await Promise.all([noor.level(), screen.level()]);
    expect([noor.heard.length, screen.heard.length]).toEqual(heard);
    expect((await planNow(made)).pours.map(({ name, story }) => [name, story])).toEqual(
      Array.from({ length: 3 }, () => ['Ferry House', 'A tale.']),
    );
  });

  it('[P22] mends the title of the evening on every screen, in the list and for whoever comes later', async () => {
    const { made, host, noor } = await house.evening(aPlan({ title: 'Six Lantrens' }));
    expect(await host.host({ type: 'MendTitle', title: 'Six Lanterns' })).toMatchObject({ ok: true });
    await noor.until('stage', ({ title }) => title === 'Six Lanterns');
    expect(await host.host({ type: 'MendTitle', title: 'Six Lanterns' })).toMatchObject({
      ok: false,
      code: 'nothing-to-do',
    });
    expect((await planNow(made)).title).toBe('Six Lanterns');
    for (const find of ['Lanterns', 'Lantrens']) {
      const found = await house.ask<{ title: string }[]>('GET', `/api/tastings?find=${find}`, {
        key: houseKey,
      });
      expect(found.body.map(({ title }) => title)).toEqual(['Six Lanterns']);
    }
    const invited = await house.ask<{ title: string }>('GET', `/api/invitations/${made.code}`);
    expect(invited.body.title).toBe('Six Lanterns');
  });

  it('[P22] empties the glasses of a swapped bottle, once, and of a mended one none', async () => {
    const made = await house.plan();
    const host = await house.host(made);
    const tick = (pours: string[]) =>
      host.raw('pouring:ask', { id: newId(), ask: { type: 'TickGlasses', places: [1, 2], pours, done: 1 } });
    await tick(['one', 'two']);
    await host.host({ type: 'OpenDoors' });
    await host.host({ type: 'MendPour', pour: 'one', bottle });
    const level = (pour: string) => levelOf(host.last('pouring')?.levels ?? [], pourId(pour), 1);
    expect([level('one'), level('two')]).toEqual([1, 1]);
    const id = newId();
    await host.host({ type: 'SwapBottle', pour: 'one', bottle }, id);
    await host.until('pouring', ({ levels }) => levelOf(levels, pourId('one'), 1) === 0);
    expect(level('two')).toBe(1);
    await tick(['one']);
    await host.until('pouring', ({ levels }) => levelOf(levels, pourId('one'), 1) === 1);
    expect(await host.host({ type: 'SwapBottle', pour: 'one', bottle }, id)).toMatchObject({ ok: true });
    await host.level();
    expect(level('one')).toBe(1);
  });

  it('adds a pour that can be poured at once, and moves it before the others', async () => {
    const { made, host, noor } = await house.evening();
    const spare = { type: 'AddPour', pour: 'spare', drink: 'spirit', bottle, code: null };
    expect(await host.host(spare)).toMatchObject({ ok: true });
    expect(
      await host.raw('pouring:ask', {
        id: newId(),
        ask: { type: 'TickGlasses', places: [1], pours: ['spare'], done: 1 },
      }),
    ).toMatchObject({ ok: true });
    const order = ['spare', 'three', 'two', 'one'];
    expect(await host.host({ type: 'ReorderGlasses', order })).toMatchObject({ ok: true });
    await host.host({ type: 'JumpTo', cue: 'spare/first/nose' });
    const stage = await noor.until('stage', (seen) => 'cue' in seen && seen.cue.id === 'spare/first/nose');
    expect(stage).toMatchObject({ cue: { position: 4 } });
    expect((await planNow(made)).numbers).toEqual(['one', 'two', 'three', 'spare']);
  });

  it('takes no bottle with what is no fact of one', async () => {
    const { host } = await house.evening();
    for (const more of [
      { id: 'two' },
      { drink: 'wine' },
      { abv: 'strong' },
      { name: '' },
      { __proto__x: 1 },
    ]) {
      expect(
        await host.host({ type: 'SwapBottle', pour: 'one', bottle: { ...bottle, ...more } }),
      ).toMatchObject({
        ok: false,
        code: 'malformed',
      });
    }
    expect(await host.host({ type: 'ReorderGlasses', order: ['three', 'two'] })).toMatchObject({
      code: 'moved-on',
    });
  });
});
