import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '../../server/store/store.ts';
import type { DeviceReports, DeviceResults } from '../../shared/wire/device-check.ts';
import type { Invitation, IssuedKey } from '../../shared/wire/http.ts';
import { memoryStore } from '../support/memory-store.ts';
import { aKey, House } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';
import { aPlan } from './support/plans.ts';

const whole: DeviceResults = { camera: 'works', microphone: 'works', loudspeaker: 'works', line: 'works' };
const idOf = (guest: number) => `kit-of-a-guest-${String(guest).padStart(8, '0')}`;
let house: House;
let store: Store;
let clock: ManualClock;
beforeEach(async () => {
  store = memoryStore();
  clock = new ManualClock();
  house = await House.open({ store, clock });
});
afterEach(() => house.close());

const tells = (code: string, guest: number, told: object | null, from = '203.0.113.7') =>
  house.ask<{ code?: string } | null>('PUT', `/api/invitations/${code}/kit`, {
    body: { id: idOf(guest), told },
    headers: { 'x-forwarded-for': from },
  });
const seen = async (tasting: string, key: string) =>
  (await house.ask<DeviceReports>('GET', `/api/tastings/${tasting}/kits`, { key })).body;

describe('camera and sound that were tried at home', () => {
  it('is told to the host with its name, in place of what was told before, until it is taken back', async () => {
    const { code, tasting, hostKey } = await house.plan(aPlan({ remoteGuests: 2 }));
    expect((await seen(tasting, hostKey)).kits).toEqual([]);
    expect((await tells(code, 1, { name: ' Lark ', tried: { ...whole, line: 'slow' } })).status).toBe(204);
    clock.advance(60_000);
    await tells(code, 2, { name: 'Wren', tried: { camera: 'refused', microphone: 'works' } });
    clock.advance(60_000);
    await tells(code, 1, { name: 'Lark', tried: whole });
    const { kits, reach } = await seen(tasting, hostKey);
    expect(reach).toBe('network');
    expect(kits).toEqual([
      { name: 'Lark', tried: whole, at: clock.now() },
      { name: 'Wren', tried: { camera: 'refused', microphone: 'works' }, at: clock.now() - 60_000 },
    ]);
    await tells(code, 1, null);
    expect((await seen(tasting, hostKey)).kits.map(({ name }) => name)).toEqual(['Wren']);
  });

  it('is nobody else’s to read: no guest, helper, screen or stranger, nor whoever has the code', async () => {
    const { made, noor, host } = await house.evening(aPlan({ remoteGuests: 2 }));
    await tells(made.code, 1, { name: 'Lark-at-home', tried: whole });
    const helper = await house.ask<IssuedKey>('POST', `/api/tastings/${made.tasting}/keys`, {
      key: made.hostKey,
      body: { for: 'helper' },
    });
    const other = await house.plan();
    for (const key of [noor.key, helper.body.key, other.hostKey, aKey()]) {
      const answer = await house.ask('GET', `/api/tastings/${made.tasting}/kits`, { key });
      expect([401, 403]).toContain(answer.status);
      expect(JSON.stringify(answer.body)).not.toContain('Lark-at-home');
    }
    const invitation = await house.ask<Invitation>('GET', `/api/invitations/${made.code}`);
    expect(JSON.stringify(invitation.body)).not.toContain('Lark-at-home');
    await host.level();
    await noor.level();
    expect(JSON.stringify(noor.heard)).not.toContain('Lark-at-home');
    expect(house.log.lines.join('\n')).not.toContain('Lark-at-home');
  });

  it.each([
    { id: idOf(1) },
    { id: 'short', told: null },
    { id: idOf(1), told: { name: '', tried: {} } },
    { id: idOf(1), told: { name: 'x'.repeat(500), tried: {} } },
    { id: idOf(1), told: { name: 'Lark', tried: { camera: 'splendid' } } },
    { id: idOf(1), told: { name: 'Lark', tried: { camera: 'works', notes: 'smoke' } } },
    { id: idOf(1), told: { name: 'Lark', tried: {}, seat: 'x' } },
  ])('is refused where it is not what a page sends: %j', async (body) => {
    const { code, tasting, hostKey } = await house.plan();
    expect((await house.ask('PUT', `/api/invitations/${code}/kit`, { body })).status).toBe(400);
    expect((await seen(tasting, hostKey)).kits).toEqual([]);
  });

  it('needs a code, and one address cannot fill the host’s list', async () => {
    const { code, tasting, hostKey } = await house.plan();
    expect((await tells('WRONG1', 1, { name: 'Lark', tried: whole })).body?.code).toBe('wrong-code');
    let taken = 0;
    for (let guest = 0; guest < 40; guest += 1)
      if ((await tells(code, guest, { name: `Guest ${guest}`, tried: whole })).status === 204) taken += 1;
    expect(taken).toBe(20);
    for (let guest = 100; guest < 180; guest += 1)
      await tells(code, guest, { name: `Guest ${guest}`, tried: whole }, `198.51.100.${guest}`);
    const { kits } = await seen(tasting, hostKey);
    expect(kits).toHaveLength(60);
    expect(kits[0]?.name).toBe('Guest 179');
  });

  it('is not lost where two are told in the same moment, nor when what lies there cannot be read', async () => {
    const { code, tasting, hostKey } = await house.plan();
    await Promise.all(
      [1, 2, 3, 4, 5].map((guest) => tells(code, guest, { name: `G${guest}`, tried: whole })),
    );
    expect((await seen(tasting, hostKey)).kits.map(({ name }) => name).sort()).toEqual([
      'G1',
      'G2',
      'G3',
      'G4',
      'G5',
    ]);
    await store.documents.save(tasting, 'kits', { nonsense: true }, 5);
    expect((await seen(tasting, hostKey)).kits).toEqual([]);
    expect((await tells(code, 6, { name: 'G6', tried: whole })).status).toBe(204);
    expect((await seen(tasting, hostKey)).kits.map(({ name }) => name)).toEqual(['G6']);
  });
});

describe('a line that is tried', () => {
  const send = (bytes: number, from = '203.0.113.7') =>
    fetch(`${house.url}/api/line`, {
      method: 'POST',
      body: new Uint8Array(bytes),
      headers: { 'x-forwarded-for': from },
    });

  it('takes what a page sends, and no more, and not without end', async () => {
    expect((await send(128 * 1024)).status).toBe(204);
    expect((await send(256 * 1024 + 1)).status).toBe(413);
    const statuses = [];
    for (let turn = 0; turn < 30; turn += 1) statuses.push((await send(10)).status);
    expect(statuses.filter((status) => status === 204)).toHaveLength(22);
    expect(statuses.at(-1)).toBe(429);
    expect((await send(10, '203.0.113.8')).status).toBe(204);
  });
});
