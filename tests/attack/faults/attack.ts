import { House } from '../../server/support/house.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { until } from '../../support/until.ts';
import { type FaultyGuest, seatGuest } from './guest.ts';
import { type FaultProxy, openFaultProxy } from './proxy.ts';

export interface Fault {
  readonly name: string;
  /** Makes the weather bad. */
  readonly strike: (proxy: FaultProxy) => void;
  /** How long it stays, in ms; the room goes on meanwhile. */
  readonly lasts: number;
  /** Makes it good again. */
  readonly heal: (proxy: FaultProxy, guests: readonly FaultyGuest[]) => void;
}

export const faultsFor = (lasts: { readonly blackhole: number; readonly slow: number }): readonly Fault[] => [
  {
    name: 'blackhole',
    strike: (proxy) => proxy.weather({ kind: 'blackhole' }),
    lasts: lasts.blackhole,
    heal: (proxy) => proxy.weather({ kind: 'fair' }),
  },
  {
    name: '2 s each way',
    strike: (proxy) => proxy.weather({ kind: 'slow', ms: 2000 }),
    lasts: lasts.slow,
    heal: (proxy) => proxy.weather({ kind: 'fair' }),
  },
  { name: 'reset', strike: () => undefined, lasts: 1000, heal: (proxy) => proxy.reset() },
  {
    // A phone that slept: its sockets look open and are not. It is level again from when it wakes.
    name: 'half-open until woken',
    strike: (proxy) => proxy.leaveHalfOpen(),
    lasts: 1000,
    heal: (_proxy, guests) => {
      for (const { follower } of guests) follower.wake();
    },
  },
];

export interface Recovery {
  readonly name: string;
  /** Ms from healing until each guest was level, in order. */
  readonly times: readonly number[];
  readonly never: number;
}

const patience = 30_000;
const cues = ['one/first/look', 'one/first/nose'] as const;

/** One fault at one table: notes are written and the room moves on while it lasts. */
export async function rideOut(fault: Fault, guests: number): Promise<Recovery> {
  const house = await House.open({ store: memoryStore() });
  const made = await house.plan();
  const host = await house.host(made);
  await host.host({ type: 'OpenDoors' });
  await host.host({ type: 'JumpTo', cue: cues[0] });
  const proxy = await openFaultProxy(Number(new URL(house.url).port));
  const seated = await Promise.all(
    Array.from({ length: guests }, () => seatGuest(house, made, proxy.origin)),
  );
  try {
    await until('everybody follows', () => seated.every(({ level }) => level(0)), patience);
    fault.strike(proxy);
    const over = performance.now() + fault.lasts;
    let version = 0;
    for (let turn = 1; performance.now() < over || turn < 3; turn += 1) {
      const moved = await host.host({ type: 'JumpTo', cue: cues[turn % 2] });
      if (moved.ok) version = moved.version;
      for (const { write } of seated) write(`Pears, and in turn ${turn} some smoke`);
      await new Promise((resolve) => setTimeout(resolve, Math.min(1000, fault.lasts / 3)));
    }
    fault.heal(proxy, seated);
    const healed = performance.now();
    // What comes right after must arrive as well: who was level before is not done.
    const moved = await host.host({ type: 'GiveTime', seconds: 30 });
    if (moved.ok) version = moved.version;
    const times = await Promise.all(
      seated.map(({ level }) =>
        until('the guest is level', () => level(version) && performance.now() - healed, patience).catch(
          () => Number.POSITIVE_INFINITY,
        ),
      ),
    );
    const reached = times.filter(Number.isFinite).sort((a, b) => a - b);
    return { name: fault.name, times: reached, never: times.length - reached.length };
  } finally {
    for (const { follower } of seated) follower.close();
    await proxy.close();
    await house.close();
  }
}

/** The time within which the given share of guests was level; infinite when too few ever were. */
export function within({ times, never }: Recovery, share: number): number {
  const all = [...times, ...Array.from({ length: never }, () => Number.POSITIVE_INFINITY)];
  return all[Math.max(0, Math.ceil(share * all.length) - 1)] ?? Number.POSITIVE_INFINITY;
}
