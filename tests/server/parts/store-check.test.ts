import { expect, it } from 'vitest';
import { tastingId } from '../../../core/ids.ts';
import { startStoreCheck } from '../../../server/ops/store-check.ts';
import { SetAside } from '../../../server/store/set-aside.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { listeningLog } from '../support/house.ts';
import { ManualClock } from '../support/manual-clock.ts';

it('reads the store at the start and once each night, and says what is damaged', async () => {
  const clock = new ManualClock();
  const log = listeningLog();
  let looked = 0;
  let damage: readonly string[] = [];
  const check = () => {
    looked += 1;
    return damage;
  };
  const end = startStoreCheck({ store: { ...memoryStore(), check }, clock, log });
  expect(looked).toBe(1);
  damage = ['Tree 7 page 12: btreeInitPage() returns error code 11'];
  await clock.advance(3 * 24 * 3600 * 1000);
  expect(looked).toBe(4);
  expect(log.lines).toHaveLength(3);
  expect(log.lines[0]).toMatch(/page 12.*put a backup in its place/);
  end();
  await clock.advance(3 * 24 * 3600 * 1000);
  expect(looked).toBe(4);
});

it('reads each evening by itself, and goes on behind one that cannot be read', async () => {
  const store = memoryStore();
  const tried: string[] = [];
  const [lost, sound] = [tastingId('lost'), tastingId('sound')];
  const tastings: typeof store.tastings = {
    ...store.tastings,
    ids: async () => [lost, sound],
    find: () => undefined,
  };
  const read = (tasting: string) => {
    tried.push(tasting);
    if (tasting === lost) throw new SetAside(lost, { kind: 'event-missing', event: 3 });
    return [];
  };
  const log = listeningLog();
  const end = startStoreCheck({
    store: { check: () => [], lookThrough: () => undefined, tastings, sessions: { ...store.sessions, read } },
    clock: new ManualClock(),
    log,
  });
  await expect.poll(() => tried).toEqual([lost, sound]);
  expect(log.lines).toEqual([expect.stringContaining('Event 3 of this evening is missing.')]);
  end();
});
