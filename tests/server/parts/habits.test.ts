import { describe, expect, it } from 'vitest';
import { type HouseId, houseId, tastingId } from '../../../core/ids.ts';
import { noHabits } from '../../../core/running-order/forecast.ts';
import { epochMs } from '../../../core/units.ts';
import { habitsOfHouse, openingPace } from '../../../server/live/habits.ts';
import type { Store } from '../../../server/store/store.ts';
import { doorsAt, EveningTold } from '../../support/evening.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { planOf } from '../../support/plans.ts';

/** An evening in which everything took `factor` times its planned time. */
function lived(factor: number, finished = true): EveningTold {
  const evening = new EveningTold(planOf(3));
  while (evening.cue !== 'farewell') evening.wait((evening.idealMs / 1000) * factor).next();
  if (finished) evening.host({ type: 'Finish' });
  return evening;
}

async function houseWith(...evenings: readonly EveningTold[]) {
  return addTo(memoryStore(), evenings);
}

async function addTo(store: Store, evenings: readonly EveningTold[], house?: HouseId) {
  const before = (await store.tastings.list()).length;
  for (const [index, { events }] of evenings.entries()) {
    const number = before + index;
    const tasting = tastingId(`evening-${number}`);
    const createdAt = epochMs(doorsAt + number);
    const row = { tasting, code: `AAAA${number}`, plan: planOf(3), revision: 1, createdAt };
    await store.tastings.create({ ...row, ...(house && { house }) });
    await store.sessions.append({ tasting, expected: 0, events });
  }
  return store;
}

describe('habits of a house', () => {
  it('are those of nobody before an evening was finished', async () => {
    expect(await habitsOfHouse(await houseWith())).toEqual(noHabits);
    expect(await habitsOfHouse(await houseWith(lived(2, false)))).toEqual(noHabits);
  });

  it('learn from finished evenings, the latest counting most', async () => {
    const slow = (await habitsOfHouse(await houseWith(lived(1.4)))).writing.mean;
    expect(Math.exp(slow)).toBeGreaterThan(1.3);
    const slowThenUsual = (await habitsOfHouse(await houseWith(lived(1.4), lived(1)))).writing.mean;
    const usualThenSlow = (await habitsOfHouse(await houseWith(lived(1), lived(1.4)))).writing.mean;
    expect(usualThenSlow).toBeGreaterThan(slowThenUsual);
    expect(slowThenUsual).toBeGreaterThan(0);
  });

  it('remember five evenings and no more', async () => {
    const many = Array.from({ length: 5 }, () => lived(1));
    const without = await habitsOfHouse(await houseWith(...many));
    expect(await habitsOfHouse(await houseWith(lived(3), ...many))).toEqual(without);
  });
});

describe('habits beside another house', () => {
  it('are of no evening of that one, nor is the pace of its last one the first', async () => {
    const mill = houseId('mill');
    const ran = lived(3, false);
    ran.host({ type: 'ChoosePacing', pacing: { by: 'steps' } });
    ran.host({ type: 'Finish' });
    const store = await addTo(await houseWith(lived(1)), [ran], mill);
    expect(await habitsOfHouse(store)).toEqual(await habitsOfHouse(await houseWith(lived(1))));
    expect((await habitsOfHouse(store, mill)).writing.mean).toBeGreaterThan(0.5);
    expect(await habitsOfHouse(store, houseId('cellar'))).toEqual(noHabits);
    const byHand = planOf(3);
    expect(await openingPace(byHand, store)).toEqual({ by: 'host' });
    expect(await openingPace(byHand, store, mill)).toEqual({ by: 'steps' });
  });
});

describe('the pace with which an evening begins', () => {
  const ended = (by: 'host' | 'steps' | 'clock') => {
    const evening = new EveningTold(planOf(3));
    evening.host({ type: 'ChoosePacing', pacing: { by } });
    evening.host({ type: 'Finish' });
    return evening;
  };

  it('[P19] is the running steps of the last evening, unless the plan has another pace', async () => {
    const byHand = planOf(3);
    const byClock = planOf(3, { pacing: { by: 'clock' } });
    expect(await openingPace(byHand, await houseWith())).toEqual({ by: 'host' });
    expect(await openingPace(byHand, await houseWith(ended('steps')))).toEqual({ by: 'steps' });
    expect(await openingPace(byClock, await houseWith(ended('steps')))).toEqual({ by: 'clock' });
    expect(await openingPace(byHand, await houseWith(ended('steps'), ended('host')))).toEqual({ by: 'host' });
    expect(await openingPace(byHand, await houseWith(ended('clock')))).toEqual({ by: 'host' });
  });
});
