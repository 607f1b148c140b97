import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { TastingId } from '../../core/ids.ts';
import type { IssuedKey } from '../../shared/wire/http.ts';
import type { Refusal } from '../../shared/wire/protocol.ts';
import { memoryStore } from '../support/memory-store.ts';
import { credentials } from './support/device.ts';
import { aKey, House, houseKey } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';

let house: House;
let clock: ManualClock;
beforeEach(async () => {
  clock = new ManualClock();
  house = await House.open({ clock, store: memoryStore(), seatLimit: 20 });
});
afterEach(() => house.close());

const refusalOf = (promise: Promise<unknown>): Promise<Refusal> =>
  promise.then(
    () => {
      throw new Error('It was let in.');
    },
    (refusal: Refusal) => refusal,
  );
const codeOf = async (promise: Promise<unknown>) => (await refusalOf(promise)).code;

describe('the door of the socket', () => {
  it('refuses keys that are wrong, of another tasting, of another role, or too old', async () => {
    const { made, noor } = await house.evening();
    const other = await house.plan();
    const { tasting, hostKey } = made;
    expect(await codeOf(house.enter(credentials('host', tasting, 'a-key-that-nobody-was-given-0000')))).toBe(
      'wrong-key',
    );
    expect(await codeOf(house.enter(credentials('host', tasting, other.hostKey)))).toBe('wrong-key');
    expect(await codeOf(house.enter(credentials('host', tasting, noor.key)))).toBe('wrong-role');
    expect(await codeOf(house.enter(credentials('screen', tasting, noor.key)))).toBe('wrong-role');
    expect(await codeOf(house.enter(credentials('guest', tasting, hostKey)))).toBe('wrong-role');

    const asked = { key: hostKey, body: { for: 'host' } };
    const { body } = await house.ask<IssuedKey>('POST', `/api/tastings/${tasting}/keys`, asked);
    (await house.enter(credentials('host', tasting, body.key))).close();
    await clock.advance((body.expiresAt ?? 0) - clock.now());
    expect(await codeOf(house.enter(credentials('host', tasting, body.key)))).toBe('wrong-key');
  });

  it('says nothing of which tastings exist to who has no key', async () => {
    const none = 'no-such-tasting' as TastingId;
    expect(await codeOf(house.enter(credentials('guest', none, aKey())))).toBe('wrong-key');
    expect(await codeOf(house.enter(credentials('host', none, houseKey)))).toBe('no-such-tasting');
  });

  it('lets the house key conduct any tasting', async () => {
    const { tasting } = await house.plan();
    const host = await house.enter(credentials('host', tasting, houseKey));
    expect(await host.host({ type: 'OpenDoors' })).toMatchObject({ ok: true });
  });

  it('tells an older page to load again, whatever else it shows', async () => {
    const { tasting, hostKey } = await house.plan();
    const shown = credentials('host', tasting, hostKey);
    const refusal = await refusalOf(house.enter({ ...shown, protocol: 0, extra: 'from before' }));
    expect(refusal).toMatchObject({
      code: 'wrong-protocol',
      message: expect.stringMatching(/load it again/),
    });
    expect(await codeOf(house.enter({}))).toBe('malformed');
    expect(await codeOf(house.enter({ ...shown, tasting: { $ne: 1 } }))).toBe('malformed');
    expect(await codeOf(house.enter({ ...shown, role: '__proto__' }))).toBe('malformed');
  });

  it('stops pages of other sites before they can say anything', async () => {
    const { tasting, hostKey } = await house.plan();
    const shown = credentials('host', tasting, hostKey);
    await expect(house.enter(shown, { origin: 'https://elsewhere.example' })).rejects.toThrow();
    await expect(house.enter(shown, { origin: 'null' })).rejects.toThrow();
    await expect(house.enter(shown, { origin: `${house.url}0` })).rejects.toThrow();
    await house.enter(shown, { origin: house.url });

    const headers = { origin: 'https://elsewhere.example' };
    const answer = await house.ask<Refusal>('POST', '/api/tastings', { key: houseKey, body: {}, headers });
    expect(answer).toMatchObject({ status: 403, body: { code: 'foreign-origin' } });
  });

  it('lets in pages of an origin that was named at the start', async () => {
    const named = await House.open({ origins: ['https://tasting.example'] });
    const { tasting, hostKey } = await named.plan();
    await named.enter(credentials('host', tasting, hostKey), { origin: 'https://tasting.example' });
    await named.close();
  });
});

describe('taking a seat', () => {
  it('takes a code in any case, with spaces, dashes and look-alikes', async () => {
    const { made } = await house.evening();
    const typed = [...made.code.toLowerCase()].join('-').replaceAll('0', 'o').replaceAll('1', 'l');
    expect((await house.takeSeat(` ${typed} `)).status).toBe(201);
  });

  it('gives the same seat to the same request, one after the other or both at once', async () => {
    const { made, host } = await house.evening();
    const same = { id: 'one-and-the-same', key: aKey() };
    const answers = await Promise.all(Array.from({ length: 10 }, () => house.takeSeat(made.code, same)));
    answers.push(await house.takeSeat(made.code, same));
    expect(new Set(answers.map(({ body }) => body.seat)).size).toBe(1);
    await clock.advance(1000);
    await host.level();
    expect(host.last('host')?.seats).toHaveLength(3);
    expect(house.log.lines).toEqual([]);
    // A key is good for one tasting, and another's key is nobody's.
    const other = await house.plan();
    expect((await house.takeSeat(other.code, same)).body).toMatchObject({ code: 'wrong-key' });
  });

  it('lets nobody sit before the doors are open, or when they are closed, and waits where the host wants to see', async () => {
    const made = await house.plan();
    const request = { id: 'asked-until-it-works', key: aKey() };
    expect((await house.takeSeat(made.code, request)).body).toMatchObject({ code: 'not-open' });
    const host = await house.host(made);
    await host.host({ type: 'OpenDoors' });
    expect((await house.takeSeat(made.code, request)).status).toBe(201);
    await host.host({ type: 'SetDoors', doors: 'closed' });
    expect(await house.takeSeat(made.code)).toMatchObject({ status: 403, body: { code: 'doors-closed' } });

    await host.host({ type: 'SetDoors', doors: 'ask' });
    const late = await house.guest(made, 'Late');
    await late.level();
    expect(late.heard.map(({ event }) => event)).toEqual(['seat']);
    expect(late.last('seat')?.presence).toBe('waiting');
    expect(await late.save({ value: 'let me in' })).toMatchObject({ ok: false, code: 'not-seated' });
    await host.host({ type: 'AdmitSeat', seat: late.seat });
    await late.until('stage');
    await late.until('seat', ({ presence }) => presence === 'seated');
  });

  it('keeps names harmless: 500 characters, direction marks, HTML, nothing', async () => {
    const { made, host } = await house.evening();
    expect(await house.takeSeat(made.code, { name: 'x'.repeat(500) })).toMatchObject({ status: 400 });
    expect(await house.takeSeat(made.code, { name: ' \u202e\u0000 ' })).toMatchObject({ status: 400 });
    await house.takeSeat(made.code, { name: ' Ada\u202e  <b>\ud800Lovely</b>\n' });
    await clock.advance(1000);
    const view = await host.until('host', ({ seats }) => seats.length === 3);
    expect(view.seats[2]?.name).toBe('Ada <b>Lovely</b>');
  });

  it('fills a table and no more', async () => {
    const { made } = await house.evening();
    for (let seat = 3; seat <= 20; seat += 1) expect((await house.takeSeat(made.code)).status).toBe(201);
    expect(await house.takeSeat(made.code)).toMatchObject({ status: 409, body: { code: 'table-full' } });
  });

  it('tells a removed guest, lets go of their devices, and lets them back only when the host does', async () => {
    const { made, host, noor, tomas } = await house.evening();
    await host.host({ type: 'JumpTo', cue: 'one/first/look' });
    await noor.save({ value: 'kept' });
    expect(await host.host({ type: 'RemoveSeat', seat: noor.seat })).toMatchObject({ ok: true });
    expect(await noor.dismissed()).toBe('removed');
    const back = credentials('guest', made.tasting, noor.key);
    expect(await codeOf(house.enter(back))).toBe('not-seated');
    expect(tomas.closed).toBe(false);
    await host.host({ type: 'RestoreSeat', seat: noor.seat });
    const again = await house.enter(back);
    expect((await again.until('notebook')).entries[0]?.value).toBe('kept');
  });
});

describe('guessing codes', () => {
  const guess = (index: number) => `000${String(index).padStart(3, '0')}`;

  it('slows down wrong codes more and more, and never a right one', async () => {
    const { made } = await house.evening();
    const statuses: number[] = [];
    let wait = 0;
    for (let index = 0; index < 12; index += 1) {
      const answer = await house.ask<Refusal>('GET', `/api/invitations/${guess(index)}`);
      statuses.push(answer.status);
      wait = Math.max(wait, Number(answer.headers.get('retry-after') ?? 0));
    }
    expect(statuses.slice(0, 5)).toEqual([404, 404, 404, 404, 404]);
    expect(new Set(statuses.slice(5))).toEqual(new Set([429]));
    expect((await house.takeSeat(guess(99))).body).toMatchObject({ code: 'too-many-tries' });
    expect((await house.takeSeat(made.code)).status).toBe(201);
    expect((await house.ask('GET', `/api/invitations/${made.code}`)).status).toBe(200);

    // Each pause is twice as long as the one before.
    const pauses: number[] = [];
    for (let round = 0; round < 4; round += 1) {
      await clock.advance(wait * 1000);
      const answer = await house.ask('GET', `/api/invitations/${guess(round)}`);
      wait = Number(answer.headers.get('retry-after'));
      pauses.push(wait);
    }
    expect(pauses).toEqual([2, 4, 8, 16]);
  });

  it('counts all addresses together too', async () => {
    const { made } = await house.evening();
    const statuses = new Set<number>();
    for (let index = 0; index < 60; index += 1) {
      const headers = { 'x-forwarded-for': `198.51.100.${index}` };
      statuses.add((await house.ask('GET', `/api/invitations/${guess(index)}`, { headers })).status);
    }
    expect(statuses).toEqual(new Set([404, 429]));
    expect((await house.takeSeat(made.code)).status).toBe(201);
  });
});
