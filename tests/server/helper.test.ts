import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { IssuedKey } from '../../shared/wire/http.ts';
import type { ClientToServer } from '../../shared/wire/protocol.ts';
import { strictHelper } from '../support/strict-helper.ts';
import { credentials, type Device, newId } from './support/device.ts';
import { House } from './support/house.ts';
import { aPlan } from './support/plans.ts';

/** A helper's key pours, lays places and answers calls; whoever holds it tries everything else in vain [S6]. */
let house: House;
beforeEach(async () => {
  house = await House.open();
});
afterEach(() => house.close());

type Made = { readonly tasting: string; readonly hostKey: string; readonly code: string };
const tasting = ({ tasting: id }: Made) => `/api/tastings/${id}`;

async function helperKey(made: Made): Promise<string> {
  const asked = { key: made.hostKey, body: { for: 'helper' } };
  const { status, body } = await house.ask<IssuedKey>('POST', `${tasting(made)}/keys`, asked);
  expect(status).toBe(201);
  return body.key;
}
const enter = async (made: Made, key: string): Promise<Device> =>
  house.enter(credentials('helper', made.tasting as never, key));
const tick = (device: Device) =>
  device.raw('pouring:ask', {
    id: newId(),
    ask: { type: 'TickGlasses', places: [1], pours: ['one'], done: 1 },
  });
const answer = (device: Device, seat: string, id = newId()) =>
  device.raw('helper:ask', { id, ask: { type: 'AnswerSeat', seat } });
const call = (guest: Device, signal: string | null = 'needs-host') =>
  guest.guest({ type: 'GiveSignal', signal, cue: 'gathering' });

const secret = {
  story: 'A tale untold.',
  hostNote: 'Bought twice.',
  priceMinor: 4321,
  link: 'https://example.org/x',
};
const blindPlan = () => {
  const plan = aPlan({ blind: true, codes: { one: '731', two: '402', three: '566' } });
  return { ...plan, pours: plan.pours.map((pour) => ({ ...pour, ...secret })) };
};

describe('[S6] what a helper may', () => {
  it('pours before the doors open and after, beside the host', async () => {
    const made = await house.plan();
    const [host, helper] = [await house.host(made), await enter(made, await helperKey(made))];
    expect(strictHelper.parse(await helper.until('helper'))).toMatchObject({ stage: 'planned', calls: [] });
    expect(await tick(helper)).toMatchObject({ ok: true });
    await host.until('pouring', ({ levels }) => levels.length === 1);
    await helper.until('pouring', ({ levels }) => levels.length === 1);
    await host.host({ type: 'OpenDoors' });
    await helper.until('helper', ({ stage }) => stage === 'under-way');
  });

  it('answers calls: who calls is told with a name and a place, and once', async () => {
    const { made, host, noor, tomas } = await house.evening();
    const helper = await enter(made, await helperKey(made));
    await call(tomas, 'more-time');
    await call(noor);
    const { calls } = strictHelper.parse(await helper.until('helper', (view) => view.calls.length === 2));
    expect(calls.map(({ name, place, signal }) => [name, place, signal])).toEqual([
      ['Noor', 1, 'needs-host'],
      ['Tomas', 2, 'more-time'],
    ]);
    const id = newId();
    expect(await answer(helper, noor.seat, id)).toMatchObject({ ok: true });
    await host.until('host', ({ seats }) => seats.every(({ signal }) => signal !== 'needs-host'));
    await call(noor);
    // The same message once more has the same answer, and answers nothing anew.
    expect(await answer(helper, noor.seat, id)).toMatchObject({ ok: true });
    await helper.until('helper', (view) => view.calls.some(({ name }) => name === 'Noor'));
  });

  it('[C4] is told at which place nothing is poured any more, and may not say so itself', async () => {
    const { made, host, noor, tomas } = await house.evening();
    const helper = await enter(made, await helperKey(made));
    await host.host({ type: 'StopPouring', seat: noor.seat });
    const view = await helper.until('helper', ({ rows }) => rows.some(({ onlyWater }) => onlyWater));
    expect(
      strictHelper
        .parse(view)
        .rows.map(({ onlyWater }) => onlyWater)
        .slice(0, 2),
    ).toEqual([true, false]);
    expect((await noor.until('seat', ({ onlyWater }) => onlyWater)).onlyWater).toBe(true);
    const ask = { id: newId(), ask: { type: 'ResumePouring', seat: noor.seat } };
    expect(await helper.raw('helper:ask', ask)).toMatchObject({ ok: false });
    expect(await tomas.raw('guest:ask', ask)).toMatchObject({ ok: false });
  });

  it('sees a swapped bottle at once, and a glass that was poured from the other as empty', async () => {
    const { made, host } = await house.evening(blindPlan());
    const helper = await enter(made, await helperKey(made));
    await tick(helper);
    await host.host({ type: 'SwapBottle', pour: 'one', bottle: { name: 'Ferry House' } });
    await helper.until('helper', ({ columns }) => columns[0]?.name === 'Ferry House');
    await helper.until('pouring', ({ levels }) => levels.length === 0);
  });
});

describe('[S6] what a helper may not', () => {
  it('hears nothing of the running order, of prices, stories, photos, notes or boards', async () => {
    const { made, host, noor } = await house.evening(blindPlan());
    const helper = await enter(made, await helperKey(made));
    await host.host({ type: 'JumpTo', cue: 'one/first/nose' });
    await noor.save({ value: 'pears and a secret' });
    await noor.share();
    await host.host({ type: 'JumpTo', cue: 'one/discussion' });
    await host.host({ type: 'OpenDiscussion', pours: ['one'] });
    await host.host({ type: 'Reveal', pours: ['one'] });
    await helper.until('helper', ({ named }) => named.length === 1);
    await helper.level();
    expect(new Set(helper.heard.map(({ event }) => event))).toEqual(new Set(['helper', 'pouring']));
    const all = JSON.stringify(helper.heard) + helper.frames.join();
    for (const word of ['untold', 'twice', '4321', 'example.org', 'pears', 'first/nose', 'hostKey'])
      expect(all, word).not.toContain(word);
    for (const { event, view } of helper.heard) if (event === 'helper') strictHelper.parse(view);
  });

  it('comes in as nobody else, and nobody comes in as a helper', async () => {
    const { made, noor } = await house.evening();
    const key = await helperKey(made);
    const other = await house.plan();
    const codeOf = (role: 'host' | 'guest' | 'screen' | 'helper', shown: string, of: Made = made) =>
      house.enter(credentials(role as 'host', of.tasting as never, shown)).then(
        () => 'let in',
        ({ code }: { code: string }) => code,
      );
    for (const role of ['host', 'guest', 'screen'] as const)
      expect(await codeOf(role, key)).toBe('wrong-role');
    for (const shown of [made.hostKey, noor.key]) expect(await codeOf('helper', shown)).toBe('wrong-role');
    expect(await codeOf('helper', key, other)).toBe('wrong-key');
  });

  it('asks for anything else in vain, by every message there is', async () => {
    const { made, host, noor } = await house.evening();
    const helper = await enter(made, await helperKey(made));
    // Level with both who sat down: what comes after would be the helper's.
    const before = (await host.until('host', ({ seats }) => seats.length === 2)).version;
    const hostAsks = [
      { type: 'Advance', from: 'gathering' },
      { type: 'Hold' },
      { type: 'Reveal', pours: ['one'] },
      { type: 'OpenDiscussion', pours: ['one'] },
      { type: 'DropPour', pour: 'one' },
      { type: 'SwapBottle', pour: 'one', bottle: { name: 'Mine' } },
      { type: 'RemoveSeat', seat: noor.seat },
      { type: 'AdmitSeat', seat: noor.seat },
      { type: 'SetDoors', doors: 'closed' },
      { type: 'Finish' },
    ];
    for (const ask of [...hostAsks, { type: 'AnswerSeat', seat: noor.seat }])
      expect(await helper.raw('host:ask', { id: newId(), ask }), ask.type).toMatchObject({
        code: 'wrong-role',
      });
    // Its own message takes no other command, nor one with more in it.
    for (const ask of [...hostAsks, { type: 'AnswerSeat', seat: noor.seat, all: true }])
      expect(await helper.raw('helper:ask', { id: newId(), ask }), ask.type).toMatchObject({
        code: 'malformed',
      });
    const others = {
      'guest:ask': { id: newId(), ask: { type: 'AcceptGroundRules' } },
      'note:save': { id: newId(), pour: 'one', field: 'nose', value: 'x', base: 0 },
      'note:share': { id: newId(), pour: 'one', sharing: 'shared' },
      'note:consent': { id: newId(), pour: 'one', order: 'counts' },
      'device:ask': { type: 'MakeWords', language: 'en' },
      'call:ask': { type: 'Watch' },
    } satisfies Partial<Record<keyof ClientToServer, object>>;
    for (const [event, payload] of Object.entries(others))
      expect(await helper.raw(event, payload), event).toMatchObject({ code: 'wrong-role' });
    expect(await answer(helper, noor.seat)).toMatchObject({ code: 'nothing-to-do' });
    expect(
      await noor.raw('helper:ask', { id: newId(), ask: { type: 'AnswerSeat', seat: noor.seat } }),
    ).toMatchObject({
      code: 'wrong-role',
    });
    await host.level();
    expect(host.last('host')?.version).toBe(before);
  });

  it('asks over HTTP in vain, at every address', async () => {
    const { made, noor } = await house.evening();
    const key = await helperKey(made);
    const at = tasting(made);
    const routes: readonly (readonly [string, string, object?])[] = [
      ['POST', '/api/tastings', { plan: aPlan() }],
      ['GET', '/api/tastings'],
      ['GET', '/api/tastings/list'],
      ['GET', `${at}/plan`],
      ['GET', `${at}/opening`],
      ['PUT', `${at}/plan`, { plan: aPlan(), base: 1 }],
      ['GET', `${at}/as-it-lies`],
      ['POST', `${at}/wake`],
      ['DELETE', at],
      ['GET', `${at}/recap`],
      ['GET', `${at}/recap.json`],
      ['GET', `${at}/recap.csv`],
      ['POST', `${at}/keys`, { for: 'host' }],
      ['POST', `${at}/keys`, { for: 'helper' }],
      ['POST', `${at}/keys`, { for: 'seat', seat: noor.seat }],
      ['DELETE', `${at}/keys/host`],
      ['DELETE', `${at}/keys/helper`],
      ['DELETE', `${at}/keys/seat/${noor.seat}`],
      ['GET', `${at}/crowd`],
      ['POST', `${at}/photos`, {}],
      ['DELETE', `${at}/photos/some-photo`],
      ['POST', `${at}/screens/some-screen`, { admit: true }],
      ['DELETE', `${at}/screens`],
      ['GET', `/api/keepsake/${made.tasting}`],
      ['DELETE', `/api/keepsake/${made.tasting}`],
    ];
    for (const [method, path, body] of routes) {
      const { status } = await house.ask(method, path, { key, ...(body === undefined ? {} : { body }) });
      expect([401, 403], `${method} ${path}: ${status}`).toContain(status);
    }
    expect((await house.ask('GET', `${at}/plan`, { key: made.hostKey })).status).toBe(200);
  });

  it('keeps nothing when the host ends it, and counts as no host meanwhile', async () => {
    const { made, host } = await house.evening();
    const [one, other] = [await enter(made, await helperKey(made)), await enter(made, await helperKey(made))];
    expect((await host.until('presence')).hosts).toBe(1);
    const ended = await house.ask('DELETE', `${tasting(made)}/keys/helper`, { key: made.hostKey });
    expect(ended.status).toBe(204);
    expect(await one.dismissed()).toBe('key-withdrawn');
    expect(await other.dismissed()).toBe('key-withdrawn');
    expect(host.closed).toBe(false);
  });
});

describe('who is away', () => {
  it('is told to the host with the time since when, and not once they are back', async () => {
    const { made, host, noor, tomas } = await house.evening();
    await host.until('presence', ({ seats }) => seats.length === 2);
    noor.close();
    const { away } = await host.until('presence', ({ seats }) => seats.length === 1);
    expect(away).toEqual([{ seat: noor.seat, since: expect.any(Number) }]);
    await house.enter(credentials('guest', made.tasting, noor.key));
    expect((await host.until('presence', ({ seats }) => seats.length === 2)).away).toEqual([]);
    await tomas.level();
    expect(tomas.heard.some(({ event }) => event === 'presence')).toBe(false);
  });
});
