import { describe, expect, it } from 'vitest';
import { inWords, keptSeeds, simulateMany } from '../attack/simulation/run.ts';
import { simulate } from '../attack/simulation/simulate.ts';

/** How many seeds each of the quick rounds plays; the long run plays 10,000. */
const round = 100;
const ops = 200;

describe('an evening with faults of network, disk, process and clocks, simulated', () => {
  it.each([1, 2])('keeps every rule: round %i', async (part) => {
    const { broken, seeds, events, marks, boots } = await simulateMany((part - 1) * round + 1, round, ops);
    expect(broken.map((each) => inWords(each))).toEqual([]);
    expect(seeds).toBe(round);
    // Evenings in which little happens would find little.
    expect(events).toBeGreaterThan(40 * round);
    expect(marks).toBeGreaterThan(30 * round);
    expect(boots).toBeGreaterThan(3 * round);
  });

  it('is the same again with the same seed', async () => {
    expect(await simulate(7, ops)).toEqual(await simulate(7, ops));
  });

  it('keeps every rule with the seeds that once broke one', async () => {
    for (const { seed, ops } of keptSeeds(1)) expect((await simulate(seed, ops)).faults).toEqual([]);
  });
});
