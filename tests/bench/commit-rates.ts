import { commandId, pourId, seatId, tastingId } from '../../core/ids.ts';
import { planSchema } from '../../core/tasting.ts';
import { epochMs } from '../../core/units.ts';
import type { Store } from '../../server/store/store.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { median } from './figures.ts';

/**
 * Notes on disk in a second when each waits for the one before, and when so many arrive together; in turns, closes the
 * store. The ratio is the median of the rounds'.
 */
export async function commitRates(
  store: Store,
  rounds: number,
  together: number,
): Promise<{ readonly alone: number; readonly together: number; readonly ratio: number }> {
  const tasting = tastingId('bench-tasting-commits');
  await store.tastings.create({
    tasting,
    code: 'BENCHX',
    plan: planSchema.parse(demoEvening),
    revision: 1,
    createdAt: epochMs(1_800_000_000_000),
  });
  let saved = 0;
  const save = (): Promise<void> => {
    saved += 1;
    const value = `pears and hay, look ${saved}`;
    const savedAt = epochMs(1_800_000_000_000 + saved);
    return store.notebooks.save({
      tasting,
      seat: seatId(`bench-seat-${saved % 1000}`),
      entry: { pour: pourId('kV7nQ2xd'), field: 'nose', value, revision: saved, savedAt },
      answered: {
        command: commandId(`bench-${saved}`),
        answer: { ok: true, revision: saved, value, savedAt },
      },
    });
  };
  const rates = { alone: [] as number[], together: [] as number[], ratio: [] as number[] };
  for (let round = 0; round < rounds; round += 1) {
    const alone = await rate(50, async () => {
      for (let each = 0; each < 50; each += 1) await save();
    });
    const grouped = await rate(together * 4, async () => {
      for (let group = 0; group < 4; group += 1) await Promise.all(Array.from({ length: together }, save));
    });
    rates.alone.push(alone);
    rates.together.push(grouped);
    rates.ratio.push(grouped / alone);
  }
  await store.close();
  return {
    alone: median(rates.alone),
    together: median(rates.together),
    ratio: median(rates.ratio),
  };
}

/** Events on disk in a second when so many evenings go on at once, each waiting for its own last one; closes the store. */
export async function appendRate(store: Store, evenings: number, seconds: number): Promise<number> {
  const plan = planSchema.parse(demoEvening);
  const names = Array.from({ length: evenings }, (_, index) => tastingId(`bench-append-${index}`));
  await Promise.all(
    names.map((tasting, index) => {
      const code = `A${index.toString(36).toUpperCase().padStart(5, '0')}`;
      return store.tastings.create({ tasting, code, plan, revision: 1, createdAt: epochMs(index) });
    }),
  );
  const until = performance.now() + seconds * 1000;
  let appended = 0;
  await Promise.all(
    names.map(async (tasting) => {
      for (let expected = 0; performance.now() < until; expected += 1) {
        const answered = {
          command: commandId(`bench-${expected}`),
          answer: { ok: true, version: expected + 1 } as const,
        };
        await store.sessions.append({ tasting, expected, events: [{ type: 'ReminderCleared' }], answered });
        appended += 1;
      }
    }),
  );
  await store.close();
  return appended / seconds;
}

async function rate(count: number, work: () => Promise<void>): Promise<number> {
  const began = performance.now();
  await work();
  return (count * 1000) / (performance.now() - began);
}
