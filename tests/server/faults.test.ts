import { describe, expect, it } from 'vitest';
import { faultsFor, rideOut } from '../attack/faults/attack.ts';

// Long enough for both ends to give up on a connection that says nothing. How soon is measured by the long run.
const faults = faultsFor({ blackhole: 22_000, slow: 6000 });

describe('a network that fails', () => {
  it.concurrent.each(faults.map((fault) => [fault.name, fault] as const))(
    '[F2] by %s loses no words, and brings every guest level once it is well',
    async (_name, fault) => {
      const { times, never } = await rideOut(fault, 10);
      expect(never).toBe(0);
      expect(times).toHaveLength(10);
    },
    90_000,
  );
});
