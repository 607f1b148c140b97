import { afterEach, beforeEach, expect, it } from 'vitest';
import { machineTime, steadyClock } from '../../server/clock.ts';
import { openSqliteStore } from '../../server/store/sqlite.ts';
import type { ProbeReply } from '../../shared/wire/protocol.ts';
import type { StageView } from '../../shared/wire/views.ts';
import { credentials, type Device } from './support/device.ts';
import { House } from './support/house.ts';
import { temporaryFolder } from './support/process.ts';

const hour = 3_600_000;
let set = 0;
/** The machine's own time, with a wall clock that the test sets. */
const clock = () => steadyClock({ ...machineTime, wall: () => Date.now() + set });

let folder: ReturnType<typeof temporaryFolder>;
const houses: House[] = [];
beforeEach(() => {
  folder = temporaryFolder();
});
afterEach(async () => {
  set = 0;
  for (const house of houses.splice(0)) await house.close();
  folder.remove();
});
async function openHouse(): Promise<House> {
  const store = openSqliteStore(`${folder.path}/store.sqlite`);
  const house = await House.open({ store, clock: clock(), seatGrace: 200 });
  houses.push(house);
  return house;
}

const placeOf = (stage: StageView): string => ('cue' in stage ? stage.cue.id : 'over');
const beganAt = (stage: StageView): number => ('cue' in stage ? stage.takesEffectAt : 0);

/** A cue that is left by the clock after five seconds. */
async function clocked(host: Device, cue: string): Promise<void> {
  const asked: readonly object[] = [
    { type: 'ChoosePacing', pacing: { by: 'clock' } },
    { type: 'EditCue', cue, seconds: 5 },
    { type: 'JumpTo', cue },
  ];
  for (const ask of asked) expect(await host.host(ask)).toMatchObject({ ok: true });
}

it('[P17] calls, presence and clocked cues go on when the clock is set back by an hour', async () => {
  const house = await openHouse();
  const { made, host, noor, tomas } = await house.evening();
  await host.host({ type: 'JumpTo', cue: 'one/first/look' });
  const before = await noor.until('stage', (stage) => placeOf(stage) === 'one/first/look');
  set = -hour;
  await noor.guest({ type: 'GiveSignal', signal: 'needs-host', cue: 'one/first/look' });
  await host.until('host', ({ seats }) => seats.some(({ signal }) => signal === 'needs-host'));
  tomas.close();
  await host.until('presence', ({ seats }) => seats.length === 1);
  await clocked(host, 'one/first/swirl');
  await noor.until('stage', (stage) => placeOf(stage) === 'one/first/swirl');
  const after = await noor.until('stage', (stage) => placeOf(stage) !== 'one/first/swirl');
  expect(beganAt(after)).toBeGreaterThan(beganAt(before));
  expect(await noor.save({ value: 'apples' })).toMatchObject({ ok: true });
  const again = await house.enter(credentials('guest', made.tasting, noor.key));
  const { entries } = await again.until('notebook');
  expect(entries[0]?.savedAt).toBeGreaterThan(beganAt(before));
});

it('[P17] a server that starts with its clock behind the last event goes on from there, with the time that was left', async () => {
  const first = await openHouse();
  const { made, host, noor } = await first.evening();
  await host.host({ type: 'JumpTo', cue: 'one/first/look' });
  const before = await noor.until('stage', (stage) => placeOf(stage) === 'one/first/look');
  await first.close();
  houses.length = 0;
  set = -hour;
  const house = await openHouse();
  const again = await house.host(made);
  const told = (await again.raw('probe', { roundTrip: null })) as Exclude<ProbeReply, number>;
  expect(told.sent).toBeGreaterThanOrEqual(beganAt(before));
  expect(told.sent).toBeLessThan(beganAt(before) + hour / 2);
  await clocked(again, 'one/first/swirl');
  const screen = await house.enter(credentials('screen', made.tasting, made.hostKey));
  const after = await screen.until('stage', (stage) => placeOf(stage) !== 'one/first/swirl');
  expect(beganAt(after)).toBeGreaterThan(beganAt(before));
});

it('[P7, P17] a clocked cue whose time ran out while the machine slept waits for the host', async () => {
  const house = await openHouse();
  const { host, noor } = await house.evening();
  await host.host({ type: 'ChoosePacing', pacing: { by: 'clock' } });
  await host.host({ type: 'EditCue', cue: 'one/first/swirl', seconds: 5 });
  await host.host({ type: 'JumpTo', cue: 'one/first/swirl' });
  await noor.until('stage', (stage) => placeOf(stage) === 'one/first/swirl');
  set = 5 * hour;
  const rings = performance.now() + 7000;
  while (performance.now() < rings) {
    await noor.level();
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  expect(placeOf(await noor.until('stage'))).toBe('one/first/swirl');
  // And only for this cue.
  await clocked(host, 'one/first/look');
  await noor.until('stage', (stage) => placeOf(stage) === 'one/first/look');
  await noor.until('stage', (stage) => placeOf(stage) !== 'one/first/look');
});
