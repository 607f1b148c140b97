import { createServer, connect as dial } from 'node:net';
import { commandId, type TastingId } from '../../../core/ids.ts';
import { type Connection, connect, envelope } from '../../../shared/follower/connection.ts';
import { newId } from '../../server/support/device.ts';
import { aKey, House, newSeat } from '../../server/support/house.ts';
import { startPostgres } from '../../support/postgres-server.ts';
import { forgetFolder, type SpawnedServer, temporaryFolder } from '../../support/server.ts';
import { until } from '../../support/until.ts';
import { type Place, startIn } from './places.ts';

export interface UpgradeOutcome {
  /** Cues that the host was acknowledged. */
  readonly turns: number;
  /** Turns that a guest's device was never shown, or was shown after the next one. */
  readonly missed: number;
  /** Ms for which a device had no line, each time. */
  readonly gaps: readonly number[];
  /** Ms by which a turn reached a device after its moment; 0 where it came in time. */
  readonly late: readonly number[];
  /** Ms from the host's tap to its answer. */
  readonly taps: readonly number[];
}

const processes = 3;
const betweenTaps = 250;
const pause = (ms: number) => new Promise((done) => setTimeout(done, ms));

/** Ends and starts three processes, one after the other, while an evening's host goes from cue to cue and guests look on. */
export async function rollingUpgrade(guests: number, bundle?: string): Promise<UpgradeOutcome> {
  const postgres = await startPostgres();
  const places: Place[] = [];
  const balancer = await balance(() => places.flatMap(({ server }) => server ?? []));
  const people: Connection[] = [];
  try {
    const database = await postgres.database();
    for (let count = 0; count < processes; count += 1) {
      const place: Place = { folder: await temporaryFolder(), server: undefined };
      places.push(place);
      await startIn(place, { database, first: places[0] ?? place, bundle });
    }
    const { origin } = balancer;
    await until('somebody is ready', balancer.ready);
    const house = new House({ url: origin, stop: async () => undefined });
    const made = await house.plan(undefined, places[0]?.server?.houseKey);
    const host = connect('host', { origin, tasting: made.tasting, key: made.hostKey });
    people.push(host);
    await host.ask('host:ask', envelope(commandId(newId()), { type: 'OpenDoors' } as never));
    const seated = await Promise.all(
      Array.from({ length: guests }, (_, index) => watched(house, origin, made, `Guest ${index + 1}`)),
    );
    people.push(...seated.map(({ connection }) => connection));
    await until('everybody sits', () =>
      seated.every(({ connection }) => connection.link.peek().status === 'live'),
    );

    const versions: number[] = [];
    const taps: number[] = [];
    let goesOn = true;
    const tapping = (async () => {
      for (let turn = 0; goesOn; turn += 1) {
        const cue = turn % 2 === 0 ? 'one/first/look' : 'welcome';
        const asked = performance.now();
        const said = await host.ask(
          'host:ask',
          envelope(commandId(newId()), { type: 'JumpTo', cue } as never),
        );
        taps.push(performance.now() - asked);
        if (said.ok) versions.push(said.version);
        await pause(betweenTaps);
      }
    })();
    await pause(1000);
    for (const place of places) {
      const ending = place.server;
      place.server = undefined;
      balancer.knows(ending);
      await ending?.stop();
      await startIn(place, { database, first: places[0] ?? place, bundle });
      await pause(1500);
    }
    goesOn = false;
    await tapping;
    await pause(500);
    const missed = seated.reduce(
      (sum, { seen }) =>
        sum +
        versions.filter((version, at) => {
          const next = versions[at + 1] ?? Number.POSITIVE_INFINITY;
          return !seen.some((each) => each >= version && each < next);
        }).length,
      0,
    );
    return {
      turns: versions.length,
      missed,
      gaps: seated.flatMap((each) => each.gaps),
      late: seated.flatMap((each) => each.late),
      taps,
    };
  } finally {
    for (const each of people) each.close();
    balancer.close();
    for (const { server, folder } of places) {
      await server?.kill();
      await forgetFolder(folder);
    }
    await postgres.stop();
  }
}

interface Watched {
  readonly connection: Connection;
  /** Versions of the views that arrived, as they came. */
  readonly seen: readonly number[];
  readonly gaps: readonly number[];
  readonly late: readonly number[];
}

async function watched(
  house: House,
  origin: string,
  { tasting, code }: { readonly tasting: TastingId; readonly code: string },
  name: string,
): Promise<Watched> {
  const key = aKey();
  await house.ask('POST', '/api/seats', { body: newSeat(code, { key, name }) });
  const connection = connect('guest', { origin, tasting, key });
  const [seen, gaps, late]: [number[], number[], number[]] = [[], [], []];
  let known = 0;
  const see = (version: number, takesEffectAt: number): void => {
    seen.push(version);
    if (takesEffectAt <= known) return;
    if (known > 0) late.push(Math.max(0, connection.clock.now() - takesEffectAt));
    known = takesEffectAt;
  };
  connection.socket.on('stage', (view) =>
    see(view.version, view.status === 'under-way' ? view.takesEffectAt : known),
  );
  connection.socket.on('news', ([version, takesEffectAt]) => see(version, takesEffectAt));
  let lost: number | undefined;
  connection.link.subscribe(({ status }) => {
    if (status === 'lost') lost ??= performance.now();
    else if (status === 'live' && lost !== undefined) {
      gaps.push(performance.now() - lost);
      lost = undefined;
    }
  });
  return { connection, seen, gaps, late };
}

/** As a proxy does: new connections go to the first process that says it is ready, and those that there are stay. */
async function balance(servers: () => readonly SpawnedServer[]) {
  let origins: readonly string[] = [];
  let leaving: SpawnedServer | undefined;
  const looking = setInterval(async () => {
    const all = [...servers(), ...(leaving === undefined ? [] : [leaving])];
    const said = await Promise.all(
      all.map(async ({ origin }) =>
        (await fetch(`${origin}/ready`).catch(() => undefined))?.ok === true ? [origin] : [],
      ),
    );
    origins = said.flat();
  }, 200);
  const proxy = createServer((near) => {
    const [to] = origins;
    near.on('error', () => undefined);
    if (to === undefined) return void near.destroy();
    const far = dial(Number(new URL(to).port), '127.0.0.1');
    far.on('error', () => near.destroy());
    near.on('close', () => far.destroy());
    far.on('close', () => near.destroy());
    near.pipe(far).pipe(near);
  });
  await new Promise<void>((done) => proxy.listen(0, '127.0.0.1', done));
  const address = proxy.address();
  return {
    origin: `http://127.0.0.1:${typeof address === 'object' ? address?.port : 0}`,
    ready: () => origins.length > 0,
    knows(server: SpawnedServer | undefined) {
      leaving = server;
    },
    close() {
      clearInterval(looking);
      proxy.close();
    },
  };
}
