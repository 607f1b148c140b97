import type { Cue } from '../../core/running-order/cue.ts';
import { type PlanInput, planSchema } from '../../core/tasting.ts';
import { seededRandom } from '../support/seeded-random.ts';
import { cameTrue, until } from '../support/until.ts';
import { createTasting } from './ask-server.ts';
import { comeAndGo } from './come-and-go.ts';
import { habitsFor, mannerOf, nameFor } from './habits.ts';
import { Ledger } from './ledger.ts';
import { type RehearsalReport, reportOf } from './report.ts';
import { type Company, RollCall, type Room } from './room.ts';
import { careTrouble } from './running-order-check.ts';
import { StandInGuest } from './stand-in-guest.ts';
import { StandInHost } from './stand-in-host.ts';

export interface Rehearsal {
  readonly origin: string;
  readonly houseKey: string;
  readonly plan: PlanInput;
  readonly guests: number;
  readonly speed: number;
  readonly seed: number;
  /** The steps of a glass run by themselves [P19]. */
  readonly stepsRun?: boolean;
  /** Ms before something that does not come counts as missing; a busy machine needs its time. */
  readonly patience?: number;
  /** Plays a trick on the room before each cue: for tests that the rehearsal notices. */
  readonly trick?: (host: StandInHost, cue: Cue, ledger: Ledger) => Promise<unknown>;
}

/** How long phones may take to send the last words after the last cue, in ms. */
const lastWords = 15_000;

/** Plays a whole evening against a running server and reports what came of it. */
export async function rehearse(rehearsal: Rehearsal): Promise<RehearsalReport> {
  const begunAt = performance.now();
  const { origin, houseKey, speed, seed, patience = 30_000 } = rehearsal;
  const chance = seededRandom(seed);
  const plan = planSchema.parse(rehearsal.plan);
  const ledger = new Ledger(plan, seededRandom(seed + 1));
  const roll = new RollCall();
  const { tasting, code, hostKey } = await createTasting(origin, houseKey, plan);
  const room: Room = { origin, tasting, code, speed, patience, ledger, roll };
  const guests = habitsFor(rehearsal.guests, chance).map(
    (habit, index) =>
      new StandInGuest(
        room,
        { name: nameFor(index), habit, manner: mannerOf(index) },
        seededRandom(seed + 2 + index),
      ),
  );
  const company: Company = {
    get settled() {
      return guests.every((guest) => guest.settled);
    },
    get boards() {
      return guests.flatMap(({ present, follower }) => (present && follower ? [follower.board.peek()] : []));
    },
  };
  const host = new StandInHost(room, hostKey, company, chance);
  try {
    await host.openDoors();
    if (rehearsal.stepsRun === true) await host.mustDo({ type: 'ChoosePacing', pacing: { by: 'steps' } });
    roll.tap(host.view.cue);
    for (const trouble of careTrouble(host.cues)) ledger.break('C1', trouble);
    await seat(guests.filter(({ habit }) => habit !== 'late'));
    roll.gather();
    const cues = host.cues.length;
    await leadThrough(rehearsal, host, guests, ledger);
    await sayGoodbye(host, guests, ledger);
    if (roll.tooEarly > 0.05) ledger.break('F4', 'Screens changed before the moment set for everybody.');
    return reportOf(ledger, {
      guests: guests.length,
      cues,
      cuesSeenByAll: roll.seenByAll,
      nextTaps: host.nextTaps,
      arrivals: roll.arrivals,
      delays: roll.delays,
      reconnects: guests.reduce((sum, guest) => sum + guest.reconnects, 0),
      seed,
      speed,
      seconds: Math.round((performance.now() - begunAt) / 100) / 10,
    });
  } finally {
    for (const guest of guests) guest.close();
    host.close();
  }
}

/** A few at a time, as people come through a door. */
async function seat(guests: readonly StandInGuest[]): Promise<void> {
  for (let first = 0; first < guests.length; first += 10) {
    const some = guests.slice(first, first + 10);
    await Promise.all(some.map((guest) => guest.sitDown()));
    await until('everybody sees the stage', () => some.every((guest) => guest.present));
  }
}

async function leadThrough(
  { trick }: Rehearsal,
  host: StandInHost,
  guests: readonly StandInGuest[],
  ledger: Ledger,
): Promise<void> {
  const [gathering, ...cues] = host.cues;
  if (gathering === undefined) return;
  await host.conduct(gathering);
  for (const [index, cue] of cues.entries()) {
    await trick?.(host, cue, ledger);
    await host.next(cue);
    await comeAndGo(guests, cue.kind, index / cues.length);
    await host.conduct(cue);
  }
}

async function sayGoodbye(host: StandInHost, guests: readonly StandInGuest[], ledger: Ledger): Promise<void> {
  await cameTrue(() => guests.every((guest) => guest.settled), lastWords);
  await host.finish();
  const ended = () => guests.every(({ follower }) => follower?.stage.peek()?.status === 'finished');
  if (!(await cameTrue(ended, lastWords))) ledger.break('F2', 'Somebody never saw the end of the evening.');
  await cameTrue(() => guests.every((guest) => guest.settled), lastWords);
  for (const guest of guests) guest.close();
  await Promise.all(guests.map((guest) => guest.takeHome()));
}
