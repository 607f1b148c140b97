import { type TastingId, tastingId } from '../../../../core/ids.ts';
import type { SessionEvent } from '../../../../core/session/event.ts';
import { epochMs } from '../../../../core/units.ts';
import { eventsIn, type StoredEventRow } from '../../../../server/store/stored-log.ts';
import { planOf } from '../../../support/plans.ts';
import { Chances } from '../../chances.ts';
import { VirtualTime } from '../../virtual-time.ts';
import { standings } from '../checks/log.ts';
import { faultsIn, stageOf } from '../checks/seen.ts';
import { idsFrom } from '../device.ts';
import { inOrder } from '../in-order.ts';
import type { Simulated } from '../simulate.ts';
import type { Switchboard } from '../switchboard.ts';
import { Evening } from './evening.ts';
import { strike } from './nemesis.ts';
import { Place, type PlantedInProcess } from './place.ts';
import { SimulatedPostgres } from './postgres.ts';

export interface PlantedInCluster extends PlantedInProcess {
  /** What becomes of the statements on their way to the database. */
  readonly statement?: (text: string) => string;
  /** Views overtake each other on their way to a device. */
  readonly reorders?: boolean;
}

/** Ms after which a device gives up a process that does not answer, and comes to another. */
const longestKnock = 5000;

/**
 * Two evenings at three processes on one database, from one seed: the product's own store, lease, claims, conductors, gateway
 * and lines over a simulated PostgreSQL, network and clocks, in virtual time. The same seed and number of faults give the same
 * history, which is checked as that of `attack -- cluster`, but with each view as it came over the wire.
 */
export async function simulateProcesses(
  seed: number,
  ops: number,
  planted: PlantedInCluster = {},
): Promise<Simulated & { readonly views: number }> {
  const time = new VirtualTime(3);
  const chances = new Chances(seed);
  const database = new SimulatedPostgres(time, chances, planted.statement ?? ((text) => text));
  const places = ['one', 'two', 'three'].map(
    (name, at) => new Place(name, time, database, { off: 60 * at - 60, rate: 1 + (at - 1) * 50e-6 }, planted),
  );
  for (const each of places) each.start();
  await time.pass(500);
  const lifeAt = (address: string) =>
    places.flatMap(({ life }) => life ?? []).find((each) => each.address === address);
  const server = (tasting: TastingId) => (): Promise<Switchboard | undefined> => {
    const place = chances.anyOf(places);
    return new Promise((found) => {
      time.after(longestKnock, () => found(undefined));
      place?.leads(tasting, lifeAt).then(found, () => found(undefined));
    });
  };
  const newId = idsFrom(seed);
  const evenings = ['first', 'second'].map((name) => {
    const tasting = tastingId(name);
    return new Evening({
      time,
      chances,
      tasting,
      newId,
      server: server(tasting),
      wild: planted.reorders ? 'everything' : false,
    });
  });
  const plan = planOf(2, { level: 'newcomers', discussion: 'each-pour', practice: false });
  let lives = places.length;
  for (const [at, evening] of evenings.entries()) {
    const { tasting } = evening;
    const life = places[at]?.life;
    if (life === undefined) throw new Error('Nothing has gone wrong yet.');
    const row = { tasting, code: `ABC23${at + 4}`, plan, revision: 1, createdAt: epochMs(0) };
    await during(time, life.store.tastings.create(row));
    await during(time, evening.begin(life));
  }
  let [goesOn, calm] = [true, false];
  for (const evening of evenings)
    void (async () => {
      while (goesOn) {
        await evening.mend();
        await new Promise<void>((done) => time.after(calm ? 3000 : chances.between(50, 600), done));
      }
    })();

  const told: string[] = [];
  for (let op = 0; op < ops; op += 1) {
    await time.pass(chances.exponential(chances.oneOf([100, 600, 3000])));
    const evening = chances.oneOf(evenings as [Evening, Evening]);
    const done = strike({ time, chances, database, places, evening });
    if (done === 'a process is killed') lives += 1;
    told.push(`${Math.round(time.now)} ${done}`);
  }
  // All faults end within these; whatever is asked after that is answered.
  calm = true;
  await time.pass(25_000);
  goesOn = false;
  await time.pass(11_000);
  const faults = places.flatMap(({ logged }) => logged);
  if (database.stale > 0) faults.push(`${database.stale} commits of an owner of before were done.`);
  let [events, marks, views] = [0, 0, 0];
  for (const evening of evenings) {
    const { tasting, history, followers } = evening;
    const level = await during(time, evening.mend(), false);
    await time.pass(1000);
    const log = logOf(database, tasting);
    faults.push(...faultsIn(history, log).map((each) => `${tasting}: ${each}`));
    if (!level) faults.push(`${tasting}: nobody answers in the end.`);
    const last = stageOf(standings(log).at(-1), log.length);
    for (const { name, stage } of followers.slice(1))
      if (stage === undefined || inOrder(stage) !== last) faults.push(`${name} is not level in the end.`);
    events += log.length;
    marks += history.asked.filter(({ answered }) => answered !== undefined).length;
    views += history.seen.length;
    evening.close();
  }
  for (const each of places) each.kill();
  return { seed, ops, faults: [...new Set(faults)].slice(0, 20), events, marks, boots: lives, told, views };
}

/** Lets time pass until it is done; a minute at the most. */
async function during<Result>(
  time: VirtualTime,
  running: Promise<Result>,
  otherwise?: Result,
): Promise<Result> {
  let done: { readonly is: Result } | undefined;
  void running.then((is) => {
    done = { is };
  });
  for (let waited = 0; done === undefined && waited < 60_000; waited += 100) await time.pass(100);
  const said = done as { readonly is: Result } | undefined;
  if (said !== undefined) return said.is;
  if (otherwise !== undefined) return otherwise;
  throw new Error('Nothing has gone wrong yet, and nothing happens.');
}

const logOf = (database: SimulatedPostgres, tasting: TastingId): readonly SessionEvent[] =>
  eventsIn(
    tasting,
    database.rows<StoredEventRow>('SELECT seq, event, digest FROM events WHERE tasting = $1 ORDER BY seq', [
      tasting,
    ]),
  );
