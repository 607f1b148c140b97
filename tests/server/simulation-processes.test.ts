import { describe, expect, it } from 'vitest';
import { type PlantedInCluster, simulateProcesses } from '../attack/simulation/processes/simulate.ts';
import { inWords, keptSeeds, simulateMany } from '../attack/simulation/run.ts';

const ops = 30;

/** The first of a few evenings in which a planted fault is found and said so; undefined when none is. */
async function found(planted: PlantedInCluster, says: RegExp): Promise<number | undefined> {
  for (let seed = 1; seed <= 20; seed += 1) {
    const { faults } = await simulateProcesses(seed, ops, planted);
    if (faults.some((fault) => says.test(fault))) return seed;
  }
  return undefined;
}

/** Takes what a commit checks of the head out of the product's own statement, on its way to the database. */
const without =
  (...checks: readonly string[]) =>
  (statement: string): string =>
    // A value that is not used would be refused.
    checks.reduce((text, check) => text.replace(` AND ${check}`, ` AND ${check} IS NOT NULL`), statement);
const [owner, epoch, version] = ['owner = $2', 'epoch = $3', 'version = $4'];

describe('evenings at three processes on one database, simulated', () => {
  it('lose, double and reorder nothing, and show nothing old', async () => {
    const { broken, events, marks, boots } = await simulateMany(1, 5, ops, {}, 3);
    expect(broken.map((each) => inWords(each, 3))).toEqual([]);
    // Evenings in which little happens would find little.
    expect(events).toBeGreaterThan(5 * 50);
    expect(marks).toBeGreaterThan(5 * 40);
    expect(boots).toBeGreaterThan(5 * 3);
  });

  it('are the same again with the same seed', async () => {
    expect(await simulateProcesses(9, ops)).toEqual(await simulateProcesses(9, ops));
  });

  it('go well with the seeds that once broke a rule', async () => {
    for (const { seed, ops } of keptSeeds(3)) expect((await simulateProcesses(seed, ops)).faults).toEqual([]);
  });
});

describe('a fault that is planted on purpose is found', () => {
  it('when nobody checks who owns an evening that is committed to', async () => {
    expect(await found({ statement: without(owner, epoch) }, /of an owner of before/)).toBeDefined();
  });

  it('when besides a process does not notice that its lease has run out: it shows what is old', async () => {
    const planted = { statement: without(owner, epoch), trusting: true };
    expect(await found(planted, /went back from version/)).toBeDefined();
  });

  it('when nothing of the head is checked: events have keys of their own, and the rightful owner is stuck', async () => {
    const planted = { statement: without(owner, epoch, version) };
    expect(await found(planted, /nobody answers in the end/)).toBeDefined();
  });

  it('when a command is acknowledged before it is committed', async () => {
    expect(await found({ hasty: true }, /was answered and is lost/)).toBeDefined();
  });

  it('when views overtake each other on their way', async () => {
    expect(await found({ reorders: true }, /went back from version/)).toBeDefined();
  });
});
