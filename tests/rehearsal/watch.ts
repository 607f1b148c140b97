import { existsSync } from 'node:fs';
import { planSchema } from '../../core/tasting.ts';
import { seededRandom } from '../support/seeded-random.ts';
import { spawnServer } from '../support/server.ts';
import type { RehearsalArguments } from './arguments.ts';
import { createTasting, ServerRefused } from './ask-server.ts';
import { comeAndGo } from './come-and-go.ts';
import { habitsFor, mannerOf, nameFor } from './habits.ts';
import { Ledger } from './ledger.ts';
import { rehearsedPlan } from './plan.ts';
import { RollCall } from './room.ts';
import { StandInGuest } from './stand-in-guest.ts';

const pages = new URL('../../dist/host/en/index.html', import.meta.url).pathname;

/** Keeps a server and its stand-in guests until Ctrl+C, for a person who conducts them in a browser. */
export async function watch({ guests, speed, seed }: RehearsalArguments, folder: string): Promise<number> {
  if (!existsSync(pages)) {
    console.error('The pages are not built yet; run `npm run build` first, then this again.');
    return 1;
  }
  const server = await spawnServer({ folder, seats: Math.max(200, guests) });
  const { origin, houseKey } = server;
  const plan = planSchema.parse(rehearsedPlan(guests));
  const { tasting, code, hostKey } = await createTasting(origin, houseKey, plan);
  const ledger = new Ledger(plan, seededRandom(seed + 1));
  const room = { origin, tasting, code, speed, patience: 0, ledger, roll: new RollCall() };
  const company = habitsFor(guests, seededRandom(seed)).map(
    (habit, index) =>
      new StandInGuest(
        room,
        { name: nameFor(index), habit, manner: mannerOf(index) },
        seededRandom(seed + 2 + index),
      ),
  );
  console.log(
    [
      `Open ${origin}/host#tasting=${tasting}&key=${hostKey} and open the doors: ${guests} stand-ins will come in.`,
      `Guests of your own join at ${origin}/j/${code}. Stop with Ctrl+C; nothing is kept. (--seed ${seed})`,
    ].join('\n'),
  );
  const stopped = new Promise<void>((resolve) => {
    process.once('SIGINT', resolve);
    process.once('SIGTERM', resolve);
  });
  const arriving = new AbortController();
  const [eyes] = company;
  const arrivals = comeIn(
    company.filter(({ habit }) => habit !== 'late'),
    arriving.signal,
  ).then(() => eyes && followTable(eyes, company));
  await stopped;
  arriving.abort();
  (await arrivals)?.();
  for (const guest of company) guest.close();
  await server.stop();
  return 0;
}

/** One guest who never leaves sees how far the evening is; the others come and go by that. */
function followTable(eyes: StandInGuest, company: readonly StandInGuest[]): (() => void) | undefined {
  return eyes.follower?.stage.subscribe((stage) => {
    if (stage?.status !== 'under-way') return;
    const { cue, of } = stage.progress;
    comeAndGo(company, stage.cue.kind, cue / of).catch((error: unknown) => {
      // Somebody who came late to closed doors tries again at the next cue.
      if (!(error instanceof ServerRefused || error instanceof TypeError)) throw error;
    });
  });
}

/** One by one, as soon as the doors are open. */
async function comeIn(company: readonly StandInGuest[], stop: AbortSignal): Promise<void> {
  for (const guest of company) {
    while (!stop.aborted) {
      const seated = await guest.sitDown().then(
        () => true,
        (error: unknown) => {
          // Until the doors are open, and while the host keeps them closed, people wait outside.
          if (error instanceof ServerRefused || error instanceof TypeError) return false;
          throw error;
        },
      );
      if (seated) break;
      await new Promise((resolve) => setTimeout(resolve, 1000));
    }
  }
}
