import { expect, it } from 'vitest';
import { startStoreCheck } from '../../../server/ops/store-check.ts';
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
  const end = startStoreCheck({ store: { check }, clock, log });
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
