import { randomInt } from 'node:crypto';
import { bundleServer } from '../../support/server.ts';
import { countOptions } from '../count-options.ts';
import { attackCluster, percentile } from './cluster.ts';
import { rollingUpgrade } from './upgrade.ts';

/** `upgrade`: three processes are ended and started one after the other, and nobody misses a turn. Else: evenings go on at three processes on one PostgreSQL while owners are killed and stopped and the database is restarted. */
export async function run(words: readonly string[]): Promise<number> {
  if (words[0] === 'upgrade') return upgrade();
  const { rounds, evenings, seed } = countOptions(words, {
    rounds: 12,
    evenings: 3,
    seed: randomInt(1_000_000),
  });
  console.log(`${rounds} faults over ${evenings} evenings at 3 processes; again with --seed ${seed}.`);
  const { faults, outages, acknowledged, unknown, views } = await attackCluster({
    rounds,
    evenings,
    seed,
    // It starts in a third of the time that the sources take, so that a round tells of faults and not of a compiler.
    bundle: await bundleServer('attack'),
    say: console.log,
  });
  for (const fault of faults) console.error(fault);
  for (const [fault, took] of outages)
    console.log(
      `${fault}: level again p50 ${percentile(took, 0.5)} ms, p99 ${percentile(took, 0.99)} ms (${took.length} times)`,
    );
  console.log(
    `${acknowledged} commands acknowledged, ${unknown} unknown, ${views} views held against the log;`,
  );
  console.log(
    faults.length === 0 ? 'none was lost, none doubled, none old.' : `${faults.length} faults, see above.`,
  );
  return faults.length === 0 ? 0 : 1;
}

const aims = { gap: 150, missed: 0 };

async function upgrade(): Promise<number> {
  const guests = 10;
  const { turns, missed, gaps, late, taps } = await rollingUpgrade(guests, await bundleServer('attack'));
  const of = (values: readonly number[]) =>
    `p50 ${percentile(values, 0.5)} ms, p99 ${percentile(values, 0.99)} ms, at most ${percentile(values, 1)} ms`;
  console.log(`${turns} turns before ${guests} guests while three processes were ended and started again:`);
  console.log(`${missed} missed (aim ${aims.missed}); too late for their moment ${of(late)};`);
  console.log(`a device without a line ${gaps.length} times, ${of(gaps)} (aim ${aims.gap} ms);`);
  console.log(`from the host’s tap to its answer ${of(taps)}.`);
  return missed === aims.missed && percentile(gaps, 1) <= aims.gap ? 0 : 1;
}
