import { countOptions } from '../count-options.ts';
import { inWords, keep, shrunk, simulateMany } from './run.ts';

/** Evenings with faults of network, disk, process and clocks, in virtual time; `--seed` is the first of them. */
export async function run(words: readonly string[]): Promise<number> {
  const { seeds, ops, seed } = countOptions(words, { seeds: 10_000, ops: 200, seed: 1 });
  console.log(`${seeds} evenings of ${ops} operations, from seed ${seed} on.`);
  const begun = performance.now();
  const done = await simulateMany(seed, seeds, ops, {
    done: (count) => {
      if (count % 500 === 0) console.log(`  ${count} evenings`);
    },
    broken: ({ seed: broken, faults }) => console.error(`Seed ${broken}: ${faults[0]}`),
  });
  for (const each of done.broken) {
    const least = await shrunk(each);
    console.error(inWords(least));
    keep({ seed: least.seed, ops: least.ops, found: least.faults[0] ?? 'a broken rule' });
  }
  const seconds = Math.round((performance.now() - begun) / 1000);
  const { events, marks, boots } = done;
  console.log(
    `${done.seeds} evenings, ${events} events, ${marks} notes, ${boots} starts of a server in ${seconds} s;`,
  );
  console.log(
    done.broken.length === 0 ? 'every rule held.' : 'the seeds above are kept and replayed by the tests.',
  );
  return done.broken.length === 0 ? 0 : 1;
}
