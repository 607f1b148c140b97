import { readFileSync, writeFileSync } from 'node:fs';
import { simulateProcesses } from './processes/simulate.ts';
import { type Simulated, simulate } from './simulate.ts';

/** A seed that once found something. Replayed for ever. */
export interface KeptSeed {
  readonly seed: number;
  readonly ops: number;
  /** Absent: one. */
  readonly processes?: number;
  /** What it found. */
  readonly found: string;
}

const keptFile = new URL('../kept-seeds.json', import.meta.url);

const allKept = (): readonly KeptSeed[] => JSON.parse(readFileSync(keptFile, 'utf8')) as readonly KeptSeed[];

export const keptSeeds = (of: number): readonly KeptSeed[] =>
  allKept().filter(({ processes = 1 }) => processes === of);

export function keep(seed: KeptSeed): void {
  const nameOf = ({ seed, ops, processes = 1 }: KeptSeed) => `${seed} ${ops} ${processes}`;
  const others = allKept().filter((each) => nameOf(each) !== nameOf(seed));
  writeFileSync(keptFile, `${JSON.stringify([...others, seed], null, 2)}\n`);
}

/** One process on one disk, or three on one database. */
const simulated = (seed: number, ops: number, processes: number): Promise<Simulated> =>
  processes === 1 ? simulate(seed, ops) : simulateProcesses(seed, ops);

/** The fewest operations, by halving, with which this seed still breaks a rule. */
export async function shrunk(broken: Simulated, processes = 1): Promise<Simulated> {
  let [least, none] = [broken, 0];
  while (least.ops - none > 1) {
    const half = await simulated(broken.seed, Math.floor((least.ops + none) / 2), processes);
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
  processes = 1,
): Promise<Evenings> {
  const broken: Simulated[] = [];
  let [seeds, events, marks, boots] = [0, 0, 0, 0];
  for (; seeds < count && broken.length < 3; seeds += 1) {
    const done = await simulated(first + seeds, ops, processes);
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
export const inWords = ({ seed, ops, faults, told }: Simulated, processes = 1): string =>
  [
    `Seed ${seed} with ${ops} operations breaks a rule; see it again with`,
    `  npm run attack -- simulate --seeds 1 --seed ${seed} --ops ${ops}${processes === 1 ? '' : ` --processes ${processes}`}`,
    ...faults.map((fault) => `  ${fault}`),
    '  The last of what happened, in ms:',
    ...told.slice(-15).map((line) => `    ${line}`),
  ].join('\n');
