import { faultsFor, rideOut, within } from '../attack/faults/attack.ts';
import type { Figure } from './figures.ts';

/** How soon guests are level after a network that swallowed everything; the followers are the pages' own. */
export async function measureHealing(guests: number, seconds: number, rounds: number): Promise<Figure[]> {
  const [blackhole] = faultsFor({ blackhole: seconds * 1000, slow: 1000 });
  if (blackhole === undefined) throw new Error('There is no hole to heal from.');
  const all = { name: blackhole.name, times: [] as number[], never: 0 };
  for (let round = 0; round < rounds; round += 1) {
    const { times, never } = await rideOut(blackhole, guests);
    all.times.push(...times);
    all.never += never;
  }
  all.times.sort((a, b) => a - b);
  const name = `level after healing from a hole of ${seconds} s`;
  return [
    { name: `${name}, half of ${guests}`, value: within(all, 0.5) / 1000, unit: 's' },
    { name: `${name}, 99 of 100`, value: within(all, 0.99) / 1000, unit: 's', goal: 2 },
  ];
}
