import { countOptions } from '../count-options.ts';
import { faultsFor, rideOut, within } from './attack.ts';

/** From healing to level, for 99 of 100 guests. */
const goal = 2000;

export async function run(words: readonly string[]): Promise<number> {
  const { guests, seconds, rounds } = countOptions(words, { guests: 100, seconds: 60, rounds: 3 });
  console.log(`${guests} guests behind a faulty network, ${rounds} rounds; a blackhole lasts ${seconds} s.`);
  const faults = faultsFor({ blackhole: seconds * 1000, slow: 20_000 });
  let missed = 0;
  for (const fault of faults) {
    const all = { name: fault.name, times: [] as number[], never: 0 };
    for (let round = 0; round < rounds; round += 1) {
      const { times, never } = await rideOut(fault, guests);
      all.times.push(...times);
      all.never += never;
    }
    all.times.sort((a, b) => a - b);
    const [half, most] = [within(all, 0.5), within(all, 0.99)];
    if (!(most <= goal)) missed += 1;
    console.log(
      `${fault.name.padEnd(24)} level after ${half.toFixed(0)} ms (half), ${most.toFixed(0)} ms (99 of 100)` +
        `${most <= goal ? '' : `: missed, ${goal} ms were promised`}`,
    );
  }
  return missed === 0 ? 0 : 1;
}
