import { fork } from 'node:child_process';
import { join } from 'node:path';
import { bundleServer } from '../../support/server.ts';
import { RawDevice } from './raw-device.ts';
import { askServer, openScene, type Scene, shownBy, takeSeat, tap } from './scene.ts';

export interface Dose {
  /** Ms that each spoiler goes on. */
  readonly lasts: number;
  /** Sockets that flood. */
  readonly flood: number;
  readonly guessers: number;
  /** Absent: all. */
  readonly kinds?: readonly Kind[];
}

export interface Finding {
  readonly name: Kind;
  /** Ms of a tap of another evening while the spoilers rest and while they are at it, in turns: the middle ones. */
  readonly quiet: number;
  readonly meanwhile: number;
  /** Of each pair of turns how many times as long a tap took: the middle one, which a machine with other work moves least. */
  readonly ratio: number;
  /** What the spoilers counted. */
  readonly counted: Readonly<Record<string, number>>;
  /** Memory of the server afterwards against before, in MB. */
  readonly grown: number;
  /** What was not held, in sentences. */
  readonly faults: readonly string[];
}

/** Each spoiler at a fresh server, with the tap of another evening's host measured beside it, in turns with its rests. */
export async function spoil(
  dose: Dose,
  told: (finding: Finding) => void = () => undefined,
): Promise<Finding[]> {
  const bundle = await bundleServer('spoil-server');
  const checks: Readonly<Record<Kind, Check>> = {
    readers: async ({ counted }) =>
      (counted.letGo ?? 0) > 0 || dose.lasts < 120_000 ? [] : ['Nobody who does not read was let go.'],
    flood: async ({ counted }) =>
      (counted.refused ?? 0) > (counted.entered ?? 0) || dose.lasts < 5000
        ? []
        : ['Who floods comes back as often as they like.'],
    fillers: ({ scene }) => guestComesIn(scene),
    guessers: ({ scene, counted }) => codeComesThrough(scene, counted),
  };
  const counts: Readonly<Record<Kind, number>> = {
    readers: 4,
    flood: dose.flood,
    fillers: 1,
    guessers: dose.guessers,
  };
  const findings: Finding[] = [];
  for (const kind of dose.kinds ?? kinds) {
    const finding = await beside(kind, counts[kind], checks[kind], { bundle, lasts: dose.lasts });
    told(finding);
    findings.push(finding);
  }
  return findings;
}

export const kinds = ['readers', 'flood', 'fillers', 'guessers'] as const;
type Kind = (typeof kinds)[number];

interface Seen {
  readonly scene: Scene;
  readonly counted: Readonly<Record<string, number>>;
}

type Check = (seen: Seen) => Promise<readonly string[]>;

/** What is in flight when a turn begins is over by then, in ms. */
const settling = 700;
/** Ms of one turn; the shortest dose has two of each. */
const turn = 2500;

async function beside(
  name: Kind,
  count: number,
  check: Check,
  { bundle, lasts }: { readonly bundle: string; readonly lasts: number },
): Promise<Finding> {
  const scene = await openScene(bundle);
  try {
    // Warm, so that the first does not pay for the others.
    await tap(scene, 60);
    const memory = await memoryOf(scene);
    let counted: Record<string, number> = {};
    const spoiler = fork(
      join(import.meta.dirname, 'spoilers.ts'),
      [name, scene.server.origin, JSON.stringify(scene.attacked), String(count)],
      { execArgv: ['--import', 'tsx'], stdio: ['ignore', 'inherit', 'inherit', 'ipc'] },
    );
    const busy = new Promise<void>((resolve) => {
      spoiler.on('message', (said) => {
        counted = said as Record<string, number>;
        if (Object.keys(counted).length > 0) resolve();
      });
      spoiler.once('exit', () => resolve());
    });
    await busy;
    const inTurn = async (does: 'rest' | 'go on'): Promise<number> => {
      spoiler.send(does);
      await pass(settling);
      const over = performance.now() + turn - settling;
      const taken: number[] = [];
      do taken.push(await tap(scene, 5));
      while (performance.now() < over);
      return middle(taken);
    };
    const over = performance.now() + lasts;
    const turns: { readonly quiet: number; readonly meanwhile: number }[] = [];
    do {
      const quiet = await inTurn('rest');
      turns.push({ quiet, meanwhile: await inTurn('go on') });
    } while (performance.now() < over);
    const faults = [...(await check({ scene, counted }))];
    if (spoiler.exitCode !== null) faults.push('The spoiler fell by itself.');
    const ended = new Promise((resolve) => spoiler.once('exit', resolve));
    spoiler.kill();
    await ended;
    const grown = (await memoryOf(scene)) - memory;
    const quiet = middle(turns.map((each) => each.quiet));
    const meanwhile = middle(turns.map((each) => each.meanwhile));
    const ratio = middle(turns.map((each) => each.meanwhile / each.quiet));
    return { name, quiet, meanwhile, ratio, counted, grown, faults };
  } finally {
    await scene.close();
  }
}

const pass = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));

const middle = (numbers: readonly number[]): number =>
  numbers.toSorted((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? 0;

/** [S3] A table full of seats that nobody came to has a chair again after a minute. */
async function guestComesIn({ server, attacked }: Scene): Promise<readonly string[]> {
  const patience = performance.now() + 75_000;
  for (;;) {
    const key = await takeSeat(server.origin, attacked.code, '203.0.113.9').catch(() => undefined);
    if (key !== undefined) {
      const device = await RawDevice.enter(server.origin, shownBy('guest', attacked.tasting, key));
      const fault = device.gone ? ['A guest who sat down was not let in.'] : [];
      device.close();
      return fault;
    }
    if (performance.now() > patience) return ['A full table stayed full.'];
    await pass(1000);
  }
}

/** A right code typed behind the guessers' own address, twelve times, and no more guesses than are allowed. */
async function codeComesThrough({ server, attacked }: Scene, counted: Seen['counted']): Promise<string[]> {
  const from = '203.0.113.7';
  const path = `/api/invitations/${attacked.code}`;
  let through = 0;
  for (let time = 0; time < 12; time += 1) {
    if ((await askServer(server.origin, 'GET', path, { from })).status === 200) through += 1;
  }
  return [
    ...(through === 12 ? [] : [`A right code came through ${through} of 12 times.`]),
    ...((counted.found ?? 0) === 0 ? [] : ['A code was found.']),
  ];
}

/** In MB, as the server says of itself. */
async function memoryOf({ server }: Scene): Promise<number> {
  const text = await (
    await fetch(`${server.origin}/metrics`, { headers: { authorization: `Bearer ${server.houseKey}` } })
  ).text();
  return Number(/resident\S* (\d[\d.e+]*)/.exec(text)?.[1] ?? 0) / 1e6;
}
