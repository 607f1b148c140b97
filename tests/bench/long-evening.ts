import { planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { type Memory, startChild } from './child.ts';
import { newId, openEvening, takeSeats } from './evening.ts';
import { type Figure, median } from './figures.ts';
import { inTurns, RawSocket } from './raw-socket.ts';

/** Of half an hour: cues that are entered, and how often each guest loses the line and writes. */
const halfHour = { cues: 16, reconnects: 2, saves: 4 };

/**
 * Four hours of an evening in fast motion: what a room does in half an hour, eight times, each guest with lost lines. Live
 * memory after each; what an evening remembers may grow by a little, what a lost line leaves behind may not.
 */
export async function measureLongEvening(guests: number, halfHours: number): Promise<Figure[]> {
  const ours = startChild('our-server');
  try {
    const { port, houseKey } = await ours.ask<{ port: number; houseKey: string }>('listen');
    const plan = planSchema.parse(demoEvening);
    const evening = await openEvening(port, houseKey, plan);
    const auths = await takeSeats(port, evening, guests);
    let sockets: RawSocket[] = [];
    const come = async () => {
      for (const each of sockets) each.close();
      sockets = [];
      await inTurns(auths, 20, async (auth) => {
        sockets.push(await RawSocket.open(port, auth));
      });
    };
    const pour = plan.pours[0]?.id;
    let at = 0;
    const live: number[] = [];
    for (let part = 0; part < halfHours; part += 1) {
      for (let cue = 0; cue < halfHour.cues; cue += 1) {
        at = 4 + ((at + 1) % (evening.cues.length - 6));
        const ask = { type: 'JumpTo', cue: evening.cues[at] };
        await evening.host.ask('host:ask', { id: newId(), ask });
        if (cue % (halfHour.cues / halfHour.reconnects) === 0) await come();
        if (cue % (halfHour.cues / halfHour.saves) !== 1) continue;
        const value = `pears and hay, ${part} ${cue}`;
        const save = () => ({ id: newId(), pour, field: 'nose', value, base: 1_000_000 });
        await Promise.all(sockets.map((each) => each.ask('note:save', save())));
      }
      // What waits for a timer is let go first.
      await new Promise((done) => setTimeout(done, 1500));
      const heaps: number[] = [];
      for (let look = 0; look < 3; look += 1) heaps.push((await ours.ask<Memory>('memory')).heap);
      live.push(median(heaps));
    }
    const [first = Number.NaN] = live;
    const last = live.at(-1) ?? Number.NaN;
    const name = `${guests} guests with ${halfHour.reconnects * halfHours} reconnects each`;
    return [
      { name: `live memory after half an hour, ${name}`, value: first / 2 ** 20, unit: 'MiB' },
      { name: 'live memory after four hours beside that', value: last / first, unit: 'x', goal: 1.05 },
    ];
  } finally {
    await ours.stop();
  }
}
