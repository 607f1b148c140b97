import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '../../server/store/store.ts';
import { memoryStore } from '../support/memory-store.ts';
import { credentials, type Device } from './support/device.ts';
import { House } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';
import { aPlan } from './support/plans.ts';

let house: House;
let clock: ManualClock;
let store: Store;

/** Outlives the servers of one test, as a file would. */
const lasting = (): Store => ({ ...store, close: async () => undefined });
const grace = { hostGrace: 30_000, seatGrace: 15_000 };

beforeEach(async () => {
  clock = new ManualClock();
  store = memoryStore();
  house = await House.open({ clock, store: lasting(), ...grace });
});
afterEach(async () => {
  await house.close();
  await store.close();
});

/** Closes a device and gives the server the time of several round trips with another one to notice. */
async function gone(device: Device, witness: Device): Promise<void> {
  device.close();
  for (let trip = 0; trip < 5; trip += 1) await witness.level();
}

async function restart(): Promise<void> {
  await house.close();
  house = await House.open({ clock, store: lasting(), ...grace });
}

describe('the host advances', () => {
  it('[P1] moves one cue for two taps on the same cue', async () => {
    const { host, noor } = await house.evening();
    const answers = await Promise.all([
      host.host({ type: 'Advance', from: 'gathering' }),
      host.host({ type: 'Advance', from: 'gathering' }),
    ]);
    expect(answers).toMatchObject([{ ok: true }, { ok: false, code: 'moved-on' }]);
    await host.level();
    expect(await noor.until('stage', ({ version }) => version > 3)).toMatchObject({ cue: { id: 'welcome' } });
  });

  it('[P1] moves one cue for two hosts who tap at once', async () => {
    const { made, host } = await house.evening();
    const other = await house.host(made);
    const answers = await Promise.all(
      [host, other].map((each) => each.host({ type: 'Advance', from: 'gathering' })),
    );
    expect(answers.filter(({ ok }) => ok)).toHaveLength(1);
    for (const device of [host, other])
      await device.until('host', (view) => view.status === 'under-way' && view.cue === 'welcome');
  });

  it('answers the same command twice in the same way and does it once, after a restart too', async () => {
    const { made, host } = await house.evening();
    const give = () => ({ type: 'GiveTime', seconds: 60 });
    const first = await host.host(give(), 'the-same-command');
    const again = await Promise.all([1, 2, 3].map(() => host.host(give(), 'the-same-command')));
    expect([...new Set([first, ...again].map((answer) => JSON.stringify(answer)))]).toEqual([
      JSON.stringify(first),
    ]);
    const refused = await host.host({ type: 'Advance', from: 'nowhere' }, 'the-refused-one');
    const version = store.sessions.version(made.tasting);

    await restart();
    const later = await house.host(made);
    expect(await later.host(give(), 'the-same-command')).toEqual(first);
    expect(await later.host({ type: 'Advance', from: 'gathering' }, 'the-refused-one')).toEqual(refused);
    expect(store.sessions.version(made.tasting)).toBe(version);
  });

  it('does not answer one guest with what another guest was answered', async () => {
    const { noor, tomas } = await house.evening();
    await noor.guest({ type: 'AcceptGroundRules' }, 'the-same-command');
    await tomas.guest({ type: 'AcceptGroundRules' }, 'the-same-command');
    expect((await tomas.until('seat', ({ version }) => version > 4)).groundRulesAccepted).toBe(true);
  });
});

describe('deadlines', () => {
  const byClock = () => aPlan({ pacing: { by: 'clock' } });

  it('[P2, P3] moves on by the clock, and waits at a gate', async () => {
    const { host, noor } = await house.evening(byClock());
    await host.host({ type: 'Advance', from: 'gathering' });
    // The welcome lasts 180 s, the ground rules are a gate.
    await clock.advance(181_000);
    await noor.until('stage', (view) => view.status === 'under-way' && view.cue.id === 'ground-rules');
    await clock.advance(3_600_000);
    await noor.level();
    expect(noor.last('stage')).toMatchObject({ cue: { id: 'ground-rules' } });
  });

  it('[P4] rings at the new time when the host gives more', async () => {
    const { host, noor } = await house.evening(byClock());
    await host.host({ type: 'Advance', from: 'gathering' });
    await host.host({ type: 'GiveTime', seconds: 60 });
    await clock.advance(200_000);
    await noor.level();
    expect(noor.last('stage')).toMatchObject({ cue: { id: 'welcome' } });
    await clock.advance(41_000);
    await noor.until('stage', (view) => view.status === 'under-way' && view.cue.id === 'ground-rules');
  });

  it('[P7] stands on the same cue with the same deadline after a restart', async () => {
    const { made, host } = await house.evening(byClock());
    await host.host({ type: 'Advance', from: 'gathering' });
    const before = await host.until('host', (view) => view.status === 'under-way' && view.cue === 'welcome');
    await restart();
    const after = await house.host(made);
    expect(await after.until('host')).toEqual(before);
    await clock.advance(181_000);
    await after.until('host', (view) => view.status === 'under-way' && view.cue === 'ground-rules');
  });

  it('[P7] waits in overtime when the deadline passed while the server was down', async () => {
    const { made, host } = await house.evening(byClock());
    await host.host({ type: 'Advance', from: 'gathering' });
    await house.close();
    await clock.advance(240_000);
    house = await House.open({ clock, store: lasting(), ...grace });
    const after = await house.host(made);
    await clock.advance(600_000);
    await after.level();
    expect(after.last('host')).toMatchObject({ cue: 'welcome' });
    // Stopping and starting the clock is no way round it.
    await after.host({ type: 'Hold' });
    await after.host({ type: 'Resume' });
    await clock.advance(600_000);
    await after.level();
    expect(after.last('host')).toMatchObject({ cue: 'welcome' });
    // More time is a deadline of its own, and the host can go on.
    await after.host({ type: 'GiveTime', seconds: 30 });
    await clock.advance(31_000);
    await after.until('host', (view) => view.status === 'under-way' && view.cue === 'ground-rules');
  });

  it('[P8] goes on to the next gate without a host, and waits there for any device with the key', async () => {
    const { made, host, noor } = await house.evening();
    await host.host({ type: 'Advance', from: 'gathering' });
    await clock.advance(200_000);
    await noor.level();
    expect(noor.last('stage')).toMatchObject({ cue: { id: 'welcome' } });
    await gone(host, noor);
    await clock.advance(29_000);
    await noor.level();
    expect(noor.last('stage')).toMatchObject({ cue: { id: 'welcome' } });
    await clock.advance(1_001);
    await noor.until('stage', (view) => view.status === 'under-way' && view.cue.id === 'ground-rules');
    await clock.advance(3_600_000);
    await noor.level();
    expect(noor.last('stage')).toMatchObject({ cue: { id: 'ground-rules' } });
    const tablet = await house.host(made);
    expect(await tablet.host({ type: 'Advance', from: 'ground-rules' })).toMatchObject({ ok: true });
  });

  it('[P8] does not take a short gap for a host who is gone', async () => {
    const { made, host, noor } = await house.evening();
    await host.host({ type: 'Advance', from: 'gathering' });
    await clock.advance(200_000);
    await gone(host, noor);
    await clock.advance(20_000);
    await house.host(made);
    await clock.advance(600_000);
    await noor.level();
    expect(noor.last('stage')).toMatchObject({ cue: { id: 'welcome' } });
  });
});

describe('pacing by the room [P3]', () => {
  const byRoom = () => aPlan({ pacing: { by: 'room', share: 1 } });
  const ready = (cue: string) => ({ type: 'GiveSignal', signal: 'ready', cue });

  it('moves on when all are ready, at the floor at the earliest', async () => {
    const { host, noor, tomas } = await house.evening(byRoom());
    await host.host({ type: 'JumpTo', cue: 'one/first/swirl' });
    await noor.guest(ready('one/first/swirl'));
    await tomas.guest(ready('one/first/swirl'));
    await noor.level();
    expect(noor.last('stage')).toMatchObject({ cue: { id: 'one/first/swirl' } });
    await clock.advance(11_000);
    await noor.until('stage', (view) => view.status === 'under-way' && view.cue.id === 'one/first/look');
  });

  it('waits for a guest whose phone blinks, and not for one who is gone', async () => {
    const { host, noor, tomas } = await house.evening(byRoom());
    await host.host({ type: 'JumpTo', cue: 'one/first/swirl' });
    await clock.advance(31_000);
    await gone(tomas, noor);
    await noor.guest(ready('one/first/swirl'));
    await clock.advance(10_000);
    await noor.level();
    expect(noor.last('stage')).toMatchObject({ cue: { id: 'one/first/swirl' } });
    await clock.advance(5_001);
    await noor.until('stage', (view) => view.status === 'under-way' && view.cue.id === 'one/first/look');
  });

  it('does not take the first guest who is back after a restart for the whole room', async () => {
    const { made, host, noor } = await house.evening(byRoom());
    await host.host({ type: 'JumpTo', cue: 'one/first/swirl' });
    await clock.advance(31_000);
    await restart();
    const back = await house.enter(credentials('guest', made.tasting, noor.key));
    await back.until('stage');
    await back.guest(ready('one/first/swirl'));
    await clock.advance(1_000);
    await back.level();
    expect(back.last('stage')).toMatchObject({ cue: { id: 'one/first/swirl' } });
  });
});
