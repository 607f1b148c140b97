import { describe, expect, it } from 'vitest';
import { simulateProcesses } from '../attack/simulation/processes/simulate.ts';
import { inWords, keptSeeds, simulateMany } from '../attack/simulation/run.ts';

const ops = 30;

describe('evenings at three processes on one database, simulated', () => {
  it('lose, double and reorder nothing, and show nothing old', async () => {
    const { broken, events, marks, boots } = await simulateMany(1, 8, ops, {}, 3);
    expect(broken.map((each) => inWords(each, 3))).toEqual([]);
    // Evenings in which little happens would find little.
    expect(events).toBeGreaterThan(8 * 50);
    expect(marks).toBeGreaterThan(8 * 40);
    expect(boots).toBeGreaterThan(8 * 3);
  });

  it('are the same again with the same seed', async () => {
    expect(await simulateProcesses(9, ops)).toEqual(await simulateProcesses(9, ops));
  });

  it('go well with the seeds that once broke a rule', async () => {
    for (const { seed, ops } of keptSeeds(3)) expect((await simulateProcesses(seed, ops)).faults).toEqual([]);
  });
});
