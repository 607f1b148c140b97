import { expect, it } from 'vitest';
import { rot } from '../attack/rot/attack.ts';

it('[F7] tells of a flipped bit and of a cut log what can be told, and conducts the other evenings on', async () => {
  const { faults, wentOn } = await rot(6, 4, 20_260_127);
  expect(faults).toEqual([]);
  expect(wentOn).toBeGreaterThan(40);
});
