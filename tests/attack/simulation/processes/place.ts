import type { TastingId } from '../../../../core/ids.ts';
import { durationMs } from '../../../../core/units.ts';
import { Keyring } from '../../../../server/access/keys.ts';
import { type Clock, steadyClock } from '../../../../server/clock.ts';
import { Conductors } from '../../../../server/live/conductors.ts';
import { openGateway } from '../../../../server/live/gateway.ts';
import { Mouth } from '../../../../server/live/mouth.ts';
import type { Log } from '../../../../server/log.ts';
import type { Connections } from '../../../../server/store/postgres/connections.ts';
import { type PostgresStore, postgresStoreOn } from '../../../../server/store/postgres/postgres.ts';
import type { VirtualTime } from '../../virtual-time.ts';
import { hostKey } from '../house.ts';
import { Switchboard } from '../switchboard.ts';
import { Machine, type MachineClocks } from './machine.ts';
import type { DatabaseLine, SimulatedPostgres } from './postgres.ts';

export interface Life {
  readonly machine: Machine;
  readonly board: Switchboard;
  readonly store: PostgresStore;
  readonly conductors: Conductors;
  /** Under which other processes know it. */
  readonly address: string;
}

/** Faults that a test plants on purpose in every process. */
export interface PlantedInProcess {
  /** What is acknowledged and published is not committed yet. */
  readonly hasty?: boolean;
  /** It never notices that its lease has run out. */
  readonly trusting?: boolean;
}

/** One of three machines: a process of the server with everything but its lines, which dies and begins anew. */
export class Place {
  readonly line: DatabaseLine = { cut: false };
  readonly name: string;
  readonly logged: string[] = [];
  readonly #time: VirtualTime;
  readonly #database: SimulatedPostgres;
  readonly #clocks: MachineClocks;
  readonly #planted: PlantedInProcess;
  #life: Life | undefined;
  #lives = 0;

  constructor(
    name: string,
    time: VirtualTime,
    database: SimulatedPostgres,
    clocks: MachineClocks,
    planted: PlantedInProcess,
  ) {
    this.name = name;
    this.#time = time;
    this.#database = database;
    this.#clocks = clocks;
    this.#planted = planted;
  }

  get life(): Life | undefined {
    return this.#life;
  }

  /** It takes part when it has its first lease; a database that does not answer is asked again. */
  start(): void {
    if (this.#life !== undefined) return;
    const machine = new Machine(this.#time, this.#clocks);
    this.#lives += 1;
    const address = `${this.name}:${this.#lives}`;
    const connections = this.#database.connections(machine, this.line);
    const opened = postgresStoreOn(this.#planted.trusting ? trusting(connections, machine) : connections, {
      url: '',
      notesKey: Buffer.alloc(32, 7),
      houseKey: hostKey,
      time: machine,
    });
    const store = this.#planted.hasty ? hasty(opened) : opened;
    const { cluster } = store;
    const clock = steadyClock({ steady: machine.steady, after: machine.after, wall: () => cluster.wall() });
    const board = new Switchboard(machine);
    const mouth = new Mouth(cluster, () => board.disconnectSockets());
    board.say = (run) => mouth.say(run);
    board.does = (run) => machine.does(run);
    const conductors = this.#conductors(store, clock, board);
    this.#life = { machine, board, store, conductors, address };
    const begin = (): void => {
      opened
        .begin()
        .then(() =>
          cluster.join(address, {
            lost: (tasting) => conductors.lost(tasting),
            taken: (tasting) => void conductors.of(tasting),
            expired: () => board.disconnectSockets(),
            conducted: (tasting) => conductors.conducts(tasting),
          }),
        )
        .catch(() => machine.after(200, begin));
    };
    begin();
  }

  /** As SIGKILL would: nothing more is done or said; what it has sent to the database may still be done there. */
  kill(): void {
    const life = this.#life;
    if (life === undefined) return;
    this.#life = undefined;
    life.machine.on = false;
    for (const end of [...life.board.connected]) end.dies();
  }

  /** What whoever comes here is led to, as the front door does it. */
  async leads(
    tasting: TastingId,
    at: (address: string) => Life | undefined,
  ): Promise<Switchboard | undefined> {
    const life = this.#life;
    if (!life?.machine.runs) return undefined;
    const { claim } = life.store.cluster;
    const where = await claim(tasting);
    if (where.at === 'here') return life.board;
    if (where.at === 'nowhere') return undefined;
    const owner = at(where.address);
    if (owner === undefined)
      return (await claim(tasting, where.process)).at === 'here' ? life.board : undefined;
    // One that stands still takes the connection, and says nothing.
    if (!owner.machine.runs) return undefined;
    return (await owner.store.cluster.claim(tasting)).at === 'here' ? owner.board : undefined;
  }

  #conductors(store: PostgresStore, clock: Clock, board: Switchboard): Conductors {
    const log = this.#log();
    const { io } = board;
    const graces = { host: durationMs(30_000), seat: durationMs(15_000) };
    const conductors = new Conductors({
      ...{ store, clock, io, log, graces, seatLimit: 200 },
      chance: { key: () => 'the-same-draw' },
      sweepEvery: durationMs(300_000),
      watchedBefore: durationMs(5000),
    });
    openGateway({
      ...{ io, conductors, clock, log },
      lines: { heldBy: () => undefined },
      justLeft: store.cluster.justLeft,
      keyring: new Keyring(store, clock, hostKey),
      metrics: { asked: () => undefined },
    });
    return conductors;
  }

  /** Only what no fault from outside explains. */
  #log(): Log {
    const keep = (why: object, what?: string): void => {
      const { reason } = why as { readonly reason?: string };
      // One that has lost its evening says so by a failure of the store.
      if (reason !== 'StoreFailure' && (what === 'a conductor failed' || what === 'an alarm failed'))
        this.logged.push(`${this.name}: ${what}: ${reason}`);
    };
    return { error: keep, warn: keep, info: () => undefined, debug: () => undefined };
  }
}

/** Has its lease renewed before the database has said so, and also when it never does. */
const trusting = (connections: Connections, { wall }: Machine): Connections => ({
  ...connections,
  askApart: async (text, values) => {
    void connections.askApart(text, values).catch(() => undefined);
    return [{ now: wall() }] as never;
  },
});

const hasty = (store: PostgresStore & { begin(): Promise<void> }): typeof store => ({
  ...store,
  sessions: {
    ...store.sessions,
    append: async (entry) => {
      void store.sessions.append(entry).catch(() => undefined);
    },
  },
});
