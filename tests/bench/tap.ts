import { startChild, type Usage } from './child.ts';
import { type Figure, median } from './figures.ts';

export interface TapRun {
  readonly guests: number;
  readonly oursMs: number;
  readonly floorMs: number;
  readonly ratio: number;
  readonly cpuRatio: number;
  readonly bytesPerGuest: number;
  readonly memoryRatio: number;
}

/** Of pairs; an odd number has a middle one. */
const usualPairs = 11;

/**
 * One host tap, the whole way until the last guest has it, beside the floor: the same bytes to as many sockets, in
 * pairs that follow each other, so that whatever else the machine does falls on both.
 */
export async function measureTap(guests: number, pairs = usualPairs): Promise<TapRun> {
  const [ours, floor, crowd] = [
    startChild('./our-server.ts'),
    startChild('./floor-server.ts'),
    startChild('./crowd.ts'),
  ];
  try {
    const at = await ours.ask<{ port: number; houseKey: string }>('listen');
    const beside = await floor.ask<{ port: number }>('listen');
    const empty = { ours: await ours.ask<Usage>('usage'), floor: await floor.ask<Usage>('usage') };
    await crowd.ask('joinOurs', { ...at, guests });
    await crowd.ask('joinFloor', { ...beside, guests });
    await crowd.ask('toStart');
    await floor.ask('show', await crowd.ask<object>('view'));
    const full = { ours: await ours.ask<Usage>('usage'), floor: await floor.ask<Usage>('usage') };
    const times = { ours: [] as number[], floor: [] as number[] };
    for (let pair = 0; pair < pairs + 2; pair += 1) {
      const plain = await crowd.ask<{ ms: number; bytes: number }>('tapFloor', { guests });
      const whole = await crowd.ask<{ ms: number; bytes: number }>('tapOurs', { guests });
      // The floor shows what ours has just shown, so that both send the same number of bytes.
      await floor.ask('show', await crowd.ask<object>('view'));
      // The first pairs warm both up.
      if (pair < 2) continue;
      times.ours.push(whole.ms);
      times.floor.push(plain.ms);
    }
    const after = { ours: await ours.ask<Usage>('usage'), floor: await floor.ask<Usage>('usage') };
    const perGuest = (which: 'ours' | 'floor') => (full[which].rss - empty[which].rss) / guests;
    const cpu = (which: 'ours' | 'floor') => after[which].cpuMs - full[which].cpuMs;
    const ratios = times.ours.map((ms, index) => ms / (times.floor[index] ?? Number.NaN));
    return {
      guests,
      oursMs: median(times.ours),
      floorMs: median(times.floor),
      ratio: median(ratios),
      cpuRatio: cpu('ours') / cpu('floor'),
      bytesPerGuest: perGuest('ours'),
      memoryRatio: perGuest('ours') / perGuest('floor'),
    };
  } finally {
    await Promise.all([ours.stop(), floor.stop(), crowd.stop()]);
  }
}

export function tapFigures(run: TapRun): Figure[] {
  const goal = run.guests >= 1000 ? 1.2 : run.guests >= 200 ? 1.3 : undefined;
  const gated = goal === undefined ? {} : { goal };
  const name = `${run.guests.toLocaleString('en')} guests`;
  return [
    { name: `tap to last guest beside the floor, ${name}`, value: run.ratio, unit: 'x', ...gated },
    {
      name: `server time per delivery beside the floor, ${name}`,
      value: run.cpuRatio,
      unit: 'x',
      ...(goal === undefined ? {} : { goal: 1.5 }),
    },
    {
      name: `memory per guest, ${name}`,
      value: run.bytesPerGuest / 1024,
      unit: 'KiB',
      ...(run.guests >= 5000 ? { goal: 20 } : {}),
    },
  ];
}
