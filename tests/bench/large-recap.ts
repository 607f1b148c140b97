import { compile } from '../../core/running-order/compile.ts';
import { type PlanInput, planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { startChild } from './child.ts';
import { newId, openEvening, takeSeats } from './evening.ts';
import { type Figure, median } from './figures.ts';
import { inTurns, RawSocket } from './raw-socket.ts';

const words = ['pears', 'hay', 'smoke', 'salt', 'toffee', 'orange peel', 'oak', 'honey', 'tar', 'apples'];

/** A host looks back on a full house, everybody of which has written about, liked and ranked every glass. */
export async function measureRecap(guests: number, glasses: number, looks: number): Promise<Figure[]> {
  const plan = planSchema.parse(fullHouse(glasses));
  const ours = startChild('our-server');
  try {
    const { port, houseKey } = await ours.ask<{ port: number; houseKey: string }>('listen');
    const evening = await openEvening(port, houseKey, plan);
    const auths = await takeSeats(port, evening, guests);
    for (const { id } of compile(plan)) {
      await evening.host.ask('host:ask', { id: newId(), ask: { type: 'JumpTo', cue: id } });
    }
    const pours = plan.pours.map(({ id }) => id);
    await inTurns([...auths.entries()], 20, async ([seat, auth]) => {
      const guest = await RawSocket.open(port, auth);
      for (const [index, pour] of pours.entries()) {
        const text = words.filter((_, word) => (seat * 7 + index * 3 + word) % 4 === 0).join(', ');
        const values = [
          ['nose', text],
          ['palate', `${text} and a long finish`],
          ['liking', 1 + ((seat + index * 2) % 9)],
          ['place', 1 + ((seat + index) % glasses)],
        ] as const;
        for (const [field, value] of values) {
          const saved = (await guest.ask('note:save', { id: newId(), pour, field, value, base: 0 })) as {
            ok: boolean;
            code?: string;
          };
          if (!saved.ok) throw new Error(`A note was refused: ${saved.code}`);
        }
      }
      const consents = {
        page: { sharing: 'named', parts: ['nose', 'palate', 'verdict'] },
        order: 'counts',
        liking: 'counts',
      };
      await guest.ask('note:consent', { id: newId(), pours, consents });
      guest.close();
    });
    await evening.host.ask('host:ask', { id: newId(), ask: { type: 'Finish' } });
    const times: number[] = [];
    for (let look = 0; look < looks; look += 1) {
      const began = performance.now();
      const answer = await fetch(`http://127.0.0.1:${port}/api/tastings/${evening.tasting}/recap`, {
        headers: { authorization: `Bearer ${houseKey}` },
      });
      const body = await answer.text();
      if (!answer.ok || !body.includes('"liking"')) throw new Error(`No recap: ${answer.status}`);
      times.push(performance.now() - began);
    }
    const name = `recap of ${guests} guests and ${glasses} pours`;
    return [
      { name: `${name}, the first look`, value: (times[0] ?? Number.NaN) / 1000, unit: 's', goal: 1 },
      { name: `${name}, later looks`, value: median(times.slice(1)) / 1000, unit: 's', goal: 1 },
    ];
  } finally {
    await ours.stop();
  }
}

function fullHouse(glasses: number): PlanInput {
  const pours = Array.from({ length: glasses }, (_, index) => ({
    id: `glass-${index + 1}`,
    drink: 'spirit' as const,
    name: `Cellar cask ${index + 1}`,
    abv: 43 + index / 2,
  }));
  const { codes: _codes, flightSizes: _sizes, ...evening } = demoEvening;
  return { ...evening, blind: false, liking: true, ranking: 'at-the-end', pours } as PlanInput;
}
