import { randomInt } from 'node:crypto';
import { countOptions } from '../count-options.ts';
import { rot } from './attack.ts';

export async function run(words: readonly string[]): Promise<number> {
  const { flips, cuts, seed } = countOptions(words, { flips: 60, cuts: 20, seed: randomInt(1_000_000) });
  console.log(
    `Flipping ${flips} bits in every table and in the keys, and cutting ${cuts} logs, each in a copy of a store; again with --seed ${seed}.`,
  );
  const begun = performance.now();
  const report = await rot(flips, cuts, seed);
  for (const fault of report.faults.slice(0, 20)) console.error(fault);
  console.log(
    `${flips} flips and ${cuts} cuts in ${((performance.now() - begun) / 1000).toFixed(0)} s: ${report.refused} files refused with a sentence, ` +
      `${report.setAside} evenings set aside, ${report.wentOn} conducted on; SQLite's own check saw ${report.seenByCheck} flips, ` +
      `${report.told} rows read otherwise and are told of; ${report.faults.length} faults.`,
  );
  return report.faults.length === 0 ? 0 : 1;
}
