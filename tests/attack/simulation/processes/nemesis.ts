import type { Chances } from '../../chances.ts';
import type { VirtualTime } from '../../virtual-time.ts';
import type { Evening } from './evening.ts';
import type { Place } from './place.ts';
import type { SimulatedPostgres } from './postgres.ts';

interface Scene {
  readonly time: VirtualTime;
  readonly chances: Chances;
  readonly database: SimulatedPostgres;
  readonly places: readonly Place[];
  readonly evening: Evening;
}

/** How often each thing happens. */
const weights = {
  killed: 5,
  stopped: 5,
  asleep: 4,
  cutOff: 5,
  handedOver: 3,
  lostAnswers: 4,
  lateStatements: 4,
  databaseStands: 2,
  copyTakesOver: 2,
  deviceCutOff: 4,
  steered: 8,
} as const;

/** Does one thing, and says what for the one who reads a failure. Each ends by itself. */
export function strike({ time, chances, database, places, evening }: Scene): string {
  // The owner, mostly: of the others little is to be feared.
  const owners = places.filter(({ life }) => life?.conductors.conducts(evening.tasting));
  const place = (chances.happens(0.8) ? chances.anyOf(owners) : undefined) ?? chances.anyOf(places);
  const device = chances.anyOf(evening.followers);
  if (place === undefined || device === undefined) return 'nothing';
  const what = chances.weighed(weights);
  const { life, line, name } = place;
  switch (what) {
    case 'killed':
      place.kill();
      time.after(chances.between(200, 4000), () => place.start());
      return 'a process is killed';
    case 'stopped':
    case 'asleep': {
      life?.machine.stop(what === 'asleep');
      time.after(chances.oneOf([300, 2000, 8000]) * chances.between(0.5, 1.5), () => life?.machine.goOn());
      return `${name} is ${what}`;
    }
    case 'cutOff':
      line.cut = true;
      time.after(chances.oneOf([500, 3000]) * chances.between(0.5, 1.5), () => {
        line.cut = false;
      });
      return `${name} is cut off from the database`;
    case 'handedOver':
      void handOver(place, chances.anyOf(places.filter((each) => each !== place)), evening);
      return `${name} hands over`;
    case 'lostAnswers':
      database.trouble.lost = 0.3;
      time.after(chances.between(100, 2000), () => {
        database.trouble.lost = 0;
      });
      return 'answers of the database are lost';
    case 'lateStatements':
      database.trouble.late = 0.2;
      time.after(chances.between(100, 2000), () => {
        database.trouble.late = 0;
      });
      return 'some statements come late';
    case 'databaseStands':
      database.stop();
      time.after(chances.oneOf([300, 1500, 4000]) * chances.between(0.5, 1.5), () => database.goOn());
      return 'the database stands still';
    case 'copyTakesOver':
      database.state = 'down';
      time.after(chances.between(300, 2000), () => {
        if (database.state === 'down') database.state = 'read-only';
        database.off = chances.between(-50, 50);
      });
      time.after(2000 + chances.between(0, 1500), () => {
        database.state = 'up';
      });
      return 'a copy takes the place of the database';
    case 'deviceCutOff':
      if (chances.happens(0.5)) {
        device.connection.socket.io.engine.close();
        return `${device.name} comes anew`;
      }
      device.weather.cut = true;
      time.after(chances.oneOf([300, 4000]) * chances.between(0.5, 1.5), () => {
        device.weather.cut = false;
      });
      return `${device.name} is cut off`;
    case 'steered':
      evening.steer();
      return 'the host steers';
    default:
      return what satisfies never;
  }
}

/** As a process does that ends, without its ending. */
async function handOver(from: Place, to: Place | undefined, { tasting }: Evening): Promise<void> {
  const [giver, heir] = [from.life, to?.life];
  if (!giver?.machine.runs || !heir?.machine.runs) return;
  if (!(await heir.store.cluster.draining.prepare(tasting).catch(() => false))) return;
  await giver.conductors
    .handOver(tasting, async () => {
      const { cluster } = giver.store;
      if (!(await heir.store.cluster.draining.takeFrom(cluster.name, tasting).catch(() => false)))
        return false;
      cluster.draining.gaveAway(tasting);
      return true;
    })
    .catch(() => false);
}
