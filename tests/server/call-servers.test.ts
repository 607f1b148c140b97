import { createHmac } from 'node:crypto';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type CallSettings, callReach } from '../../server/access/call-servers.ts';
import { settingsFrom } from '../../server/settings.ts';
import type { CallServers } from '../../shared/wire/call-servers.ts';
import type { CreatedTasting, IssuedKey } from '../../shared/wire/http.ts';
import { aKey, House, houseKey } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';
import { aPlan } from './support/plans.ts';

const secret = 'lanterns-on-the-north-pier';
const both: CallSettings = {
  stun: ['stun:call.example:3478'],
  turn: ['turn:call.example:3478?transport=udp', 'turns:call.example:5349?transport=tcp'],
  secret,
};
let house: House;
let clock: ManualClock;
beforeEach(async () => {
  clock = new ManualClock();
  house = await House.open({ callServers: both, clock });
});
afterEach(() => house.close());

const asked = ({ tasting }: Pick<CreatedTasting, 'tasting'>, key?: string) =>
  house.ask<CallServers & { code?: string }>(
    'GET',
    `/api/tastings/${tasting}/call-servers`,
    key === undefined ? {} : { key },
  );

async function evening() {
  const made = await house.plan(aPlan());
  const host = await house.host(made);
  await host.host({ type: 'OpenDoors' });
  const sits = async (wanted: Record<string, unknown>) => {
    const key = aKey();
    const { body } = await house.takeSeat(made.code, { key, ...wanted });
    return { key, seat: body.seat };
  };
  return { made, host, sits };
}

describe('the servers of a call', () => {
  it('are told to the host, a guest at home and a screen that was let in, each under a name of its own', async () => {
    const { made, sits } = await evening();
    const lark = await sits({ name: 'Lark', remote: true });
    const screen = aKey();
    const knock = await house.ask<{ number: number }>('POST', '/api/screens', {
      body: { code: made.code, key: screen },
    });
    expect(knock.status).toBe(202);
    expect((await asked(made, screen)).status).toBe(401);
    const host = await house.host(made);
    const { screensAsking } = await host.until('presence', (view) => view.screensAsking.length === 1);
    await house.ask('POST', `/api/tastings/${made.tasting}/screens/${screensAsking[0]?.id}`, {
      key: made.hostKey,
      body: { admit: true },
    });

    const names = new Set<string>();
    for (const key of [made.hostKey, houseKey, lark.key, screen]) {
      const { status, body } = await asked(made, key);
      expect(status).toBe(200);
      expect(body.reach).toBe('relay');
      const [stun, turn] = body.iceServers;
      expect(stun).toEqual({ urls: both.stun });
      expect(turn?.urls).toEqual(both.turn);
      const username = turn?.username ?? '';
      names.add(username);
      // Until the next morning at the latest, and for a whole evening at the least.
      expect(Number(username.split(':')[0])).toBe(Math.floor(body.expiresAt / 1000));
      const hours = (body.expiresAt - clock.now()) / 3_600_000;
      expect(hours).toBeGreaterThanOrEqual(6);
      expect(hours).toBeLessThanOrEqual(12);
      expect(turn?.credential).toBe(createHmac('sha1', secret).update(username).digest('base64'));
      // Nothing that is handed out leads back to a key or a seat.
      for (const known of [key, lark.seat, made.tasting, secret])
        expect(JSON.stringify(body)).not.toContain(known);
    }
    expect(names.size).toBe(4);
  });

  it('are told to nobody else', async () => {
    const { made, host, sits } = await evening();
    const room = await sits({ name: 'Ada', remote: false });
    const helper = await house.ask<IssuedKey>('POST', `/api/tastings/${made.tasting}/keys`, {
      key: made.hostKey,
      body: { for: 'helper' },
    });
    expect(helper.body.key).toBeTypeOf('string');
    const other = await house.plan(aPlan());
    const refusals = [
      [await asked(made), 401],
      [await asked(made, aKey()), 401],
      [await asked(made, room.key), 403],
      [await asked(made, helper.body.key), 403],
      [await asked(made, other.hostKey), 401],
      [await asked({ tasting: 'nowhere' as typeof made.tasting }, houseKey), 404],
    ] as const;
    for (const [{ status, body }, expected] of refusals) {
      expect(status).toBe(expected);
      expect(JSON.stringify(body)).not.toMatch(/stun|turn|credential|username/);
    }
    // The invitation and the way to a seat carry nothing of them.
    const invitation = await house.ask('GET', `/api/invitations/${made.code}`);
    expect(JSON.stringify(invitation.body)).not.toMatch(/stun:|turns?:|credential|username/);
    // Who waits at the door is no guest yet, who was taken off the table no longer, and after the end nobody calls.
    const lark = await sits({ name: 'Lark', remote: true });
    await host.host({ type: 'SetDoors', doors: 'ask' });
    const wren = await sits({ name: 'Wren', remote: true });
    expect((await asked(made, lark.key)).status).toBe(200);
    expect((await asked(made, wren.key)).status).toBe(403);
    await host.host({ type: 'RemoveSeat', seat: lark.seat });
    expect((await asked(made, lark.key)).status).not.toBe(200);
    await host.host({ type: 'Finish' });
    expect((await asked(made, made.hostKey)).status).toBe(403);
  });

  it('are none where none are set, and the answer says how far a call reaches', async () => {
    const plain = await House.open();
    try {
      const made = await plain.plan(aPlan());
      const { body } = await plain.ask<CallServers>('GET', `/api/tastings/${made.tasting}/call-servers`, {
        key: made.hostKey,
      });
      expect(body).toMatchObject({ reach: 'network', iceServers: [] });
    } finally {
      await plain.close();
    }
    expect(callReach({ ...both, turn: [], secret: undefined })).toBe('public');
  });
});

describe('settings of a call', () => {
  it('are none by default', () => {
    expect(settingsFrom({}).call).toEqual({ stun: [], turn: [], secret: undefined });
    expect(
      settingsFrom({ QUIETPOUR_STUN: '', QUIETPOUR_TURN: '', QUIETPOUR_TURN_SECRET: '' }).call.turn,
    ).toEqual([]);
  });

  it.each(['stun:call.example', 'stuns:call.example:5349', 'stun:192.0.2.7:3478', 'stun:[2001:db8::7]:3478'])(
    'take %s',
    (uri) => expect(settingsFrom({ QUIETPOUR_STUN: uri }).call.stun).toEqual([uri]),
  );

  it('take several, parted by commas or spaces', () => {
    expect(
      settingsFrom({
        QUIETPOUR_STUN: 'stun:a.example, stun:b.example',
        QUIETPOUR_TURN: 'turn:a.example?transport=tcp turns:[2001:db8::7]:5349',
        QUIETPOUR_TURN_SECRET: secret,
      }).call,
    ).toEqual({
      stun: ['stun:a.example', 'stun:b.example'],
      turn: ['turn:a.example?transport=tcp', 'turns:[2001:db8::7]:5349'],
      secret,
    });
  });

  const bad = [
    ...[
      'call.example',
      'stun://call.example',
      'turn:call.example',
      'stun:call.example:0',
      'stun:',
      'stun:a:70000',
    ].map((QUIETPOUR_STUN) => [{ QUIETPOUR_STUN }, /^QUIETPOUR_STUN must list servers such as /] as const),
    ...['stun:call.example', 'turn:call.example?transport=sctp', 'turn:me@call.example', 'turn:'].map(
      (QUIETPOUR_TURN) =>
        [
          { QUIETPOUR_TURN, QUIETPOUR_TURN_SECRET: secret },
          /^QUIETPOUR_TURN must list relays such as /,
        ] as const,
    ),
    [{ QUIETPOUR_TURN: 'turn:call.example' }, /^QUIETPOUR_TURN needs QUIETPOUR_TURN_SECRET/],
    [{ QUIETPOUR_TURN_SECRET: secret }, /^QUIETPOUR_TURN_SECRET is for a relay/],
    [
      { QUIETPOUR_TURN: 'turn:call.example', QUIETPOUR_TURN_SECRET: 'short' },
      /must have at least 16 characters/,
    ],
  ] as const;
  it.each(bad)('%j is refused with a sentence that does not repeat a secret', (environment, sentence) => {
    expect(() => settingsFrom(environment)).toThrow(sentence);
    try {
      settingsFrom(environment);
    } catch (error) {
      expect(String(error)).not.toContain(secret);
    }
  });
});
