import { commandId, seatId, tastingId } from '../../core/ids.ts';
import type { Command } from '../../core/session/command.ts';
import { decide } from '../../core/session/decide.ts';
import type { SessionEvent } from '../../core/session/event.ts';
import { evolveAll } from '../../core/session/evolve.ts';
import { cueNow, type Session, unopened } from '../../core/session/state.ts';
import { type Plan, planSchema } from '../../core/tasting.ts';
import { durationMs, epochMs } from '../../core/units.ts';
import { realChance } from '../../server/chance.ts';
import { steadyClock } from '../../server/clock.ts';
import { Conductors } from '../../server/live/conductors.ts';
import { createLiveServer } from '../../server/live/gateway.ts';
import { stderrLog } from '../../server/log.ts';
import type { Store } from '../../server/store/store.ts';
import { demoEvening } from '../../shared/demo/evening.ts';

const nameOf = (index: number) => tastingId(`bench-tasting-${String(index).padStart(6, '0')}`);

/** Fills a store with sessions that have been played, each the same evening of so many events, and closes it. */
export async function fillStore(
  store: Store,
  { sessions, events }: { readonly sessions: number; readonly events: number },
): Promise<{ readonly events: number }> {
  const plan = planSchema.parse(demoEvening);
  const played = eveningOf(plan, events);
  for (let from = 0; from < sessions; from += 50) {
    const batch = Array.from({ length: Math.min(50, sessions - from) }, (_, index) => from + index);
    await Promise.all(
      batch.map(async (index) => {
        const code = index.toString(36).toUpperCase().padStart(6, '0');
        await store.tastings.create({
          tasting: nameOf(index),
          code,
          plan,
          revision: 1,
          createdAt: epochMs(1_800_000_000_000 + index),
        });
        const answered = {
          command: commandId(`bench-${index}`),
          answer: { ok: true, version: played.length },
        } as const;
        await store.sessions.append({ tasting: nameOf(index), expected: 0, events: played, answered });
      }),
    );
  }
  await store.close();
  return { events: played.length };
}

/** The ms that each stored session takes when it is first asked for; closes the store. */
export async function firstUses(store: Store): Promise<{ readonly waits: number[] }> {
  const conductors = new Conductors({
    store,
    clock: steadyClock(),
    io: createLiveServer([]),
    log: stderrLog('warn'),
    graces: { host: durationMs(30_000), seat: durationMs(15_000) },
    chance: realChance,
    seatLimit: 200,
    sweepEvery: durationMs(300_000),
  });
  const waits: number[] = [];
  for (const { tasting } of await store.tastings.list()) {
    const began = performance.now();
    conductors.of(tasting);
    waits.push(performance.now() - began);
    // Devices come one by one, and the loop turns between them.
    await new Promise((done) => setImmediate(done));
  }
  await conductors.stop();
  await store.close();
  return { waits };
}

/** Twelve guests who signal, and a host who goes on, and goes back to the welcome after each evening. */
function eveningOf(plan: Plan, wanted: number): SessionEvent[] {
  let session = unopened as Session;
  let now = 1_800_000_000_000;
  const log: SessionEvent[] = [];
  const seats = Array.from({ length: 12 }, (_, index) => seatId(`bench-seat-${index}`));
  const carryOut = (command: Command): boolean => {
    now += 1000;
    const moment = {
      now: epochMs(now),
      lead: durationMs(120),
      hostPresent: true,
      present: new Set(seats),
      overtimeWaits: false,
    };
    const decision = decide(session, command, moment);
    if (!decision.ok) return false;
    log.push(...decision.events);
    session = evolveAll(session, decision.events);
    return true;
  };
  carryOut({ by: 'host', ask: { type: 'OpenDoors', plan } });
  for (const seat of seats) {
    carryOut({
      by: 'newcomer',
      ask: { type: 'TakeSeat', seat, name: seat, leftHanded: false, remote: false },
    });
  }
  while (log.length < wanted && session.status === 'under-way') {
    const cue = cueNow(session).id;
    for (const seat of seats.slice(0, 6)) {
      carryOut({ by: 'guest', seat, ask: { type: 'GiveSignal', signal: 'ready', cue } });
    }
    if (!carryOut({ by: 'host', ask: { type: 'Advance', from: cue } })) {
      const first = session.cues[1]?.id ?? cue;
      if (!carryOut({ by: 'host', ask: { type: 'JumpTo', cue: first } })) break;
    }
  }
  return log.slice(0, wanted);
}
