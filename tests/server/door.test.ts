import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { TastingId } from '../../core/ids.ts';
import type { CreatedTasting, IssuedKey, StoredPlan } from '../../shared/wire/http.ts';
import type { Refusal } from '../../shared/wire/protocol.ts';
import { memoryStore } from '../support/memory-store.ts';
import { credentials } from './support/device.ts';
import { aKey, House, houseKey } from './support/house.ts';
import { ManualClock, turns } from './support/manual-clock.ts';

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
      message: expect.stringMatching(/reload the page/),
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
  const guess = (index: number) => `${String(index).padStart(6, '0')}`;
  const from = (address: string) => ({ headers: { 'x-forwarded-for': address } });
  const invitation = (code: string, address: string) =>
    house.ask<Refusal>('GET', `/api/invitations/${code}`, from(address));
  const linkCodeOf = async ({ tasting, hostKey: key }: CreatedTasting) =>
    (await house.ask<StoredPlan>('GET', `/api/tastings/${tasting}/plan`, { key })).body.linkCode;
  const guessed = async (times: number, address: (index: number) => string) => {
    for (let index = 0; index < times; index += 1) await invitation(guess(index), address(index));
  };

  it('leaves forty guests behind one router alone, who mistype their code twice', async () => {
    const made = await house.plan();
    await guessed(80, () => '198.51.100.1');
    const answers = await Promise.all(
      Array.from({ length: 40 }, () => invitation(made.code, '198.51.100.1')),
    );
    expect(answers.map(({ status }) => status)).toEqual(Array(40).fill(200));
  });

  it('takes turns where somebody guesses: a right code comes through behind eighty programs, twelve of twelve times', async () => {
    const { made } = await house.evening();
    const here = '198.51.100.1';
    await guessed(100, () => here);
    let wrong = 0;
    let over = false;
    const program = async (index: number): Promise<void> => {
      while (!over) if ((await invitation(guess(index), here)).status === 404) wrong += 1;
    };
    const programs = Array.from({ length: 80 }, (_, index) => program(index));
    const begun = clock.now();
    for (let time = 0; time < 12; time += 1) {
      let answered: number | undefined;
      void invitation(made.code, here).then(({ status }) => {
        answered = status;
      });
      while (answered === undefined) await clock.advance(250);
      expect(answered).toBe(200);
    }
    over = true;
    const seconds = (clock.now() - begun) / 1000;
    // Twenty a second, whatever eighty programs do.
    expect(wrong).toBeLessThanOrEqual(20 * seconds + 1);
    expect(seconds / 12).toBeLessThan(10);
    let ended = false;
    void Promise.all(programs).then(() => {
      ended = true;
    });
    while (!ended) await clock.advance(1000);
  });

  it('costs more the more is guessed over the whole server, from whatever address, and a link never waits', async () => {
    const { made } = await house.evening();
    await house.enter(credentials('host', made.tasting, made.hostKey), { 'x-forwarded-for': '203.0.113.5' });
    const address = (index: number) => `198.51.${index >> 8}.${index & 255}`;
    await guessed(501, address);
    const begun = clock.now();
    let [wrong, refused, waiting] = [0, 0, 0];
    const tryAnother = (index: number): void => {
      waiting += 1;
      void invitation(guess(index), address(1000 + index)).then(({ status }) => {
        waiting -= 1;
        if (status === 404) wrong += 1;
        else refused += 1;
      });
    };
    for (let round = 0; round < 12; round += 1) {
      for (let index = 0; index < 60; index += 1) tryAnother(60 * round + index);
      await clock.advance(1000);
    }
    // More of them, until so many wait for their turn that the next are refused.
    const before = refused;
    for (let index = 1000; refused === before; index += 1) {
      tryAnother(index);
      await turns(1);
    }
    expect(wrong).toBeGreaterThan(50);
    expect(wrong).toBeLessThanOrEqual((20 * (clock.now() - begun)) / 1000 + 1);
    // A stranger is told in a sentence to take the link; with it nobody waits, nor does who sits where the host is.
    const link = await linkCodeOf(made);
    expect((await invitation(link, '192.0.2.77')).status).toBe(200);
    expect((await house.takeSeat(link)).status).toBe(201);
    expect((await invitation(made.code, '203.0.113.5')).status).toBe(200);
    expect((await invitation(made.code, '192.0.2.78')).body).toMatchObject({
      code: 'too-many-tries',
      message: expect.stringMatching(/link/),
    });
    while (waiting > 0) await clock.advance(1000);
  });

  it('has longer codes where a server is reached from elsewhere', async () => {
    expect((await house.plan()).code).toHaveLength(6);
    const named = await House.open({ origins: ['https://tasting.example'] });
    const { code } = await named.plan();
    expect(code).toHaveLength(9);
    const spoken = code.replace(/(.{3})(?=.)/g, '$1-').toLowerCase();
    expect((await named.ask('GET', `/api/invitations/${spoken}`)).status).toBe(200);
    await named.close();
  });

  it('takes a link from before the house key was changed for the code in it', async () => {
    const made = await house.plan();
    const link = await linkCodeOf(made);
    const old = link.slice(0, -1) + (link.endsWith('A') ? 'C' : 'A');
    expect((await invitation(old, '198.51.100.1')).status).toBe(200);
    expect((await invitation(`000000${link.slice(6)}`, '198.51.100.1')).body).toMatchObject({
      code: 'wrong-code',
    });
  });
});
