import { afterAll, describe, expect, it } from 'vitest';
import { cueId } from '../../core/ids.ts';
import { stageView } from '../../core/session/views/stage.ts';
import { epochMs } from '../../core/units.ts';
import { leadFor } from '../../server/live/lead.ts';
import { createProbing } from '../../shared/follower/clock-probing.ts';
import { createServerClock, type ServerClock } from '../../shared/follower/server-clock.ts';
import { createStageGate } from '../../shared/follower/stage-gate.ts';
import { Chances } from '../attack/chances.ts';
import { VirtualTime } from '../attack/virtual-time.ts';
import { EveningTold } from '../support/evening.ts';

/**
 * [F4] One moment on every screen, measured in virtual time through the follower's own clock, probing and gate and the
 * server's own lead. Delays are one way, in ms, drawn anew for each message.
 */
interface Network {
  readonly name: string;
  readonly up: (chances: Chances) => number;
  readonly down: (chances: Chances) => number;
  /** At p99, in ms. Half the asymmetry cannot be seen by any exchange of messages (RFC 5905, section 8). */
  readonly goal: number;
}

const positive = (ms: number): number => Math.max(1, ms);
const networks: readonly Network[] = [
  { name: 'LAN', up: (any) => any.between(0, 4), down: (any) => any.between(0, 4), goal: 5 },
  { name: 'Wi-Fi', up: (any) => any.logNormal(15, 0.6), down: (any) => any.logNormal(15, 0.6), goal: 8 },
  {
    name: 'Wi-Fi, long tail',
    up: (any) => any.logNormal(15, 1),
    down: (any) => any.logNormal(15, 1),
    goal: 8,
  },
  {
    name: '4G',
    up: (any) => positive(any.normal(90, 30)),
    down: (any) => positive(any.normal(70, 30)),
    goal: 10 + 12,
  },
];

/** The worst that two common quartz clocks part, as a fraction. */
const drift = 40e-6;

class Phone {
  readonly clock: ServerClock;
  readonly network: Network;
  readonly turned: number[] = [];
  readonly arrived: number[] = [];
  reach: number | null = null;
  readonly #time: VirtualTime;
  readonly #chances: Chances;
  readonly #gate;

  constructor(time: VirtualTime, chances: Chances, network: Network, serverNow: () => number) {
    this.#time = time;
    this.#chances = chances;
    this.network = network;
    const begun = chances.between(0, 1e6);
    const rate = 1 + chances.between(-drift, drift);
    // Browsers give time in steps of 0.1 ms and wake a timer late, never early.
    const steady = () => Math.floor((begun + time.now * rate) * 10) / 10;
    this.clock = createServerClock({ steady, wall: () => steady() + 600_000 });
    const after = (ms: number, run: () => void) => time.after(Math.ceil(ms / rate), run);
    this.#gate = createStageGate({ now: this.clock.now, after });
    this.#gate.stage.subscribe((view) => {
      if (view !== null) this.turned.push(time.now);
    });
    const probing = createProbing({
      probe: () =>
        this.clock.probe(async ({ reach }) => {
          await this.#travel(network.up(chances));
          this.reach = reach;
          const at = epochMs(serverNow());
          await this.#travel(network.down(chances));
          return { received: at, sent: at };
        }),
      cueRuns: () => true,
      onSilence: () => undefined,
      now: steady,
      after,
    });
    time.after(chances.between(0, 500), probing.start);
    // As the server says that it lives: the clock is probed no more often than it has to be.
    const hear = (): void => {
      probing.heard();
      time.after(1750, hear);
    };
    hear();
  }

  hears(view: ReturnType<typeof stageView>): void {
    this.#time.after(this.network.down(this.#chances), () => {
      this.arrived.push(this.#time.now);
      this.#gate.receive(view);
    });
  }

  #travel(ms: number): Promise<void> {
    return new Promise((resolve) => this.#time.after(ms, resolve));
  }
}

const aMinute = 60_000;

/** A room so many ms after everybody came in; how far from the intended moment each screen turned. */
async function evening(seed: number, clients: readonly Network[], later = aMinute) {
  const time = new VirtualTime();
  const chances = new Chances(seed);
  const serverNow = () => Math.floor(1_900_000_000_000 + time.now);
  const told = new EveningTold();
  told.goTo('ash/first/look');
  const phones = clients.map((network) => new Phone(time, chances, network, serverNow));
  for (const phone of phones) phone.hears(stageView(told.underWay, told.events.length));
  await time.pass(later + chances.between(0, 500));
  const tappedAt = time.now;
  told.lead = leadFor(phones.flatMap(({ reach }) => (reach === null ? [] : [reach])));
  told.now = serverNow();
  told.host({ type: 'JumpTo', cue: cueId('ash/first/nose') });
  const intended = told.underWay.enteredAt - 1_900_000_000_000;
  for (const phone of phones) phone.hears(stageView(told.underWay, told.events.length));
  await time.pass(3000);
  return phones.map((phone) => ({
    network: phone.network.name,
    offBy: Math.abs((phone.turned.at(-1) ?? Number.NaN) - intended),
    onArrival: (phone.arrived.at(-1) ?? Number.NaN) - tappedAt,
    lead: told.lead,
  }));
}

const p99 = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.ceil(0.99 * values.length) - 1] ?? Number.NaN;

type Turned = Awaited<ReturnType<typeof evening>>;

async function rooms(
  count: number,
  from: number,
  clients: readonly Network[],
  later?: number,
): Promise<Turned> {
  const all: Turned = [];
  for (let room = 0; room < count; room += 1) all.push(...(await evening(from + room, clients, later)));
  return all;
}

const figures: string[] = [];
const columns = (...cells: readonly (string | number)[]): string =>
  cells.map((cell, index) => (index === 0 ? String(cell).padEnd(32) : String(cell).padStart(14))).join('');

/** What was measured, beside what screens would do that turn as soon as they hear of it. */
function note(what: string, goal: number, turned: Turned): void {
  const [off, arrival] = [p99(turned.map((each) => each.offBy)), p99(turned.map((each) => each.onArrival))];
  const lead = Math.max(...turned.map((each) => each.lead));
  figures.push(columns(what, off.toFixed(1), goal, arrival.toFixed(1), lead));
}
afterAll(() => {
  const head = columns('F4, p99 in ms', 'measured', 'goal', 'on arrival', 'lead at most');
  console.log(['', head, ...figures].join('\n'));
});

describe('[F4] the moment at which screens turn, at p99', () => {
  it.each(networks)('$name: within $goal ms a minute after joining', async (network) => {
    const turned = await rooms(25, 1, Array(20).fill(network));
    note(network.name, network.goal, turned);
    expect(p99(turned.map((each) => each.offBy))).toBeLessThanOrEqual(network.goal);
    expect(p99(turned.map((each) => each.offBy))).toBeLessThan(p99(turned.map((each) => each.onArrival)));
  });

  it.each(networks.filter(({ name }) => ['LAN', 'Wi-Fi'].includes(name)))(
    '$name: within $goal ms a quarter of an hour later too, when probes are rare and quartz has drifted',
    async (network) => {
      const turned = await rooms(8, 1, Array(20).fill(network), 15 * aMinute);
      note(`${network.name}, later`, network.goal, turned);
      expect(p99(turned.map((each) => each.offBy))).toBeLessThanOrEqual(network.goal);
    },
  );

  it('LAN: within 5 ms half an hour later still, when the drift is known and probes are rarer', async () => {
    const [lan] = networks as readonly [Network];
    const turned = await rooms(4, 1, Array(20).fill(lan), 30 * aMinute);
    note('LAN, half an hour later', lan.goal, turned);
    expect(p99(turned.map((each) => each.offBy))).toBeLessThanOrEqual(lan.goal);
  });

  it('holds for each of them in one room with all the others', async () => {
    const mixed = networks.flatMap((network) => Array<Network>(5).fill(network));
    const turned = await rooms(50, 1000, mixed);
    for (const { name, goal } of networks) {
      const own = turned.filter((each) => each.network === name);
      note(`${name}, among others`, goal, own);
      expect(p99(own.map((each) => each.offBy)), name).toBeLessThanOrEqual(goal);
    }
  });
});
