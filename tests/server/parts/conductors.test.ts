import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { commandId, cueId, tastingId } from '../../../core/ids.ts';
import { durationMs } from '../../../core/units.ts';
import { Conductors } from '../../../server/live/conductors.ts';
import { createLiveServer } from '../../../server/live/gateway.ts';
import type { Store } from '../../../server/store/store.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { listeningLog } from '../support/house.ts';
import { ManualClock } from '../support/manual-clock.ts';
import { aPlan } from '../support/plans.ts';

const tasting = tastingId('an-evening');
const sweep = 60_000;
let clock: ManualClock;
let store: Store;
let conductors: Conductors;

beforeEach(async () => {
  clock = new ManualClock();
  store = memoryStore();
  const graces = { host: durationMs(30_000), seat: durationMs(15_000) };
  const io = createLiveServer([]);
  const log = listeningLog();
  conductors = new Conductors({
    store,
    clock,
    io,
    log,
    graces,
    chance: { key: () => 'the-same-draw' },
    seatLimit: 10,
    sweepEvery: durationMs(sweep),
  });
  await store.tastings.create({
    tasting,
    code: 'AAAAAA',
    plan: aPlan(),
    revision: 1,
    createdAt: clock.now(),
  });
});
afterEach(async () => {
  await conductors.stop();
  await store.close();
});

describe('conductors', () => {
  it('come to work when they are first asked for', () => {
    expect(conductors.working).toBe(0);
    expect(conductors.of(tastingId('elsewhere'))).toBeUndefined();
    expect(conductors.of(tasting)).toBe(conductors.of(tasting));
    expect(conductors.working).toBe(1);
  });

  it('are let go when nobody is here and nothing will ring, and come back as they were', async () => {
    const first = conductors.of(tasting);
    await first?.askAsHost(commandId('open-the-doors'), { type: 'OpenDoors' });
    const standing = first?.standing;
    await clock.advance(2 * sweep);
    expect(conductors.working).toBe(0);
    expect(conductors.of(tasting)).not.toBe(first);
    expect(conductors.of(tasting)?.standing).toEqual(standing);
  });

  it('stay while somebody is here, and while a deadline is to come', async () => {
    const conductor = conductors.of(tasting);
    conductor?.presence.arrived('a-socket', { role: 'host' });
    await clock.advance(5 * sweep);
    expect(conductors.working).toBe(1);
    await conductor?.askAsHost(commandId('open-the-doors'), { type: 'OpenDoors' });
    await conductor?.askAsHost(commandId('then-welcome'), { type: 'Advance', from: cueId('gathering') });
    conductor?.presence.left('a-socket');
    await clock.advance(2 * sweep);
    expect(conductors.working).toBe(1);
    // [P8] To the next gate, and then there is nothing more to do.
    await clock.advance(4 * sweep);
    expect(conductors.working).toBe(0);
    expect(conductors.of(tasting)?.standing.session).toMatchObject({ status: 'under-way', at: 2 });
  });
});
