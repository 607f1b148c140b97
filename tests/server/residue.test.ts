import { expect, it } from 'vitest';
import { seekResidue } from '../attack/residue/residue.ts';

it('[Q7] no word of a guest is in any file, and none that was forgotten comes back with an older backup', async () => {
  const { findings, backups, forgotten, files } = await seekResidue({
    words: 150,
    kills: 2,
    seed: 20_261_127,
  });
  expect(findings).toEqual([]);
  expect(backups).toBe(5);
  expect(forgotten).toBeGreaterThan(0);
  expect(files).toBeGreaterThan(20);
});
