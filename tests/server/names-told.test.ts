import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { StageView } from '../../core/session/views/stage.ts';
import { credentials } from './support/device.ts';
import { House } from './support/house.ts';
import { aPlan } from './support/plans.ts';
import { ServerProcess, temporaryFolder } from './support/process.ts';

// Processes start slowly on a busy machine; nothing here is measured.
vi.setConfig({ testTimeout: 90_000 });

let folder: ReturnType<typeof temporaryFolder>;
let running: ServerProcess[] = [];
beforeEach(() => {
  folder = temporaryFolder();
  running = [];
});
afterEach(async () => {
  await Promise.all(running.map((each) => each.signal('SIGKILL')));
  folder.remove();
});

async function started() {
  const server = new ServerProcess(folder.path);
  running.push(server);
  const { url, houseKey } = await server.started();
  return { server, houseKey, house: new House({ url, stop: async () => undefined }) };
}
const named = ({ glasses }: StageView): string[] =>
  glasses.flatMap(({ pour }) => (pour?.kind === 'named' ? [pour.id] : []));

describe('a server that is killed at the names', () => {
  it('[P7, P21, F8] between the tap and the telling tells that one name once, and no other', async () => {
    const before = await started();
    const made = await before.house.plan(aPlan({ blind: true, discussion: 'at-the-end' }), before.houseKey);
    const host = await before.house.host(made);
    await host.host({ type: 'OpenDoors' });
    const noor = await before.house.guest(made, 'Noor');
    const order = await host.until('running-order');
    const names = order.cues.find(({ kind }) => kind === 'reveal');
    if (names?.kind !== 'reveal') throw new Error('A blind evening has names to tell.');
    await host.host({ type: 'JumpTo', cue: names.id });
    await host.host({ type: 'SteerScreen', shows: { is: 'dark' } });
    const [first, second] = names.pours;
    const tap = { type: 'Reveal', pours: [first], from: names.id };
    // Whether it has reached the disk or not is left to chance: both must come out the same.
    void host.host(tap, 'the-tap-in-question').catch(() => undefined);
    await before.server.signal('SIGKILL');

    const after = await started();
    const hostAgain = await after.house.host(made);
    const noorAgain = await after.house.enter(credentials('guest', made.tasting, noor.key));
    expect(await noorAgain.until('stage')).toBeDefined();
    expect([[], [first]]).toContainEqual(named((await noorAgain.until('stage')) as StageView));
    expect(await hostAgain.host(tap, 'the-tap-in-question')).toMatchObject({ ok: true });
    expect(await hostAgain.host(tap)).toMatchObject({ ok: false, code: 'nothing-to-do' });
    const told = await noorAgain.until('stage', (stage) => named(stage).length > 0);
    expect(named(told)).toEqual([first]);
    const view = await hostAgain.until(
      'host',
      (seen) => seen.status === 'under-way' && seen.justTold.length > 0,
    );
    expect(view).toMatchObject({ justTold: [first], screen: { is: 'dark' } });
    expect(view.status === 'under-way' && view.toTell[0]).toBe(second);
    const picture = await after.house.enter(credentials('screen', made.tasting, made.hostKey));
    expect(await picture.until('screen')).toEqual({ cue: names.id, shows: { is: 'dark' } });
    for (const device of [hostAgain, noorAgain, picture]) device.close();
  });
});
