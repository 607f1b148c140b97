import { randomInt } from 'node:crypto';
import { countOptions } from '../count-options.ts';
import { crash } from './crash.ts';

/** Guests write and the host walks on while the server is killed again and again. */
export async function run(words: readonly string[]): Promise<number> {
  const { kills, seed } = countOptions(words, { kills: 200, seed: randomInt(1_000_000) });
  console.log(`The server will be killed ${kills} times; again with --seed ${seed}.`);
  const onKill = (count: number): void => {
    if (count % 20 === 0) console.log(`  killed ${count} times`);
  };
  const { faults, steps, notes, seconds } = await crash({ kills, seed, onKill });
  for (const fault of faults) console.error(fault);
  console.log(`${steps} steps and ${notes} notes acknowledged over ${kills} kills in ${seconds} s;`);
  console.log(faults.length === 0 ? 'none was lost, none doubled.' : `${faults.length} faults, see above.`);
  return faults.length === 0 ? 0 : 1;
}
