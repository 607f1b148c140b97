import { randomInt } from 'node:crypto';
import { countOptions } from '../count-options.ts';
import { fuzz } from './attack.ts';

export async function run(words: readonly string[]): Promise<number> {
  const { count, seed } = countOptions(words, { count: 100_000, seed: randomInt(1_000_000) });
  console.log(`Throwing ${count} spoiled messages and requests at a house; again with --seed ${seed}.`);
  const begun = performance.now();
  const report = await fuzz(count, seed);
  for (const fault of report.faults.slice(0, 20)) console.error(fault);
  console.log(
    `${report.messages} messages and ${report.requests} requests in ${((performance.now() - begun) / 1000).toFixed(0)} s: ` +
      `${report.refused} refused with a sentence, ${report.hungUp} hung up on, ${report.faults.length} faults.`,
  );
  return report.faults.length === 0 ? 0 : 1;
}
