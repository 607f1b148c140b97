import type { TastingId } from '../../../core/ids.ts';
import { connectTo } from '../../../server/store/postgres/connections.ts';
import { lookUps } from '../../../server/store/postgres/look-ups.ts';
import type { CreatedTasting } from '../../../shared/wire/http.ts';
import { aKey, House, newSeat } from '../../server/support/house.ts';
import { type LossyLine, lossyLineTo } from '../../support/lossy-line.ts';
import { type PostgresServer, startPostgres } from '../../support/postgres-server.ts';
import { forgetFolder, temporaryFolder } from '../../support/server.ts';
import { Chances } from '../chances.ts';
import { faultsIn } from '../simulation/checks/seen.ts';
import { type Place, startIn } from './places.ts';
import { Roamer } from './roamer.ts';

export interface ClusterAttack {
  readonly rounds: number;
  readonly evenings: number;
  readonly seed: number;
  readonly say?: (line: string) => void;
  /** Another bundle of the server than the sources as they stand. */
  readonly bundle?: string;
}
export interface ClusterOutcome {
  readonly faults: readonly string[];
  /** By fault: ms until a command of the evening that it met was answered again. */
  readonly outages: ReadonlyMap<Fault, readonly number[]>;
  readonly acknowledged: number;
  readonly unknown: number;
  readonly views: number;
}

type Fault =
  | 'owner killed'
  | 'owner cut off for 4 s'
  | 'owner stopped for 3 s'
  | 'database restarted'
  | 'owner told to end';
const weights: Readonly<Record<Fault, number>> = {
  'owner killed': 5,
  'owner stopped for 3 s': 2,
  'owner cut off for 4 s': 2,
  'database restarted': 1,
  'owner told to end': 2,
};
const processes = 3;
/** Ms after which an evening that is not level again is a fault of its own. */
const longest = 40_000;
const pause = (ms: number) => new Promise((done) => setTimeout(done, ms));

/** Nearest rank. */
export const percentile = (values: readonly number[], share: number): number =>
  Math.round(
    values.toSorted((one, other) => one - other)[Math.max(0, Math.ceil(share * values.length) - 1)] ?? 0,
  );

export async function attackCluster(attack: ClusterAttack): Promise<ClusterOutcome> {
  const postgres = await startPostgres();
  const places: Machine[] = [];
  try {
    return await attacked(attack, postgres, places);
  } finally {
    for (const { server, folder } of places) {
      server?.goOn();
      await server?.kill();
      await forgetFolder(folder);
    }
    for (const { line } of places) await line.close();
    await postgres.stop();
  }
}

/** One of three machines, with a line of its own to the database. */
interface Machine extends Place {
  readonly line: LossyLine;
  cutOff: boolean;
}

async function attacked(
  attack: ClusterAttack,
  postgres: PostgresServer,
  places: Machine[],
): Promise<ClusterOutcome> {
  const { rounds, seed, say = () => undefined, bundle } = attack;
  const chances = new Chances(seed);
  const database = await postgres.database();
  const start = (place: Machine): Promise<void> => {
    mended(place);
    const own = database.replace(`:${postgres.port}/`, `:${place.line.port}/`);
    return startIn(place, { database: own, first: places[0] ?? place, bundle });
  };
  for (let count = 0; count < processes; count += 1) {
    const line = await lossyLineTo(postgres.port);
    const place: Machine = { folder: await temporaryFolder(), server: undefined, line, cutOff: false };
    places.push(place);
    await start(place);
  }
  const origins = () => places.flatMap(({ server }) => server?.origin ?? []);
  const evenings: Evening[] = [];
  for (let count = 0; count < attack.evenings; count += 1)
    evenings.push(await begun(places, count, origins, chances));
  const following = evenings.flatMap(({ guests }) => guests.map((each) => each.follow()));
  let stopped = false;
  const working = evenings.map(async ({ host, name }) => {
    for (let count = 0; !stopped; count += 1) {
      await host.mend(`${name}, ${count}`, performance.now() + longest);
      await pause(chances.between(20, 120));
    }
  });
  const faults: string[] = [];
  const outages = new Map<Fault, number[]>();
  for (let round = 0; round < rounds; round += 1) {
    await pause(chances.between(300, 900));
    const evening = chances.anyOf(evenings);
    const fault = chances.weighed(weights);
    if (evening === undefined) break;
    const began = await strike(fault, { postgres, database, places, tasting: evening.tasting });
    const level = await levelAgain(evening.host, began);
    if (level === undefined)
      faults.push(`After "${fault}" ${evening.name} was not level within ${longest} ms.`);
    else outages.set(fault, [...(outages.get(fault) ?? []), level - began]);
    say(`  ${round + 1}: ${fault}, ${level === undefined ? 'not level' : `${Math.round(level - began)} ms`}`);
    for (const place of places) if (place.server === undefined) await start(place);
  }
  stopped = true;
  await Promise.all(working);
  await pause(500);
  for (const { guests, host } of evenings) for (const each of [...guests, host]) each.end();
  await Promise.all(following);
  const connections = connectTo(database);
  const { readAnywhere } = lookUps(connections.ask);
  let views = 0;
  for (const { tasting, host, guests, name } of evenings) {
    const seen = guests.flatMap((each) => each.history.seen);
    views += seen.length;
    faults.push(
      ...faultsIn({ asked: host.asked, seen }, await readAnywhere(tasting)).map((each) => `${name}: ${each}`),
    );
  }
  await connections.close();
  const asked = evenings.flatMap(({ host }) => host.asked);
  const acknowledged = asked.filter(({ answered }) => answered !== undefined).length;
  return { faults, outages, acknowledged, unknown: asked.length - acknowledged, views };
}

/** What goes through meanwhile is cut by it, so only where nothing does. */
function mended(machine: Machine): void {
  if (machine.cutOff) machine.line.mend();
  machine.cutOff = false;
}

interface Evening {
  readonly name: string;
  readonly tasting: TastingId;
  readonly host: Roamer;
  readonly guests: readonly Roamer[];
}

/** Doors open, with two guests, each at whatever process they came to. */
async function begun(
  places: readonly Place[],
  count: number,
  origins: () => readonly string[],
  chances: Chances,
): Promise<Evening> {
  const server = places[count % places.length]?.server;
  if (server === undefined) throw new Error('A process is missing.');
  const house = new House({ url: server.origin, stop: async () => undefined });
  const made: CreatedTasting = await house.plan(undefined, server.houseKey);
  const door = await house.host(made);
  await door.host({ type: 'OpenDoors' });
  door.close();
  const { tasting } = made;
  const name = `evening ${count + 1}`;
  const guests: Roamer[] = [];
  for (const guest of ['Noor', 'Tomas']) {
    const key = aKey();
    await house.ask('POST', '/api/seats', { body: newSeat(made.code, { key, name: guest }) });
    guests.push(new Roamer(`${guest} of ${name}`, origins, { role: 'guest', tasting, key }, chances));
  }
  const host = new Roamer(
    `the host of ${name}`,
    origins,
    { role: 'host', tasting, key: made.hostKey },
    chances,
  );
  return { name, tasting, host, guests };
}

interface Struck {
  readonly postgres: PostgresServer;
  readonly database: string;
  readonly places: readonly Machine[];
  readonly tasting: TastingId;
}

/** Answers with the moment at which it struck. */
async function strike(fault: Fault, { postgres, database, places, tasting }: Struck): Promise<number> {
  if (fault === 'database restarted') {
    await postgres.kill();
    const struck = performance.now();
    await postgres.start();
    return struck;
  }
  const found = await postgres.query(
    database,
    `SELECT p.address FROM heads h JOIN processes p ON p.process = h.owner WHERE h.tasting = '${tasting}'`,
  );
  const owner = places.find(({ server }) => String(found[0]?.address).endsWith(`:${server?.port}`));
  const server = owner?.server;
  const now = () => performance.now();
  if (owner === undefined || server === undefined) return now();
  if (fault === 'owner stopped for 3 s') {
    server.pause();
    setTimeout(() => server.goOn(), 3000);
    return now();
  }
  if (fault === 'owner cut off for 4 s') {
    owner.cutOff = true;
    owner.line.silence();
    setTimeout(() => mended(owner), 4000);
    return now();
  }
  owner.server = undefined;
  if (fault === 'owner killed') await server.kill();
  else void server.stop();
  return now();
}

/** What is on its way when a fault strikes arrives within so many ms. */
const arriving = 20;

/** When the first command was answered after a fault that struck at `from`. */
async function levelAgain(host: Roamer, from: number): Promise<number | undefined> {
  while (performance.now() < from + longest) {
    const answered = host.asked.find(
      (each) => each.answered !== undefined && each.answered.at > from + arriving,
    )?.answered;
    if (answered !== undefined) return answered.at;
    await pause(10);
  }
  return undefined;
}
