import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { strictHost } from '../support/strict-views.ts';
import { credentials, type Device } from './support/device.ts';
import { House } from './support/house.ts';
import { aPlan } from './support/plans.ts';

/** The kinds of cues that the pages of 0.1.0 know, from their scripts in tests/stored/0.1.0/pages.br. */
const kindsOfBefore = [
  'gathering',
  'welcome',
  'ground-rules',
  'practice',
  'step',
  'water',
  'break',
  'odd-one-out',
  'ranking',
  'discussion',
  'reveal',
  'farewell',
];

let house: House;
let host: Device;
let made: Awaited<ReturnType<House['plan']>>;
beforeEach(async () => {
  house = await House.open();
  made = await house.plan(aPlan({ blind: true, ranking: 'each-flight', liking: true }));
  host = await house.host(made);
  await host.host({ type: 'OpenDoors' });
});
afterEach(() => house.close());

const enter = (role: 'host' | 'guest' | 'screen', key: string, protocol?: number) =>
  house.enter({ ...credentials(role, made.tasting, key), ...(protocol === undefined ? {} : { protocol }) });

describe('a page of before', () => {
  it.each([1, 2])('of protocol %i is never shown a kind of cue that it does not know', async (protocol) => {
    const noor = await house.guest(made, 'Noor');
    const [guest, tablet, television] = [
      await enter('guest', noor.key, protocol),
      await enter('host', made.hostKey, protocol),
      await enter('screen', made.hostKey, protocol),
    ];
    const { cues } = await host.until('running-order');
    const result = cues.find(({ kind }) => kind === 'result');
    const before = cues[cues.findIndex(({ kind }) => kind === 'result') - 1];
    for (const cue of [before, result]) {
      await host.host({ type: 'JumpTo', cue: cue?.id });
      for (const device of [guest, television, noor]) {
        await device.until('stage', (view) => view.status === 'under-way' && view.cue.id === cue?.id);
      }
    }
    expect(noor.last('stage')).toMatchObject({ cue: { kind: 'result' } });
    for (const device of [guest, television]) {
      expect(device.last('stage')).toMatchObject({ cue: { kind: 'discussion', gate: result?.gate } });
    }
    // Whoever comes in now is shown the same.
    const late = await enter('guest', noor.key, protocol);
    expect(await late.until('stage')).toEqual(guest.last('stage'));
    const stages = [guest, television, late].flatMap(({ heard }) =>
      heard.filter(({ event }) => event === 'stage'),
    );
    for (const { view } of stages) {
      const { cue, next } = view as { cue: { kind: string }; next: { kind: string } | null };
      for (const { kind } of next === null ? [cue] : [cue, next]) expect(kindsOfBefore).toContain(kind);
    }
    for (const each of [tablet, await enter('host', made.hostKey, protocol)]) {
      const order = await each.until('running-order');
      for (const cue of order.cues) {
        expect(kindsOfBefore).toContain(cue.kind);
        expect('tells' in cue).toBe(false);
      }
      expect(order.cues.map(({ id }) => id)).toEqual(cues.map(({ id }) => id));
    }
  });

  it.each([3, 4])(
    'of protocol %i is told of the whole stage each time, a page of now of what is new',
    async (protocol) => {
      const noor = await house.guest(made, 'Noor');
      const before = await enter('guest', noor.key, protocol);
      for (const cue of ['one/first/look', 'one/first/nose']) {
        await host.host({ type: 'JumpTo', cue });
        for (const device of [noor, before])
          await device.until('stage', (view) => view.status === 'under-way' && view.cue.id === cue);
      }
      expect(noor.last('stage')).toEqual(before.last('stage'));
      const toldTo = (device: Device) =>
        device.frames.flatMap((frame) => /^\d+\["(stage|news)",(.*)\]$/.exec(frame)?.slice(1, 3) ?? []);
      expect(toldTo(before)).not.toContain('news');
      // Between two steps of one glass hardly anything is new.
      const [whole = '', change = ''] = [toldTo(before).at(-1), toldTo(noor).at(-1)];
      expect(toldTo(noor).at(-2)).toBe('news');
      expect(change.length).toBeLessThan(whole.length / 5);
      // Who comes in between is told of it whole, and then follows like all others.
      const late = await enter('guest', noor.key);
      await host.host({ type: 'Hold' });
      for (const device of [noor, late])
        await device.until('stage', (view) => view.status === 'under-way' && view.clock.kind === 'held');
      expect(late.last('stage')).toEqual(noor.last('stage'));
    },
  );

  it('that hosts is told of the whole room in one, and a page of now of each seat that changes', async () => {
    const [noor] = [await house.guest(made, 'Noor'), await house.guest(made, 'Tomas')];
    const tablet = await enter('host', made.hostKey, 2);
    const heardOf = (device: Device) => new Set(device.heard.map(({ event }) => event));
    await host.host({ type: 'JumpTo', cue: 'one/first/look' });
    const before = host.frames.length;
    await noor?.guest({ type: 'GiveSignal', signal: 'needs-host', cue: 'one/first/look' });
    for (const device of [host, tablet]) {
      const view = await device.until('host', ({ seats }) => seats.some(({ signal }) => signal !== null));
      strictHost.parse(view);
      expect(view.seats.map(({ name }) => name)).toEqual(['Noor', 'Tomas']);
    }
    expect({ ...host.last('host'), version: 0 }).toEqual({ ...tablet.last('host'), version: 0 });
    expect(heardOf(tablet).has('room') || heardOf(tablet).has('room-seats')).toBe(false);
    const told = host.frames.slice(before).filter((frame) => /^\d+\["(room|room-seats|host)"/.test(frame));
    expect(told).toHaveLength(1);
    expect(told[0]).toContain('Noor');
    expect(told[0]).not.toContain('Tomas');
  });
});
