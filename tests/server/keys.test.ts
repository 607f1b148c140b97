import SqliteDatabase from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openSqliteStore } from '../../server/store/sqlite.ts';
import type { IssuedKey } from '../../shared/wire/http.ts';
import type { Refusal } from '../../shared/wire/protocol.ts';
import { credentials } from './support/device.ts';
import { aKey, House, houseKey } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';
import { temporaryFolder } from './support/process.ts';

let house: House;
let clock: ManualClock;
beforeEach(async () => {
  clock = new ManualClock();
  house = await House.open({ clock });
});
afterEach(() => house.close());

const codeOf = (entering: Promise<unknown>): Promise<string> =>
  entering.then(
    () => 'let in',
    (refusal: Refusal) => refusal.code,
  );

describe('keys', () => {
  it('are changed by the host for new ones: who holds an old one is told and let go, and nobody else', async () => {
    const { made, host, noor, tomas } = await house.evening();
    const path = `/api/tastings/${made.tasting}/keys`;
    const screen = await house.enter(credentials('screen', made.tasting, made.hostKey));
    const body = { for: 'host', replaces: true };
    const changed = await house.ask<IssuedKey>('POST', path, { key: made.hostKey, body });
    expect(changed).toMatchObject({ status: 201, body: { expiresAt: null } });
    expect(await host.dismissed()).toBe('key-withdrawn');
    expect(await screen.dismissed()).toBe('key-withdrawn');
    expect(await codeOf(house.host(made))).toBe('wrong-key');
    expect(await house.ask('GET', `/api/tastings/${made.tasting}/plan`, { key: made.hostKey })).toMatchObject(
      {
        status: 401,
      },
    );
    const again = await house.host({ ...made, hostKey: changed.body.key });
    expect(await again.host({ type: 'GiveTime', seconds: 60 })).toMatchObject({ ok: true });

    const forNoor = { for: 'seat', seat: noor.seat, replaces: true };
    const fresh = await house.ask<IssuedKey>('POST', path, { key: changed.body.key, body: forNoor });
    expect(await noor.dismissed()).toBe('key-withdrawn');
    expect(await codeOf(house.enter(credentials('guest', made.tasting, noor.key)))).toBe('wrong-key');
    const back = await house.enter(credentials('guest', made.tasting, fresh.body.key));
    expect((await back.until('seat')).seat).toBe(noor.seat);
    await tomas.level();
    expect([tomas.closed, again.closed]).toEqual([false, false]);
  });

  it('are withdrawn without a new one, by the host only', async () => {
    const { made, host, noor, tomas } = await house.evening();
    const path = `/api/tastings/${made.tasting}/keys`;
    for (const [key, status] of [
      [noor.key, 403],
      [(await house.plan()).hostKey, 401],
      ['nobody', 401],
    ] as const) {
      expect(await house.ask('DELETE', `${path}/seat/${tomas.seat}`, { key })).toMatchObject({ status });
    }
    await tomas.level();
    expect(tomas.closed).toBe(false);
    expect(await house.ask('DELETE', `${path}/seat/toString`, { key: made.hostKey })).toMatchObject({
      status: 404,
    });
    expect(await house.ask('DELETE', `${path}/house`, { key: made.hostKey })).toMatchObject({ status: 404 });

    const gone = await house.ask('DELETE', `${path}/seat/${tomas.seat}`, { key: made.hostKey });
    expect(gone.status).toBe(204);
    expect(await tomas.dismissed()).toBe('key-withdrawn');
    await host.level();
    expect(host.closed).toBe(false);
    await house.ask('DELETE', `${path}/host`, { key: houseKey });
    expect(await host.dismissed()).toBe('key-withdrawn');
    // Whoever runs the house is never locked out.
    await house.enter(credentials('host', made.tasting, houseKey));
  });

  it('that grow old while a device is connected open nothing any more', async () => {
    const { made, noor } = await house.evening();
    const path = `/api/tastings/${made.tasting}/keys`;
    const { body } = await house.ask<IssuedKey>('POST', path, {
      key: made.hostKey,
      body: { for: 'seat', seat: noor.seat },
    });
    const second = await house.enter(credentials('guest', made.tasting, body.key));
    expect(await second.guest({ type: 'AcceptGroundRules' })).toMatchObject({ ok: true });
    await clock.advance((body.expiresAt ?? 0) - clock.now());
    expect(await second.guest({ type: 'LeaveTable' })).toMatchObject({ ok: false, code: 'wrong-key' });
    expect(await second.dismissed()).toBe('key-withdrawn');
    await noor.level();
    expect(noor.last('seat')?.presence).toBe('seated');
  });

  it('have 128 bits or more and are stored as hashes only', async () => {
    const folder = temporaryFolder();
    const file = `${folder.path}/quietpour.db`;
    const stored = await House.open({ store: openSqliteStore(file) });
    const { made, noor } = await stored.evening();
    const path = `/api/tastings/${made.tasting}/keys`;
    const { body } = await stored.ask<IssuedKey>('POST', path, { key: made.hostKey, body: { for: 'host' } });
    // 64 letters make six bits each.
    for (const key of [made.hostKey, body.key]) expect(key).toMatch(/^[A-Za-z0-9_-]{22,}$/);
    expect((await stored.takeSeat(made.code, { key: 'k'.repeat(21) })).status).toBe(400);
    await stored.close();
    const db = new SqliteDatabase(file);
    const everything = JSON.stringify([
      db.serialize().toString('latin1'),
      db.prepare('SELECT hash FROM keys').pluck().all(),
    ]);
    for (const key of [made.hostKey, body.key, noor.key, houseKey]) expect(everything).not.toContain(key);
    db.close();
    folder.remove();
  });

  it('open one seat each: nobody sits on another’s chair or reads another’s notes', async () => {
    const { made, host, noor, tomas } = await house.evening();
    await host.host({ type: 'JumpTo', cue: 'one/first/look' });
    await noor.save({ value: 'only mine' });
    const mine = await house.ask('GET', `/api/keepsake/${made.tasting}`, { key: tomas.key });
    expect(JSON.stringify(mine.body)).not.toContain('only mine');
    // Asking for the seat with another's name, or with the id of their request, makes a new seat.
    const again = await house.takeSeat(made.code, { key: aKey(), name: 'Noor' });
    expect(again.body.seat).not.toBe(noor.seat);
    expect(await tomas.raw('note:save', { id: 'abcdefgh', seat: noor.seat, pour: 'one' })).toMatchObject({
      code: 'malformed',
    });
    expect(
      await codeOf(house.enter({ ...credentials('guest', made.tasting, tomas.key), seat: noor.seat })),
    ).toBe('malformed');
  });
});
