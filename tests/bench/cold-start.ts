import { startChild } from './child.ts';
import { type Figure, median, quantile } from './figures.ts';

/** A server that starts over a full store, in turns with one that starts over an empty one. */
export async function measureColdStart(sessions: number, events: number, rounds: number): Promise<Figure[]> {
  const [full, empty] = [startChild('our-server'), startChild('our-server')];
  try {
    await full.ask('fill', { sessions, events });
    const { waits } = await full.ask<{ waits: number[] }>('firstUses');
    const times = { full: [] as number[], empty: [] as number[] };
    for (let round = 0; round <= rounds; round += 1) {
      const starts = {
        empty: await empty.ask<{ ms: number }>('restart'),
        full: await full.ask<{ ms: number }>('restart'),
      };
      // The first of each also compiles.
      if (round === 0) continue;
      times.empty.push(starts.empty.ms);
      times.full.push(starts.full.ms);
    }
    const name = `${sessions.toLocaleString('en')} sessions of ${events} events`;
    return [
      { name: `from opening the store until it listens, ${name}`, value: median(times.full), unit: 'ms' },
      {
        name: 'the same beside an empty store',
        value: median(times.full.map((ms, index) => ms / (times.empty[index] ?? Number.NaN))),
        unit: 'x',
      },
      { name: 'a session loaded on first use, p99', value: quantile(waits, 0.99), unit: 'ms', goal: 10 },
      { name: 'a session loaded on first use, median', value: median(waits), unit: 'ms' },
    ];
  } finally {
    await Promise.all([full.stop(), empty.stop()]);
  }
}
