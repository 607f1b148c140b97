import sharp from 'sharp';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '../../server/store/store.ts';
import type { CreatedTasting, CrowdView } from '../../shared/wire/http.ts';
import type { Refusal } from '../../shared/wire/protocol.ts';
import { memoryStore } from '../support/memory-store.ts';
import { credentials } from './support/device.ts';
import { aKey, House, newSeat } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';

let house: House;
let clock: ManualClock;
let store: Store;
beforeEach(async () => {
  clock = new ManualClock();
  store = memoryStore();
  house = await House.open({ clock, store, seatLimit: 20 });
});
afterEach(() => house.close());

const from = (address: string) => ({ 'x-forwarded-for': address });
const sit = (made: CreatedTasting, address: string, key = aKey()) =>
  house.ask<Refusal>('POST', '/api/seats', { body: newSeat(made.code, { key }), headers: from(address) });
const address = (index: number) => `198.51.${index >> 8}.${index & 255}`;

describe('a table that somebody has filled with seats', () => {
  it('[S3] makes room for guests: seats without a word, a sign or a device give way to who comes', async () => {
    const { made, host, noor, tomas } = await house.evening();
    await host.host({ type: 'JumpTo', cue: 'one/first/look' });
    const ghost = aKey();
    await sit(made, address(0), ghost);
    // A guest who wrote and then put the phone away, and one who only accepted the ground rules.
    const writer = await house.guest(made, 'Writer');
    await writer.save({ value: 'pears' });
    writer.close();
    const quiet = await house.guest(made, 'Quiet');
    await quiet.guest({ type: 'AcceptGroundRules' });
    quiet.close();
    const gone = await house.guest(made, 'Gone');
    gone.close();
    const here = async (seats: number): Promise<void> => {
      do {
        await clock.advance(250);
        await host.level();
      } while (host.last('presence')?.seats.length !== seats);
    };
    await here(2);
    for (let index = 1; index < 15; index += 1) expect((await sit(made, address(index))).status).toBe(201);
    expect((await sit(made, address(100))).body).toMatchObject({ code: 'table-full' });
    await clock.advance(60_000);
    const rows = () => host.last('host')?.seats.length;
    const ada = await house.guest(made, 'Ada');
    await clock.advance(1000);
    await host.level();
    expect(rows()).toBe(20);
    // The seat that gave way is not there any more, and its key opens nothing.
    await expect(house.enter(credentials('guest', made.tasting, ghost))).rejects.toMatchObject({
      code: 'wrong-key',
    });
    for (let index = 0; index < 14; index += 1) await house.guest(made, `Guest ${index}`);
    // Who has been here keeps the chair for ten minutes; who wrote or accepted keeps it for good.
    expect((await sit(made, address(101))).body).toMatchObject({ code: 'table-full' });
    await clock.advance(600_000);
    await house.guest(made, 'After ten minutes');
    expect((await sit(made, address(102))).body).toMatchObject({ code: 'table-full' });
    await expect(house.enter(credentials('guest', made.tasting, gone.key))).rejects.toMatchObject({
      code: 'wrong-key',
    });
    for (const kept of [writer, quiet]) await house.enter(credentials('guest', made.tasting, kept.key));
    for (const each of [ada, noor, tomas]) await each.level();
  }, 120_000);

  it('was filled from many addresses: one address sits a whole table and a little more, then one by one', async () => {
    const { made, host } = await house.evening();
    const begun = clock.now();
    let seated = 0;
    let refused: unknown;
    for (let index = 0; refused === undefined; index += 1) {
      const { status, body } = await sit(made, '203.0.113.7');
      if (status === 201) seated += 1;
      else if (body.code === 'too-fast') refused = body;
      else await clock.advance(120_000);
      expect(index).toBeLessThan(200);
    }
    expect(seated).toBeLessThanOrEqual(20 + 50 + (clock.now() - begun) / 30_000 + 1);
    expect(refused).toMatchObject({ message: expect.stringMatching(/wait/) });
    // Nobody else pays for it, and after a while there is one more for that address too.
    expect((await sit(made, '203.0.113.8')).body.code).not.toBe('too-fast');
    await clock.advance(31_000);
    expect((await sit(made, '203.0.113.7')).body.code).not.toBe('too-fast');
    await host.level();
  }, 120_000);

  it('still takes forty guests behind one router at once', async () => {
    const big = await House.open({ clock, store: memoryStore(), seatLimit: 200 });
    const { made } = await big.evening();
    const statuses = await Promise.all(
      Array.from({ length: 198 }, async () => {
        const body = newSeat(made.code);
        return (await big.ask('POST', '/api/seats', { body, headers: from('203.0.113.7') })).status;
      }),
    );
    expect(new Set(statuses)).toEqual(new Set([201]));
    await big.close();
  }, 120_000);
});

describe('what guests say of themselves beforehand', () => {
  it('cannot be shut by a program: later answers take the place of others, and one address gives so many', async () => {
    const { code, tasting, hostKey } = await house.plan();
    const answer = (respondent: number, where: string, score: number) =>
      house.ask('PUT', `/api/invitations/${code}/survey`, {
        body: {
          respondent: `respondent-${String(respondent).padStart(12, '0')}`,
          answers: { 'tastings-sat-through': score },
        },
        headers: from(where),
      });
    for (let index = 0; index < 400; index += 1) {
      await store.surveys.answer(tasting, `filled-in-by-a-program-${index}`, {}, 400);
    }
    for (let guest = 0; guest < 40; guest += 1)
      expect((await answer(guest, '203.0.113.7', 3)).status).toBe(204);
    expect((await answer(0, '203.0.113.7', 2)).status).toBe(204);
    const crowd = await house.ask<CrowdView>('GET', `/api/tastings/${tasting}/crowd`, { key: hostKey });
    expect(crowd.body.answered).toBe(400);
    const kept = store.surveys.read(tasting).filter((each) => 'tastings-sat-through' in each);
    expect(kept.length).toBeGreaterThan(30);
    let passed = 0;
    for (let index = 0; index < 100; index += 1) {
      if ((await answer(1000 + index, '203.0.113.9', 0)).status === 204) passed += 1;
    }
    expect(passed).toBe(80);
  }, 120_000);
});

describe('the door for screens', () => {
  const asks = (code: string, key: string, where: string) =>
    house.ask<Refusal>('POST', '/api/screens', { body: { code, key }, headers: from(where) });

  it('has room again once those who asked do not ask any more, and hears so many new ones from one address', async () => {
    const { made, host } = await house.evening();
    for (let screen = 0; screen < 5; screen += 1) await asks(made.code, aKey(), address(screen));
    const television = aKey();
    expect((await asks(made.code, television, address(9))).body).toMatchObject({ code: 'table-full' });
    await clock.advance(15_000);
    expect((await asks(made.code, television, address(9))).status).toBe(202);
    await clock.advance(1000);
    await host.level();
    expect(host.last('presence')?.screensAsking).toHaveLength(5);
    let numbers = 0;
    for (let round = 0; round < 20; round += 1) {
      await clock.advance(15_000);
      for (let screen = 0; screen < 5; screen += 1) {
        if ((await asks(made.code, aKey(), '203.0.113.7')).status === 202) numbers += 1;
      }
    }
    // Ten, and one more in ten seconds; without that it would be a hundred.
    expect(numbers).toBeLessThanOrEqual(10 + 30 + 1);
  }, 60_000);
});

describe('photos sent all at once', () => {
  it('are never more than a tasting holds', async () => {
    const { tasting, hostKey } = await house.plan();
    const label = { width: 8, height: 8, channels: 3, background: '#a8431f' } as const;
    const body = new Uint8Array(await sharp({ create: label }).png().toBuffer());
    const headers = { authorization: `Bearer ${hostKey}`, 'content-type': 'image/png' };
    const send = async () =>
      (await fetch(`${house.url}/api/tastings/${tasting}/photos`, { method: 'POST', headers, body })).status;
    const statuses = await Promise.all(Array.from({ length: 120 }, send));
    expect(statuses.filter((status) => status === 201)).toHaveLength(64);
    expect(statuses.filter((status) => status === 409)).toHaveLength(56);
    expect(await store.photos.count(tasting)).toBe(64);
    expect(await send()).toBe(409);
  }, 60_000);
});
