import { EventEmitter } from 'node:events';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { BoardRoom } from '../../server/live/board-room.ts';
import { CallRoom } from '../../server/live/call-room.ts';
import { Conductor } from '../../server/live/conductor.ts';
import { Presence } from '../../server/live/presence.ts';
import { Publisher } from '../../server/live/publisher.ts';
import { ScreensAtDoor } from '../../server/live/screens-at-door.ts';
import { goOnWhateverHappens } from '../../server/ops/last-resort.ts';
import type { Store } from '../../server/store/store.ts';
import type { CreatedTasting, IssuedKey, ListedTasting } from '../../shared/wire/http.ts';
import type { ClientToServer } from '../../shared/wire/protocol.ts';
import { memoryStore } from '../support/memory-store.ts';
import { credentials } from './support/device.ts';
import { aKey, House, houseKey, listeningLog } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';

/** A fault of the program. */
const poison = (): never => {
  throw new TypeError('poison');
};
let poisoned: ReadonlySet<keyof Store> = new Set();
const shelves = [
  'tastings',
  'sessions',
  'notebooks',
  'keys',
  'documents',
  'photos',
  'surveys',
  'devices',
  'releases',
] as const;
const notKeys = shelves.filter((shelf) => shelf !== 'keys' && shelf !== 'tastings');

/** Every method of a poisoned shelf throws. */
function poisonable(store: Store): Store {
  const guardedShelf = (name: (typeof shelves)[number]) =>
    new Proxy(store[name], {
      get: (shelf, method) => (poisoned.has(name) ? poison : Reflect.get(shelf, method)),
    });
  return { ...store, ...Object.fromEntries(shelves.map((name) => [name, guardedShelf(name)])) };
}

let house: House;
let clock: ManualClock;
beforeEach(async () => {
  poisoned = new Set();
  clock = new ManualClock();
  house = await House.open({
    store: poisonable(memoryStore()),
    clock,
    keepFor: 10 * 365 * 24 * 3600 * 1000,
  });
});
afterEach(async () => {
  vi.restoreAllMocks();
  poisoned = new Set();
  await house.close();
});

/** The evening is conducted on, on new lines. */
async function goesOn(made: CreatedTasting): Promise<void> {
  const host = await house.host(made);
  const view = await host.until('host');
  const next =
    view.status === 'under-way' && view.cue === 'two/first/nose' ? 'two/first/look' : 'two/first/nose';
  expect(await host.host({ type: 'JumpTo', cue: next })).toMatchObject({ ok: true });
  host.close();
}

async function inTalk() {
  const evening = await house.evening();
  await evening.host.host({ type: 'JumpTo', cue: 'one/discussion' });
  await evening.host.host({ type: 'OpenDiscussion', pours: ['one'] });
  return evening;
}
type Evening = Awaited<ReturnType<typeof inTalk>>;

/** What makes a fault in the handling of each message that a device may send. */
const messages: { readonly [Event in keyof ClientToServer]: (evening: Evening) => Promise<unknown> } = {
  'host:ask': ({ host }) => host.host({ type: 'Hold' }),
  'helper:ask': async ({ made, noor }) => {
    const asked = { key: made.hostKey, body: { for: 'helper' } };
    const { body } = await house.ask<IssuedKey>('POST', `/api/tastings/${made.tasting}/keys`, asked);
    const helper = await house.enter(credentials('helper', made.tasting, body.key));
    return helper.raw('helper:ask', { id: 'help-001', ask: { type: 'AnswerSeat', seat: noor.seat } });
  },
  'pouring:ask': ({ host }) =>
    host.raw('pouring:ask', {
      id: 'pouring-1',
      ask: { type: 'TickGlasses', places: [1], pours: ['one'], done: 1 },
    }),
  'guest:ask': ({ noor }) => noor.guest({ type: 'AcceptGroundRules' }),
  'note:save': ({ noor }) => noor.save({ value: 'pears' }),
  'note:consent': ({ noor }) => noor.consent({ order: 'counts' }),
  'note:share': ({ noor }) => noor.share(),
  'device:ask': ({ noor }) => noor.raw('device:ask', { type: 'MakeWords', language: 'en' }),
  'call:ask': ({ host }) => {
    vi.spyOn(CallRoom.prototype, 'take').mockImplementationOnce(poison);
    return host.raw('call:ask', { type: 'Watch' });
  },
  probe: ({ noor }) => {
    vi.spyOn(Presence.prototype, 'measured').mockImplementationOnce(poison);
    return noor.raw('probe', { roundTrip: null });
  },
};

describe('a fault in the handling of a message', () => {
  it.each(Object.entries(messages))('ends one conductor, which is built anew: %s', async (_, send) => {
    const evening = await inTalk();
    const other = await house.evening();
    poisoned = new Set(notKeys);
    const answer = await Promise.race([send(evening), evening.noor.dismissed(), evening.host.dismissed()]);
    poisoned = new Set();
    expect(answer).not.toMatchObject({ ok: true });
    await goesOn(evening.made);
    await goesOn(other.made);
    expect(house.log.lines.join()).toContain('a conductor failed');
    expect(house.log.lines.join()).not.toContain('poison');
  });
});

describe('a fault while a device comes or goes', () => {
  it.each(['arrived', 'left'] as const)('is nobody else’s: %s', async (which) => {
    const { made, noor } = await inTalk();
    vi.spyOn(Presence.prototype, which).mockImplementationOnce(poison);
    if (which === 'left') noor.close();
    else await house.enter(credentials('guest', made.tasting, noor.key));
    await vi.waitFor(() => expect(house.log.lines.join()).toContain('a conductor failed'));
    await goesOn(made);
  });
});

describe('a fault after something has been put on disk', () => {
  it('is answered with what is on disk, and everybody is level again', async () => {
    const { made, host, noor } = await inTalk();
    vi.spyOn(Publisher.prototype, 'changed').mockImplementationOnce(poison);
    expect(await host.host({ type: 'JumpTo', cue: 'three/first/nose' })).toMatchObject({ ok: true });
    expect(await noor.dismissed()).toBeUndefined();
    const again = await house.enter(credentials('guest', made.tasting, noor.key));
    await again.until(
      'stage',
      (stage) => stage.status === 'under-way' && stage.cue.id === 'three/first/nose',
    );
  });
});

describe('a fault in an alarm', () => {
  const alarms: Record<string, () => void> = {
    'of a cue’s time': () => {
      poisoned = new Set(['sessions']);
    },
    'of a host who has gone': () => vi.spyOn(Presence.prototype, 'view').mockImplementation(poison),
    'of who is here': () => vi.spyOn(Publisher.prototype, 'presenceChanged').mockImplementation(poison),
    'of the board': () => {
      vi.spyOn(BoardRoom.prototype, 'view').mockImplementation(poison);
      poisoned = new Set(['notebooks']);
    },
    'of a screen at the door': () =>
      vi.spyOn(ScreensAtDoor.prototype, 'asking', 'get').mockImplementation(poison),
    'of the sweep': () => vi.spyOn(Conductor.prototype, 'idle', 'get').mockImplementation(poison),
    'of retention': () => {
      poisoned = new Set(['tastings']);
    },
  };

  it.each(Object.entries(alarms))('ends nothing but one conductor: %s', async (which, arm) => {
    const { made, host, noor, tomas } = await inTalk();
    await host.host({ type: 'ChoosePacing', pacing: { by: 'clock' } });
    // A glass in front of the room would close the board.
    if (which !== 'of the board') await host.host({ type: 'JumpTo', cue: 'two/first/look' });
    await noor.share();
    for (const base of [0, 1, 2]) await noor.save({ value: `pears ${base}`, base });
    await house.ask('POST', '/api/screens', { body: { code: made.code, key: aKey() } });
    host.close();
    noor.close();
    await tomas.level();
    arm();
    // Every alarm that is set rings; an error that leaves one would leave this too.
    await clock.advance(7 * 3600 * 1000);
    expect(house.log.lines.join()).toMatch(
      /a conductor failed|idle conductors were not let go|not everything was deleted/,
    );
    vi.restoreAllMocks();
    poisoned = new Set();
    await house.ask('POST', `/api/tastings/${made.tasting}/wake`, { key: made.hostKey });
    await goesOn(made);
  });
});

describe('a second fault soon after', () => {
  it('lets the evening rest with a sentence, until the host tries again; no other notices', async () => {
    const { made } = await inTalk();
    const other = await house.evening();
    for (let time = 0; time < 2; time += 1) {
      const host = await house.host(made);
      vi.spyOn(Publisher.prototype, 'changed').mockImplementationOnce(poison);
      await host.host({ type: 'GiveTime', seconds: 30 + time });
      await host.dismissed();
    }
    await expect(house.host(made)).rejects.toMatchObject({ code: 'set-aside' });
    const listed = await house.ask<ListedTasting[]>('GET', '/api/tastings', { key: houseKey });
    expect(listed.body.find(({ code }) => code === made.code)).toMatchObject({
      stage: 'under-way',
      trouble: { kind: 'faulty', event: null },
    });
    await goesOn(other.made);
    expect(
      (await house.ask('POST', `/api/tastings/${made.tasting}/wake`, { key: other.made.hostKey })).status,
    ).toBe(401);
    expect(
      (await house.ask('POST', `/api/tastings/${made.tasting}/wake`, { key: made.hostKey })).status,
    ).toBe(204);
    await goesOn(made);
  });

  it('is forgiven when the first lies ten minutes back', async () => {
    const { made } = await inTalk();
    for (let time = 0; time < 3; time += 1) {
      const host = await house.host(made);
      vi.spyOn(Publisher.prototype, 'changed').mockImplementationOnce(poison);
      await host.host({ type: 'GiveTime', seconds: 30 + time });
      await host.dismissed();
      await clock.advance(11 * 60_000);
    }
    await goesOn(made);
  });
});

describe('a fault in a request', () => {
  const routes = (
    { tasting, code }: CreatedTasting,
    seat: string,
  ): readonly (readonly [string, string, unknown?])[] => [
    ['POST', '/api/tastings', { plan: {} }],
    ['GET', '/api/tastings'],
    ['GET', `/api/tastings/${tasting}/plan`],
    ['PUT', `/api/tastings/${tasting}/plan`, { plan: {}, base: 1 }],
    ['DELETE', `/api/tastings/${tasting}`],
    ['GET', `/api/tastings/${tasting}/as-it-lies`],
    ['POST', `/api/tastings/${tasting}/wake`],
    ['GET', `/api/tastings/${tasting}/recap`],
    ['GET', `/api/tastings/${tasting}/recap.json`],
    ['GET', `/api/tastings/${tasting}/recap.csv`],
    ['POST', `/api/tastings/${tasting}/keys`, { for: 'host' }],
    ['DELETE', `/api/tastings/${tasting}/keys/seat/${seat}`],
    [
      'POST',
      '/api/seats',
      { id: 'a-new-guest-1', code, key: aKey(), name: 'Zoë', leftHanded: false, remote: false },
    ],
    ['GET', `/api/invitations/${code}`],
    ['PUT', `/api/invitations/${code}/survey`, { respondent: 'somebody-who-is-coming', answers: {} }],
    ['GET', `/api/tastings/${tasting}/crowd`],
    ['POST', `/api/tastings/${tasting}/photos`, 'no photo'],
    ['DELETE', `/api/tastings/${tasting}/photos/${'p'.repeat(24)}`],
    ['GET', `/photos/${'p'.repeat(24)}`],
    ['POST', '/api/screens', { code, key: aKey() }],
    ['POST', `/api/tastings/${tasting}/screens/none`, { admit: true }],
    ['DELETE', `/api/tastings/${tasting}/screens`],
    ['GET', `/api/keepsake/${tasting}`],
    ['DELETE', `/api/keepsake/${tasting}`],
  ];

  it('is answered with a sentence, whatever was asked, and the server goes on', async () => {
    const { made, noor } = await inTalk();
    for (const [method, path, body] of routes(made, noor.seat)) {
      poisoned = new Set(shelves);
      const key = path.includes('keepsake') ? noor.key : houseKey;
      const { status, body: said } = await house.ask<{ message?: string }>(method, path, {
        key,
        ...(body === undefined ? {} : { body }),
      });
      poisoned = new Set();
      expect(`${method} ${path}: ${status}`).toMatch(/: (204|4\d\d|503)$/);
      if (status !== 204) expect(said.message).toMatch(/\w.*[.;]/);
      expect((await house.ask('GET', '/healthz')).status).toBe(200);
    }
    await house.ask('POST', `/api/tastings/${made.tasting}/wake`, { key: made.hostKey });
    await goesOn(made);
  });
});

it('goes on whatever no guard has caught, and says of what kind it was', () => {
  const process = new EventEmitter();
  const log = listeningLog();
  goOnWhateverHappens(process, log);
  process.emit('uncaughtException', new RangeError('somebody’s words'));
  process.emit('unhandledRejection', 'a word');
  expect(log.lines.join()).toMatch(/RangeError.*unknown/);
  expect(log.lines.join()).not.toMatch(/word/);
});
