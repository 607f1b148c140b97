import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Allowances } from '../../../server/access/allowances.ts';
import { ManualClock } from '../support/manual-clock.ts';

const taken = (allowances: Allowances, key: string, times: number): number =>
  Array.from({ length: times }, () => allowances.take(key)).filter((passed) => passed).length;

describe('an allowance', () => {
  it('lets so many through at once, and in the long run its pace, for each key', async () => {
    const clock = new ManualClock();
    const allowances = new Allowances(clock, { perSecond: 2, burst: 10 });
    expect(taken(allowances, 'one', 50)).toBe(10);
    expect(taken(allowances, 'other', 50)).toBe(10);
    await clock.advance(3000);
    expect(allowances.has('one')).toBe(true);
    expect(taken(allowances, 'one', 50)).toBe(6);
    expect(allowances.has('one')).toBe(false);
    await clock.advance(3_600_000);
    expect(taken(allowances, 'one', 50)).toBe(10);
  });

  it('never lets more through than burst and pace allow, however it is asked', async () => {
    const steps = fc.array(fc.record({ wait: fc.nat({ max: 2000 }), takes: fc.nat({ max: 9 }) }));
    await fc.assert(
      fc.asyncProperty(steps, async (asked) => {
        const clock = new ManualClock();
        const allowances = new Allowances(clock, { perSecond: 3, burst: 5 });
        const begun = clock.now();
        let passed = 0;
        for (const { wait, takes } of asked) {
          await clock.advance(wait);
          passed += taken(allowances, 'one', takes);
          expect(passed).toBeLessThanOrEqual(5 + (3 * (clock.now() - begun)) / 1000 + 1e-6);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('gives back what turned out to be in order, and no more than was there', () => {
    const allowances = new Allowances(new ManualClock(), { perSecond: 1, burst: 3 });
    for (let count = 0; count < 100; count += 1) {
      expect(allowances.take('one')).toBe(true);
      allowances.giveBack('one');
    }
    for (let count = 0; count < 10; count += 1) allowances.giveBack('one');
    expect(taken(allowances, 'one', 10)).toBe(3);
  });

  it('forgets the key that was used longest ago, so that nobody fills the memory with keys', () => {
    const allowances = new Allowances(new ManualClock(), { perSecond: 1, burst: 1 }, 3);
    for (const key of ['a', 'b', 'c']) allowances.take(key);
    expect(allowances.take('a')).toBe(false);
    allowances.take('d');
    expect(allowances.take('a')).toBe(false);
    expect(allowances.take('b')).toBe(true);
  });
});
