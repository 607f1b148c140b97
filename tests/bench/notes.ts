import { startChild } from './child.ts';
import { syncDisk } from './disk.ts';
import { type Figure, median, quantile } from './figures.ts';

/** Every guest saves a note every 2 s, over real sockets; beside it, what saving together brings on the disk. */
export async function measureNotes(guests: number, rounds: number): Promise<Figure[]> {
  const [ours, crowd] = [startChild('our-server'), startChild('crowd')];
  try {
    const at = await ours.ask<{ port: number; houseKey: string }>('listen');
    await crowd.ask('joinOurs', { ...at, guests });
    await crowd.ask('toFirstGlass');
    await crowd.ask('notes', { rounds: 1 });
    const disk: number[] = [];
    const watching = setInterval(() => disk.push(syncDisk()), 100);
    const { waits } = await crowd
      .ask<{ waits: number[] }>('notes', { rounds })
      .finally(() => clearInterval(watching));
    const commits = await ours.ask<{ alone: number; together: number; ratio: number }>('commitRates', {
      rounds: Math.min(15, 2 * rounds + 1),
      together: 50,
    });
    const name = `${guests.toLocaleString('en')} guests, one each every 2 s`;
    return [
      { name: `note acknowledged, p99, ${name}`, value: quantile(waits, 0.99), unit: 'ms', goal: 25 },
      { name: 'note acknowledged, median', value: median(waits), unit: 'ms' },
      { name: 'one page to disk meanwhile, p99', value: quantile(disk, 0.99), unit: 'ms' },
      { name: 'notes on disk, one after the other', value: commits.alone, unit: 'per s' },
      { name: 'notes on disk, fifty together', value: commits.together, unit: 'per s' },
      {
        name: 'what saving together brings',
        value: commits.ratio,
        unit: 'x',
        goal: 15,
        atLeast: true,
      },
    ];
  } finally {
    await Promise.all([ours.stop(), crowd.stop()]);
  }
}
