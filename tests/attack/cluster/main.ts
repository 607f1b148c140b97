import { randomInt } from 'node:crypto';
import { countOptions } from '../count-options.ts';
import { attackCluster, percentile } from './cluster.ts';

/** Evenings go on at three processes on one PostgreSQL while owners are killed and stopped and the database is restarted. */
export async function run(words: readonly string[]): Promise<number> {
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
