import { countOptions } from '../count-options.ts';
import { inWords, keep, shrunk, simulateMany } from './run.ts';
import type { Simulated } from './simulate.ts';

/**
 * Evenings with faults of network, disk, process and clocks, in virtual time; `--seed` is the first of them. With
 * `--processes 3` each runs at three processes on one database.
 */
export async function run(words: readonly string[]): Promise<number> {
  const usual = words.includes('--processes') ? { seeds: 500, ops: 30 } : { seeds: 10_000, ops: 200 };
  const { seeds, ops, seed, processes } = countOptions(words, { ...usual, seed: 1, processes: 1 });
  if (processes !== 1 && processes !== 3) throw new Error('--processes takes 1 or 3.');
  console.log(`${seeds} evenings of ${ops} operations, from seed ${seed} on.`);
  const begun = performance.now();
  const tell = {
    done: (count: number) => {
      if (count % (processes === 1 ? 500 : 50) === 0) console.log(`  ${count} evenings`);
    },
    broken: ({ seed: broken, faults }: Simulated) => console.error(`Seed ${broken}: ${faults[0]}`),
  };
  const done = await simulateMany(seed, seeds, ops, tell, processes);
  for (const each of done.broken) {
    const least = await shrunk(each, processes);
    console.error(inWords(least, processes));
    const found = least.faults[0] ?? 'a broken rule';
    keep({ seed: least.seed, ops: least.ops, ...(processes === 1 ? {} : { processes }), found });
  }
  const seconds = Math.round((performance.now() - begun) / 1000);
  const { events, marks, boots } = done;
  console.log(
    `${done.seeds} evenings, ${events} events, ${marks} ${processes === 1 ? 'notes' : 'commands answered'}, ${boots} starts of a server in ${seconds} s;`,
  );
  console.log(
    done.broken.length === 0 ? 'every rule held.' : 'the seeds above are kept and replayed by the tests.',
  );
  return done.broken.length === 0 ? 0 : 1;
}
