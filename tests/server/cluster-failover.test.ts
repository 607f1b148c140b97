import { afterEach, describe, expect, it } from 'vitest';
import { commandId } from '../../core/ids.ts';
import { openPostgresStore, type PostgresStore } from '../../server/store/postgres/postgres.ts';
import { type Connection, connect, envelope } from '../../shared/follower/connection.ts';
import { type Place, startIn } from '../attack/cluster/places.ts';
import { lossyLineTo } from '../support/lossy-line.ts';
import { startPostgres } from '../support/postgres-server.ts';
import { forgetFolder, temporaryFolder } from '../support/server.ts';
import { until } from '../support/until.ts';
import { newId } from './support/device.ts';
import { aKey, House, houseKey, newSeat } from './support/house.ts';

/** What is to be taken down after a test, the last first. */
const open: (() => unknown)[] = [];
afterEach(async () => {
  for (let close = open.pop(); close !== undefined; close = open.pop()) await close();
});
const kept = <Thing>(thing: Thing, close: (thing: Thing) => unknown): Thing => {
  open.push(() => close(thing));
  return thing;
};

describe('a primary that dies in mid-evening', () => {
  it('is followed by its standby: nothing that was answered is lost, owners keep their evenings, and no device is let go', async () => {
    const postgres = kept(await startPostgres(), (each) => each.stop());
    const standby = kept(await postgres.standby(), (each) => each.stop());
    const line = kept(await lossyLineTo(postgres.port), (each) => each.close());
    const url = (await postgres.database()).replace(`:${postgres.port}/`, `:${line.port}/`);
    const process = async (): Promise<{ house: House; store: PostgresStore }> => {
      const store = await openPostgresStore({ url, notesKey: Buffer.alloc(32, 7), houseKey });
      const cluster = {
        others: store.cluster,
        address: (port: number) => `127.0.0.1:${port}`,
        seenWithin: 0,
      };
      return { store, house: kept(await House.open({ store, cluster }), (each) => each.close()) };
    };
    const [one, other] = [await process(), await process()];
    const evenings = [await one.house.evening(), await other.house.evening()];

    // Only what is under way is looked after when its owner is gone.
    for (const { host } of evenings) await host.host({ type: 'Advance', from: 'gathering' });
    let goesOn = true;
    const titles = evenings.map(async ({ host }, which) => {
      const answered: string[] = [];
      for (let count = 0; goesOn; count += 1) {
        const title = `${which}, ${count}`;
        const said = await host.host({ type: 'MendTitle', title }, newId());
        if (said.ok) answered.push(title);
      }
      return answered;
    });
    await new Promise((done) => setTimeout(done, 500));
    await postgres.kill();
    const died = performance.now();
    // The copy answers before it may be written, as it does where an address is moved too early.
    line.leadTo(standby.port);
    await new Promise((done) => setTimeout(done, 2500));
    await standby.promote();
    const all = () => evenings.map(({ made }) => made.tasting);
    const readNow = async () =>
      await Promise.all(
        all().map(async (tasting, at) => {
          const { store } = at === 0 ? one : other;
          return store.sessions.readAnywhere(tasting);
        }),
      );
    const before = (await readNow()).map((log) => log.length);
    await expect
      .poll(async () => (await readNow()).every((log, at) => log.length > (before[at] ?? 0)), {
        timeout: 20_000,
      })
      .toBe(true);
    const level = performance.now() - died;
    goesOn = false;
    const answered = await Promise.all(titles);
    // The aim is ten seconds from the death; 2.5 of them this test itself lets pass.
    expect(level).toBeLessThan(10_000);
    const logs = await readNow();
    for (const [at, log] of logs.entries()) {
      const stand = log.flatMap((event) => (event.type === 'TitleMended' ? [event.title] : []));
      expect(answered[at]?.length).toBeGreaterThan(3);
      expect(stand.filter((title) => answered[at]?.includes(title))).toEqual(answered[at]);
      expect(new Set(stand).size).toBe(stand.length);
    }
    const devices = evenings.flatMap(({ host, noor, tomas }) => [host, noor, tomas]);
    expect(devices.map(({ closed }) => closed)).toEqual(devices.map(() => false));
    for (const { store } of [one, other])
      expect(store.cluster.figures()).toMatchObject({ owned: 1, taken: 0, lost: 0, fenced: 0 });
  }, 120_000);
});

describe('two machines whose clocks are 200 ms apart', () => {
  // What a machine that does much else adds to one measurement is no fault of the clocks.
  it('[F4] turn the devices of one evening within 30 ms of each other, before and after it changes its owner', {
    retry: 2,
    timeout: 120_000,
  }, async () => {
    const postgres = kept(await startPostgres(), (each) => each.stop());
    const database = await postgres.database();
    const places: Place[] = [];
    for (const clockOff of [100, -100]) {
      const place = kept<Place>({ folder: await temporaryFolder(), server: undefined }, async (each) => {
        await each.server?.kill();
        await forgetFolder(each.folder);
      });
      places.push(place);
      await startIn(place, { database, first: places[0] ?? place, clockOff });
    }
    const [one, other] = places.map(({ server }) => server);
    if (one === undefined || other === undefined) throw new Error('Two were started.');
    const line = kept(await lossyLineTo(one.port), (each) => each.close());
    const first = `http://127.0.0.1:${line.port}`;
    const house = new House({ url: one.origin, stop: async () => undefined });
    const made = await house.plan(undefined, one.houseKey);
    const at = (origin: string, role: 'host' | 'guest', key: string): Connection =>
      kept(connect(role, { origin, tasting: made.tasting, key }), (each) => each.close());
    const host = at(first, 'host', made.hostKey);
    const ask = (by: Connection, command: object) =>
      by.ask('host:ask', envelope(commandId(newId()), command as never));
    expect(await ask(host, { type: 'OpenDoors' })).toMatchObject({ ok: true });
    const keys = await Promise.all(
      Array.from({ length: 6 }, async (_, index) => {
        const key = aKey();
        await house.ask('POST', '/api/seats', { body: newSeat(made.code, { key, name: `Guest ${index}` }) });
        return key;
      }),
    );
    const spread = (moments: readonly number[]) => Math.max(...moments) - Math.min(...moments);
    const watched = (guest: Connection) => {
      let takesEffectAt = 0;
      guest.socket.on('stage', (view) => {
        if (view.status === 'under-way') takesEffectAt = view.takesEffectAt;
      });
      guest.socket.on('news', ([, moment]) => {
        takesEffectAt = moment;
      });
      return Object.assign(guest, { turn: () => takesEffectAt });
    };
    /** Ms of the steady clock at which each device turns to the newest cue. */
    const turnsOf = (guests: readonly ReturnType<typeof watched>[]): readonly number[] =>
      guests.map(({ turn, clock }) => performance.now() + (turn() - clock.now()));
    // Half of them at either machine, as any balancer may lead them.
    const guests = keys.map((key, index) =>
      watched(at(index % 2 === 0 ? first : other.origin, 'guest', key)),
    );
    const everybody = [host, ...guests];
    const goTo = async (cue: string): Promise<number> => {
      await until('all are there', () => everybody.every(({ link }) => link.peek().status === 'live'));
      // Each asks for the time eight times when it comes.
      await new Promise((done) => setTimeout(done, 2000));
      const before = guests.map(({ turn }) => turn());
      expect(await ask(host, { type: 'JumpTo', cue })).toMatchObject({ ok: true });
      await until('all have heard', () => guests.every(({ turn }, index) => turn() > (before[index] ?? 0)));
      return spread(turnsOf(guests));
    };
    expect(await goTo('one/first/look')).toBeLessThan(30);
    const hands = () => everybody.map(({ clock }) => clock.now() - performance.now());
    const before = hands();
    line.leadTo(other.port);
    await one.kill();
    await until('its devices have noticed', () => host.link.peek().status !== 'live');
    expect(await goTo('one/first/swirl')).toBeLessThan(30);
    // Nor has the time of the evening jumped by what lies between the two.
    for (const [index, after] of hands().entries())
      expect(Math.abs(after - (before[index] ?? 0))).toBeLessThan(30);
  });
});
