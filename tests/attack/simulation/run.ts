import { readFileSync, writeFileSync } from 'node:fs';
import { type Simulated, simulate } from './simulate.ts';

/** A seed that once found something. Replayed for ever. */
export interface KeptSeed {
  readonly seed: number;
  readonly ops: number;
  /** What it found. */
  readonly found: string;
}

const keptFile = new URL('../kept-seeds.json', import.meta.url);

export const keptSeeds = (): readonly KeptSeed[] =>
  JSON.parse(readFileSync(keptFile, 'utf8')) as readonly KeptSeed[];

export function keep(seed: KeptSeed): void {
  const others = keptSeeds().filter((each) => each.seed !== seed.seed || each.ops !== seed.ops);
  writeFileSync(keptFile, `${JSON.stringify([...others, seed], null, 2)}\n`);
}

/** The fewest operations, by halving, with which this seed still breaks a rule. */
export async function shrunk(broken: Simulated): Promise<Simulated> {
  let [least, none] = [broken, 0];
  while (least.ops - none > 1) {
    const half = await simulate(broken.seed, Math.floor((least.ops + none) / 2));
    if (half.faults.length > 0) least = half;
    else none = half.ops;
  }
  return least;
}

export interface Evenings {
  readonly seeds: number;
  readonly broken: readonly Simulated[];
  readonly events: number;
  readonly marks: number;
  readonly boots: number;
}

/** Simulates `count` seeds from `first` on; stops early after three that break a rule, each told at once. */
export async function simulateMany(
  first: number,
  count: number,
  ops: number,
  tell: { readonly done?: (count: number) => void; readonly broken?: (evening: Simulated) => void } = {},
): Promise<Evenings> {
  const broken: Simulated[] = [];
  let [seeds, events, marks, boots] = [0, 0, 0, 0];
  for (; seeds < count && broken.length < 3; seeds += 1) {
    const done = await simulate(first + seeds, ops);
    events += done.events;
    marks += done.marks;
    boots += done.boots;
    if (done.faults.length > 0) {
      broken.push(done);
      tell.broken?.(done);
    }
    tell.done?.(seeds + 1);
  }
  return { seeds, broken, events, marks, boots };
}

/** For a person: what was broken, how to see it again, and what happened last before the end. */
export const inWords = ({ seed, ops, faults, told }: Simulated): string =>
  [
    `Seed ${seed} with ${ops} operations breaks a rule; see it again with`,
    `  npm run attack -- simulate --seeds 1 --seed ${seed} --ops ${ops}`,
    ...faults.map((fault) => `  ${fault}`),
    '  The last of what happened, in ms:',
    ...told.slice(-15).map((line) => `    ${line}`),
  ].join('\n');
