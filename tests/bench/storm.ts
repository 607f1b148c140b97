import { startChild } from './child.ts';
import { type Figure, median } from './figures.ts';

/**
 * All guests come back at once after a restart, in pairs with a bare socket.io server that sends the same greeting to
 * as many.
 */
export async function measureStorm(guests: number, pairs: number): Promise<Figure[]> {
  const [ours, bare, crowd] = [startChild('our-server'), startChild('bare-server'), startChild('crowd')];
  try {
    const at = await ours.ask<{ port: number; houseKey: string }>('listen');
    const beside = await bare.ask<{ port: number }>('listen');
    await crowd.ask('joinOurs', { ...at, guests });
    await crowd.ask('toFirstGlass');
    await bare.ask('greetWith', await crowd.ask<object>('greeting', at));
    const times = { ours: [] as number[], bare: [] as number[] };
    for (let pair = 0; pair <= pairs; pair += 1) {
      const plain = await crowd.ask<{ ms: number }>('stormBare', beside);
      await ours.ask('restart');
      const whole = await crowd.ask<{ ms: number }>('stormOurs', at);
      if (pair === 0) continue;
      times.ours.push(whole.ms);
      times.bare.push(plain.ms);
    }
    const name = `${guests.toLocaleString('en')} guests come back at once`;
    return [
      { name: `${name}, until the last is level`, value: median(times.ours), unit: 'ms' },
      {
        name: 'the same beside bare socket.io with the same greeting',
        value: median(times.ours.map((ms, index) => ms / (times.bare[index] ?? Number.NaN))),
        unit: 'x',
        goal: 1.2,
      },
    ];
  } finally {
    await Promise.all([ours.stop(), bare.stop(), crowd.stop()]);
  }
}
