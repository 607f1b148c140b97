import { expect, it } from 'vitest';
import type { MachineTime } from '../../../server/clock.ts';
import type { Ask } from '../../../server/store/postgres/connections.ts';
import { Lease } from '../../../server/store/postgres/lease.ts';

/** A machine whose clocks a test turns, and a database beside it; a renewal is made when the test says so. */
async function aLease() {
  const hands = { steady: 5000, wall: 1_900_000_000_000, database: 1_900_000_000_000 };
  const time: MachineTime = {
    steady: () => hands.steady,
    wall: () => hands.wall,
    after: () => () => undefined,
  };
  const held: boolean[] = [];
  const ask = (async () => [{ now: hands.database }]) as unknown as Ask;
  const lease: Lease = new Lease(ask, time, () => 'here:1', {
    renewed: async () => void held.push(lease.holds()),
    expired: () => undefined,
  });
  await lease.begin();
  return {
    lease,
    /** Whether it held each time that a renewal was done; where it did not, what is owned is looked at again. */
    held,
    passes(ms: number, ...clocks: readonly (keyof typeof hands)[]) {
      for (const each of clocks) hands[each] += ms;
    },
  };
}

it('ends by the steady clock, before it does on the database’s, whoever sets the one on the wall back', async () => {
  const { lease, passes } = await aLease();
  passes(1100, 'steady', 'database');
  passes(-3_600_000, 'wall');
  expect(lease.holds()).toBe(true);
  passes(150, 'steady', 'wall', 'database');
  expect(lease.holds()).toBe(false);
});

it('ends in a machine that has slept, whose steady clock stood still', async () => {
  const { lease, held, passes } = await aLease();
  passes(2000, 'wall', 'database');
  expect(lease.holds()).toBe(false);
  await lease.renewNow();
  expect(held.at(-1)).toBe(false);
  expect(lease.holds()).toBe(true);
});

it('is not simply renewed after both clocks stood still for longer than it holds', async () => {
  const { lease, held, passes } = await aLease();
  passes(400, 'steady', 'wall', 'database');
  await lease.renewNow();
  expect(held.at(-1)).toBe(true);
  passes(1600, 'database');
  await lease.renewNow();
  expect(held.at(-1)).toBe(false);
});
