import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { DevicesView } from '../../shared/wire/devices.ts';
import type { IssuedKey, Keepsake, TakenSeat } from '../../shared/wire/http.ts';
import type { DeviceAck } from '../../shared/wire/protocol.ts';
import { credentials, type Device } from './support/device.ts';
import { aKey, House } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';

let house: House;
let clock: ManualClock;
let made: Awaited<ReturnType<House['evening']>>['made'];
let host: Device;
let noor: Awaited<ReturnType<House['evening']>>['noor'];
beforeEach(async () => {
  clock = new ManualClock();
  house = await House.open({ clock });
  ({ made, host, noor } = await house.evening());
  await host.host({ type: 'JumpTo', cue: 'one/first/look' });
  await noor.save({ value: 'wet slate' });
  // Devices are listed by when they came.
  await clock.advance(1000);
});
afterEach(() => house.close());

const ask = (device: Device, asked: object) => device.raw('device:ask', asked) as Promise<DeviceAck>;
const hostLink = async (replaces = false): Promise<string> => {
  const body = { for: 'seat', seat: noor.seat, replaces };
  const path = `/api/tastings/${made.tasting}/keys`;
  return (await house.ask<IssuedKey>('POST', path, { key: made.hostKey, body })).body.key;
};
const join = (link: string, key = aKey()) =>
  house.ask<TakenSeat>('POST', '/api/devices', { body: { tasting: made.tasting, link, key } });
const enter = (key: string) => house.enter(credentials('guest', made.tasting, key));
/** A phone that comes to the seat by a link that somebody gave it. */
async function newPhone(link: string): Promise<Device & { readonly key: string }> {
  const key = aKey();
  await join(link, key);
  const device = await enter(key);
  await device.until('devices');
  return Object.assign(device, { key });
}
const keepsake = (key: string) => house.ask<Keepsake>('GET', `/api/keepsake/${made.tasting}`, { key });
const devicesOf = (view: DevicesView | undefined) =>
  view?.devices.map(({ came, opens, link }) => ({ came, opens, link }));
const door = { came: 'door', opens: true, link: false };

describe('[S4] a device that the host brought to a seat', () => {
  it('sits and follows, and has no word of the notes, no sharing, nothing to forget', async () => {
    const link = await hostLink();
    const phone = await newPhone(link);
    expect(phone.last('seat')).toMatchObject({ seat: noor.seat, name: 'Noor' });
    expect(phone.last('stage')).toMatchObject({ status: 'under-way' });
    expect(await phone.guest({ type: 'AcceptGroundRules' })).toMatchObject({ ok: true });
    expect(phone.last('notebook')).toEqual({ seat: noor.seat, entries: [], consents: [], sharings: [] });
    await noor.save({ value: 'wet slate, hay', base: 1 });
    await noor.share();
    await phone.level();
    expect(phone.frames.join('\n')).not.toMatch(/slate|"sharing"/);
    expect(await phone.share()).toMatchObject({ ok: false, code: 'notes-closed' });
    expect(JSON.stringify((await keepsake(phone.key)).body)).not.toMatch(/slate/);
    expect(await house.ask('DELETE', `/api/keepsake/${made.tasting}`, { key: phone.key })).toMatchObject({
      status: 403,
    });
    expect(await house.ask('POST', '/api/devices/links', { key: phone.key })).toMatchObject({ status: 403 });
    for (const asked of [{ type: 'LetIn' }, { type: 'End' }]) {
      const own = phone.last('devices')?.own;
      expect(await ask(phone, { ...asked, device: own })).toMatchObject({ code: 'notes-closed' });
    }
    expect(await ask(phone, { type: 'MakeWords', language: 'en' })).toMatchObject({ code: 'notes-closed' });
  });

  it('cannot be let in by whoever knows its key: only what made its own key asks for the notes', async () => {
    const link = await hostLink();
    const sitting = await enter(link);
    await sitting.until('devices');
    const shown = noor.last('devices')?.devices.at(-1);
    expect(shown).toMatchObject({ came: 'host', opens: false, link: true, number: null });
    expect(await ask(noor, { type: 'LetIn', device: shown?.device })).toMatchObject({
      code: 'nothing-to-do',
    });
    // The link is good for one device, and for nothing after that.
    expect((await join(link)).status).toBe(201);
    expect((await join(link)).status).toBe(401);
    expect(await sitting.dismissed()).toBe('key-withdrawn');
  });

  it('is told of on the guest’s own devices, shows the same number there, and is let in with one tap', async () => {
    const phone = await newPhone(await hostLink());
    const asking = (
      await noor.until('devices', ({ devices }) => devices.some(({ number }) => number !== null))
    ).devices[1];
    expect(asking?.number).toBe(phone.last('devices')?.number);
    // What it writes meanwhile is on pages of its own, and on nobody's table.
    expect(await phone.save({ value: 'cut grass', base: 0 })).toMatchObject({ ok: true, value: 'cut grass' });
    await noor.level();
    expect(noor.last('notebook')?.entries ?? []).not.toMatchObject([{ value: 'cut grass' }]);
    expect((await keepsake(phone.key)).body.pours[0]?.entries).toMatchObject([{ value: 'cut grass' }]);

    expect(await ask(noor, { type: 'LetIn', device: asking?.device })).toEqual({ ok: true });
    const both = await phone.until('notebook', ({ entries }) =>
      entries.some(({ value }) => String(value).includes('slate')),
    );
    expect(both.entries).toMatchObject([
      { field: 'nose', value: expect.stringMatching(/wet slate\n*.*cut grass/), revision: 2 },
    ]);
    expect(phone.last('devices')).toMatchObject({ opens: true, number: null });
    expect(await phone.share()).toMatchObject({ ok: true });
    await phone.save({ value: 'from the new phone', field: 'palate' });
    expect(
      (await noor.until('notebook', ({ entries }) => entries[0]?.field === 'palate')).entries[0]?.value,
    ).toBe('from the new phone');
  });

  it('is sent away from any of the guest’s devices', async () => {
    const phone = await newPhone(await hostLink());
    await phone.save({ value: 'a stranger was here', base: 0 });
    const { own } = phone.last('devices') ?? {};
    expect(await ask(noor, { type: 'End', device: own })).toEqual({ ok: true });
    expect(await phone.dismissed()).toBe('key-withdrawn');
    expect(devicesOf(noor.last('devices'))).toEqual([door]);
    await expect(enter(phone.key)).rejects.toMatchObject({ code: 'wrong-key' });
  });

  it('opens nothing either where the host withdrew every device before', async () => {
    const phone = await newPhone(await hostLink(true));
    expect(await noor.dismissed()).toBe('key-withdrawn');
    expect(phone.last('notebook')?.entries).toEqual([]);
    expect(await ask(phone, { type: 'SayWords', words: 'any four words here' })).toMatchObject({
      code: 'no-words',
    });
  });
});

describe('[S4] the four words', () => {
  async function wordsOfNoor(): Promise<readonly string[]> {
    const answer = await ask(noor, { type: 'MakeWords', language: 'en' });
    return answer.ok ? (answer.words ?? []) : [];
  }

  it('open the notes on a new phone when every old one is gone', async () => {
    const words = await wordsOfNoor();
    expect(words).toHaveLength(4);
    const phone = await newPhone(await hostLink(true));
    await phone.save({ value: 'cut grass', base: 0 });
    const said = `  ${words.join(', ').toUpperCase()} `;
    expect(await ask(phone, { type: 'SayWords', words: said })).toEqual({ ok: true });
    expect((await keepsake(phone.key)).body.pours[0]?.entries).toMatchObject([
      { value: expect.stringMatching(/wet slate\n*.*cut grass/) },
    ]);
  });

  it('are shown to nobody again, reach no other device, and end when new ones are made', async () => {
    const old = await wordsOfNoor();
    expect(await ask(noor, { type: 'MakeWords', language: 'en' })).toMatchObject({ code: 'too-fast' });
    await clock.advance(6000);
    const words = await wordsOfNoor();
    const phone = await newPhone(await hostLink());
    await host.level();
    for (const device of [host, phone]) {
      for (const made of [old, words]) expect(device.frames.join('\n')).not.toMatch(made.join('(","|\\W)'));
    }
    expect(await ask(phone, { type: 'SayWords', words: old.join(' ') })).toMatchObject({
      code: 'wrong-words',
    });
    expect(await ask(phone, { type: 'SayWords', words: words.join(' ') })).toEqual({ ok: true });
  });

  it('can be tried five times, and once more each hour, also over a new device and by many at once', async () => {
    const words = await wordsOfNoor();
    const phone = await newPhone(await hostLink());
    const tried = await Promise.all(
      Array.from({ length: 8 }, () => ask(phone, { type: 'SayWords', words: 'not the right ones' })),
    );
    const codes = tried.map((each) => (each.ok ? 'in' : each.code)).sort();
    expect(codes).toEqual([...Array(3).fill('too-many-tries'), ...Array(5).fill('wrong-words')]);
    const other = await newPhone(await hostLink());
    expect(other.last('devices')?.tries).toEqual({ left: 0, moreAt: clock.now() + 3_600_000 });
    expect(await ask(other, { type: 'SayWords', words: words.join(' ') })).toMatchObject({
      code: 'too-many-tries',
    });
    await clock.advance(3_600_000);
    expect(await ask(other, { type: 'SayWords', words: words.join(' ') })).toEqual({ ok: true });
    expect(other.last('devices')).toMatchObject({ opens: true });
  });
});

describe('[S4] a link of the guest’s own', () => {
  it('carries their consent, and each device that comes by it is told of and can be ended by itself', async () => {
    const { body } = await house.ask<IssuedKey>('POST', '/api/devices/links', { key: noor.key });
    await clock.advance(1000);
    const phone = await newPhone(body.key);
    expect(phone.last('notebook')?.entries).toMatchObject([{ value: 'wet slate' }]);
    const byLink = { came: 'link', opens: true };
    const all = [door, { ...byLink, link: true }, { ...byLink, link: false }];
    expect(devicesOf(noor.last('devices'))).toEqual(all);
    expect(devicesOf(phone.last('devices'))).toEqual(all);
    const link = noor.last('devices')?.devices[1]?.device;
    await ask(noor, { type: 'End', device: link });
    expect((await join(body.key)).status).toBe(401);
    await phone.level();
    expect(phone.closed).toBe(false);
    await ask(phone, { type: 'End', device: noor.last('devices')?.own });
    expect(await noor.dismissed()).toBe('key-withdrawn');
  });

  it('is of no use for another tasting, for a key that is taken, and beyond five devices', async () => {
    const { body } = await house.ask<IssuedKey>('POST', '/api/devices/links', { key: noor.key });
    const key = aKey();
    expect((await join(body.key, key)).status).toBe(201);
    // The same again, because its answer was lost.
    expect(await join(body.key, key)).toMatchObject({ status: 200, body: { seat: noor.seat } });
    expect((await join(body.key, made.hostKey)).status).toBe(401);
    const elsewhere = { tasting: (await house.plan()).tasting, link: body.key, key: aKey() };
    expect((await house.ask('POST', '/api/devices', { body: elsewhere })).status).toBe(401);
    for (let more = 0; more < 3; more += 1) expect((await join(body.key)).status).toBe(201);
    expect(await join(body.key)).toMatchObject({ status: 409, body: { code: 'too-many-devices' } });
  });

  it('has its place whoever else was given a link: those without the notes push nobody off who has them', async () => {
    const strangers: Device[] = [];
    for (let count = 0; count < 5; count += 1) {
      strangers.push(await newPhone(await hostLink()));
      await clock.advance(2000);
    }
    expect(await join(await hostLink())).toMatchObject({ status: 409, body: { code: 'too-many-devices' } });
    // They come back all together, again and again, and ask as fast as they can.
    const sitting = credentials('guest', made.tasting, await hostLink());
    await clock.advance(60_000);
    let coming = true;
    void Promise.all(Array.from({ length: 30 }, () => house.enter(sitting).catch(() => undefined))).then(
      () => {
        coming = false;
      },
    );
    // Who comes too often hears of it only after a while, by the clock that stands still here.
    while (coming) {
      await clock.advance(500);
      await new Promise((resolve) => setTimeout(resolve, 10));
    }
    expect(await strangers[0]?.dismissed()).toBe('too-many-devices');
    for (let count = 0; count < 150; count += 1)
      void strangers[4]?.raw('probe', { roundTrip: null }).catch(() => undefined);
    expect(await noor.save({ value: 'wet slate, hay', base: 1 })).toMatchObject({ ok: true });
    // The guest's own laptop has room, and the phone comes back as ever.
    const { body } = await house.ask<IssuedKey>('POST', '/api/devices/links', { key: noor.key });
    const laptop = await newPhone(body.key);
    expect(laptop.last('devices')).toMatchObject({ opens: true });
    expect((await enter(noor.key)).closed).toBe(false);
    await noor.level();
    expect(noor.closed).toBe(false);
  });
});
