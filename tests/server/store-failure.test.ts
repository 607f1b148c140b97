import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Store, StoreFailure } from '../../server/store/store.ts';
import { memoryStore } from '../support/memory-store.ts';
import { House } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';
import { aPlan } from './support/plans.ts';

let house: House;
let clock: ManualClock;
let full = false;
let inner: Store;

/** Refuses every write while the disk is full, as a real store does: nothing is changed. */
function brittle(store: Store): Store {
  const orFail =
    <Args extends unknown[]>(write: (...args: Args) => Promise<void>) =>
    (...args: Args) =>
      full ? Promise.reject(new StoreFailure('The disk is full.')) : write(...args);
  return {
    ...store,
    sessions: { ...store.sessions, append: orFail(store.sessions.append) },
    notebooks: {
      ...store.notebooks,
      save: orFail(store.notebooks.save),
      consent: orFail(store.notebooks.consent),
    },
  };
}

beforeEach(async () => {
  full = false;
  clock = new ManualClock();
  inner = memoryStore();
  house = await House.open({ clock, store: brittle(inner) });
});
afterEach(() => house.close());

describe('a store that cannot be written', () => {
  it('is said, changes nothing, and nobody is told otherwise', async () => {
    const { made, host, noor, tomas } = await house.evening();
    await host.host({ type: 'JumpTo', cue: 'one/first/look' });
    await noor.until('stage', (view) => view.status === 'under-way' && view.cue.id === 'one/first/look');
    const version = inner.sessions.version(made.tasting);
    const heard = () => [host, noor, tomas].map((device) => device.heard.length);
    await clock.advance(1000);
    for (const device of [host, noor, tomas]) await device.level();
    const before = heard();

    full = true;
    const refused = { ok: false, code: 'not-stored' };
    expect(await host.host({ type: 'GiveTime', seconds: 60 }, 'kept-for-later')).toMatchObject(refused);
    expect(await noor.save({ id: 'note-for-later', value: 'apples' })).toMatchObject(refused);
    expect(await noor.share()).toMatchObject(refused);
    expect(await house.takeSeat(made.code)).toMatchObject({ status: 503, body: refused });
    await clock.advance(1000);
    for (const device of [host, noor, tomas]) await device.level();
    expect(heard()).toEqual(before);
    expect(inner.sessions.version(made.tasting)).toBe(version);

    full = false;
    expect(await host.host({ type: 'GiveTime', seconds: 60 }, 'kept-for-later')).toEqual({
      ok: true,
      version: version + 1,
    });
    expect(await noor.save({ id: 'note-for-later', value: 'apples' })).toMatchObject({
      ok: true,
      revision: 1,
    });
    expect(house.log.lines.join()).not.toContain('apples');
  });

  it('does not lose a deadline: the clock asks again', async () => {
    const { host, noor } = await house.evening(aPlan({ pacing: { by: 'clock' } }));
    await host.host({ type: 'Advance', from: 'gathering' });
    full = true;
    await clock.advance(185_000);
    await noor.level();
    expect(noor.last('stage')).toMatchObject({ cue: { id: 'welcome' } });
    full = false;
    await clock.advance(1_001);
    await noor.until('stage', (view) => view.status === 'under-way' && view.cue.id === 'ground-rules');
  });
});
