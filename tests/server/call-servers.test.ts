import { createHmac } from 'node:crypto';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  type CallSettings,
  callReach,
  callServersFor,
  noCallServers,
} from '../../server/access/call-servers.ts';
import { settingsFrom } from '../../server/settings.ts';
import type { CallServer } from '../../shared/wire/call.ts';
import { ask, closed, HouseFromAfar, join } from './support/callers.ts';
import type { House } from './support/house.ts';
import type { ManualClock } from './support/manual-clock.ts';

const secret = 'lanterns-on-the-north-pier';
const both: CallSettings = {
  stun: ['stun:call.example:3478'],
  turn: ['turn:call.example:3478?transport=udp', 'turns:call.example:5349?transport=tcp'],
  secret,
};
let away: HouseFromAfar;
let house: House;
let clock: ManualClock;
beforeEach(async () => {
  away = await HouseFromAfar.open(both);
  ({ house, clock } = away);
});
afterEach(() => house.close());

const named = (servers: readonly CallServer[]) => servers[1]?.username ?? '';

describe('the servers of a call', () => {
  it('come with the place in it, for the host, who sits at home and a screen let in, each under a name of its own', async () => {
    const made = await away.evening();
    const devices = {
      [made.made.hostKey]: made.host,
      [made.noor.key]: made.noor,
      [made.tomas.key]: made.tomas,
      screen: await away.screenOf(made),
    };
    const names = new Set<string>();
    for (const [index, [key, device]] of Object.entries(devices).entries()) {
      const answer = await join(device, `number-${index}`);
      if (!answer.ok || answer.servers === undefined) throw new Error('This device is not in the call.');
      const { servers } = answer;
      expect(servers.map(({ urls }) => urls)).toEqual([both.stun, both.turn]);
      const username = named(servers);
      names.add(username);
      // Until the next morning at the latest, and for a whole evening at the least.
      const hours = (Number(username.split(':')[0]) * 1000 - clock.now()) / 3_600_000;
      expect(hours).toBeGreaterThanOrEqual(6);
      expect(hours).toBeLessThanOrEqual(12);
      expect(servers[1]?.credential).toBe(createHmac('sha1', secret).update(username).digest('base64'));
      // Nothing that is handed out leads back to a key or a seat.
      for (const known of [key, made.noor.seat, made.made.tasting, secret])
        expect(JSON.stringify(servers)).not.toContain(known);
    }
    expect(names.size).toBe(4);
  });

  it('are told to nobody who is not let into it, and over no other way', async () => {
    const { made, noor } = await house.evening();
    const { tomas, host } = await away.evening();
    for (const answer of [
      await join(noor, 'at-the-table'),
      await ask(tomas, { type: 'Watch' }),
      await ask(host, { type: 'Show', shown: closed }),
      (await house.ask('GET', `/api/tastings/${made.tasting}/call-servers`, { key: made.hostKey })).body,
      (await house.ask('GET', `/api/invitations/${made.code}`)).body,
    ])
      expect(JSON.stringify(answer)).not.toMatch(/stuns?:|turns?:|credential|username/);
  });

  it('are none where none are set, and the settings say how far a call reaches', () => {
    expect(callServersFor(noCallServers, 'hash of a key', clock.now())).toEqual([]);
    expect(callReach(noCallServers)).toBe('network');
    expect(callReach({ ...both, turn: [], secret: undefined })).toBe('public');
    expect(callReach(both)).toBe('relay');
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
