import { type Memory, startChild } from './child.ts';
import { syncDisk } from './disk.ts';
import { type Figure, median } from './figures.ts';

const servers = ['floor', 'bare', 'ours'] as const;
type Which = (typeof servers)[number];

export interface TapRun {
  readonly guests: number;
  readonly oursMs: number;
  readonly floorMs: number;
  readonly ratio: number;
  /** What the disk took for one page meanwhile. */
  readonly diskMs: number;
  /** Of a bare socket.io server, which says how much of ours is its transport. */
  readonly bareRatio: number;
  /**
   * What all threads work from the tap until the last guest has it. What goes on without a tap is not in it, beats and signs
   * of life, which the floor has none of: it stands by itself below.
   */
  readonly cpuRatio: number;
  readonly bareCpuRatio: number;
  /** Of one processor, while nobody taps; only of many guests. */
  readonly restShare: number;
  readonly bytesPerGuest: number;
  readonly memoryRatio: number;
  /** Length of the frame that reached the last guest, round by round; the others show what ours has shown before. */
  readonly bytes: Readonly<Record<Which, readonly number[]>>;
}

/** Of rounds; an odd number has a middle one. */
const usualRounds = 15;
const many = 1000;
/** Longer than a beat takes to come round. */
const restMs = 10_500;

const taps: Record<Which, string> = { floor: 'tapFloor', bare: 'tapBare', ours: 'tapOurs' };

/**
 * One host tap, the whole way until the last guest has it, beside the floor: the same bytes to as many sockets, in
 * rounds that follow each other, so that whatever else the machine does falls on all.
 */
export async function measureTap(guests: number, rounds = usualRounds): Promise<TapRun> {
  const children = {
    ours: startChild('our-server'),
    floor: startChild('floor-server'),
    bare: startChild('bare-server'),
  };
  const crowd = startChild('crowd');
  const memories = async (): Promise<Record<Which, Memory>> => ({
    ours: await children.ours.ask<Memory>('memory'),
    floor: await children.floor.ask<Memory>('memory'),
    bare: await children.bare.ask<Memory>('memory'),
  });
  const worked = (which: Which): Promise<number> => children[which].ask<number>('worked');
  /** The others show what ours has just shown, so that all send the same number of bytes. */
  const showAlike = async (): Promise<void> => {
    const view = await crowd.ask<readonly unknown[]>('view');
    await children.floor.ask('show', view);
    await children.bare.ask('show', view);
  };
  try {
    const at = {
      ours: await children.ours.ask<{ port: number; houseKey: string }>('listen'),
      floor: await children.floor.ask<{ port: number }>('listen'),
      bare: await children.bare.ask<{ port: number }>('listen'),
    };
    const few = Math.min(guests, 100);
    await crowd.ask('warmOurs', { ...at.ours, guests: few });
    await crowd.ask('warmFloor', { ...at.floor, guests: few });
    await crowd.ask('warmBare', { ...at.bare, guests: few });
    const empty = await memories();
    await crowd.ask('joinOurs', { ...at.ours, guests });
    await crowd.ask('joinFloor', { ...at.floor, guests });
    await crowd.ask('joinBare', { ...at.bare, guests });
    await crowd.ask('toStart');
    await showAlike();
    const full = await memories();
    const times: Record<Which, number[]> = { ours: [], floor: [], bare: [] };
    /** Ms of all rounds. */
    const work: Record<Which, number> = { ours: 0, floor: 0, bare: 0 };
    const bytes: Record<Which, number[]> = { ours: [], floor: [], bare: [] };
    const disk: number[] = [];
    for (let round = 0; round < rounds + 2; round += 1) {
      for (const which of servers) {
        const before = await worked(which);
        const { ms, bytes: length } = await crowd.ask<{ ms: number; bytes: number }>(taps[which], { guests });
        const after = await worked(which);
        bytes[which].push(length);
        // The first rounds warm all of them up.
        if (round < 2) continue;
        times[which].push(ms);
        work[which] += after - before;
      }
      disk.push(syncDisk());
      await showAlike();
    }
    const rest = guests < many ? 0 : restMs;
    const before = await worked('ours');
    await new Promise((done) => setTimeout(done, rest));
    const rested = (await worked('ours')) - before;
    const perGuest = (which: Which) => (full[which].rss - empty[which].rss) / guests;
    const beside = (which: Which) =>
      median(times[which].map((ms, index) => ms / (times.floor[index] ?? Number.NaN)));
    return {
      guests,
      oursMs: median(times.ours),
      floorMs: median(times.floor),
      ratio: beside('ours'),
      diskMs: median(disk),
      bareRatio: beside('bare'),
      cpuRatio: work.ours / work.floor,
      bareCpuRatio: work.bare / work.floor,
      restShare: rested / rest,
      bytesPerGuest: perGuest('ours'),
      memoryRatio: perGuest('ours') / perGuest('floor'),
      bytes,
    };
  } finally {
    await Promise.all([crowd, ...Object.values(children)].map((child) => child.stop()));
  }
}

export function tapFigures(run: TapRun): Figure[] {
  // No more than a loop that does nothing but send; with few guests one look at the disk is more than the broadcast.
  const goal = run.guests >= many ? 1 : run.guests >= 200 ? 1.2 : 1.5;
  const name = `${run.guests.toLocaleString('en')} guests`;
  return [
    { name: `tap to the last guest, ${name}`, value: run.oursMs, unit: 'ms' },
    { name: `the same beside the floor, ${name}`, value: run.ratio, unit: 'x', goal },
    { name: `one page to disk meanwhile, ${name}`, value: run.diskMs, unit: 'ms' },
    { name: `bare socket.io beside the floor, ${name}`, value: run.bareRatio, unit: 'x' },
    {
      name: `server time per delivery beside the floor, ${name}`,
      value: run.cpuRatio,
      unit: 'x',
      goal,
    },
    { name: `bare socket.io: server time beside the floor, ${name}`, value: run.bareCpuRatio, unit: 'x' },
    ...(run.guests < many
      ? []
      : [
          {
            name: `memory of the whole server per guest, ${name}`,
            value: run.bytesPerGuest / 1024,
            unit: 'KiB',
            ...(run.guests >= 5000 ? { goal: 16 } : {}),
          },
          {
            name: `server at rest, beats and signs of life, ${name}`,
            value: run.restShare * 100,
            unit: '% of one processor',
          },
        ]),
  ];
}
