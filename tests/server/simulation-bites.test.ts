import { describe, expect, it } from 'vitest';
import type { Planted } from '../attack/simulation/device.ts';
import { simulate } from '../attack/simulation/simulate.ts';

/** The first of a few evenings in which a planted fault is found to break this rule; undefined when none is. */
async function found(planted: Planted, rule: string): Promise<number | undefined> {
  for (let seed = 1; seed <= 30; seed += 1) {
    const { faults } = await simulate(seed, 200, planted);
    if (faults.some((fault) => fault.startsWith(`[${rule}]`))) return seed;
  }
  return undefined;
}

describe('a fault that is planted on purpose is found', () => {
  it('when what is published and acknowledged is not on disk', async () => {
    expect(await found({ hastyStore: true }, 'durable')).toBeDefined();
  });

  it('when a command that is asked again is carried out again', async () => {
    expect(await found({ forgetsAnswers: true }, 'once')).toBeDefined();
  });

  it('when a follower shows whatever comes', async () => {
    expect(await found({ goesBack: true }, 'F2')).toBeDefined();
  });

  it('when two devices of one guest are not merged', async () => {
    expect(await found({ neverMerges: true }, 'notes')).toBeDefined();
  });

  it('when a guest’s notebook reaches the host', async () => {
    expect(await found({ leaks: true }, 'Q1')).toBeDefined();
  });
});
