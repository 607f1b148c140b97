import { compile } from '../../core/running-order/compile.ts';
import type { Cue } from '../../core/running-order/cue.ts';
import { type Work, workOf } from '../../core/running-order/cue-traits.ts';
import { forecastAhead, leftOf } from '../../core/running-order/fit-ahead.ts';
import { type Entered, learn, livedSoFar, noHabits } from '../../core/running-order/forecast.ts';
import { normalsFrom } from '../../core/running-order/rehearsal.ts';
import { readySeatsNeeded } from '../../core/running-order/room-share.ts';
import { endingOf, type Tempo, tempoOfPlan } from '../../core/running-order/tempo.ts';
import { type Pacing, type Plan, type PlanInput, planSchema } from '../../core/tasting.ts';
import { epochMs } from '../../core/units.ts';
import { seededRandom } from '../support/seeded-random.ts';

/** Of how many evenings the range held the end, by who set the pace, how many sat there and when it was asked for. */
export interface CalibrationCase {
  readonly pacing: string;
  readonly seats: number;
  readonly at: 'start' | 'third' | 'two-thirds';
  /** 0 to 1; the range is made to hold 0.8. */
  readonly covered: number;
}

const moments = { start: 0, third: 1 / 3, 'two-thirds': 2 / 3 } as const;
const pacings: Readonly<Record<string, Pacing>> = {
  host: { by: 'host' },
  steps: { by: 'steps' },
  clock: { by: 'clock' },
  'room-0.5': { by: 'room', share: 0.5 },
  'room-0.75': { by: 'room', share: 0.75 },
  'room-1': { by: 'room', share: 1 },
};
const sizes = [4, 8, 16, 40] as const;
export const evenings = 2000;

/**
 * What the forecast does not assume: tails of Student's t instead of the normal's, one habit of the evening beside those
 * of the kinds of work, guests who keep their own pace all evening, one of them slow in every second room, and an
 * interruption of some minutes in every fourth evening, which stops the clock too. All own estimates, no source.
 */
const world = {
  evening: 0.1,
  work: 0.18,
  cue: 0.28,
  freedom: 5,
  guest: 0.2,
  guestCue: 0.15,
  slow: 0.25,
  slowRooms: 0.5,
  interrupted: 0.25,
  interruption: { from: 120, to: 360 },
} as const;

interface Chance {
  readonly uniform: () => number;
  readonly normal: () => number;
}

/** Student's t with spread 1. */
function heavy({ normal }: Chance): number {
  const { freedom } = world;
  let squares = 0;
  for (let each = 0; each < freedom; each += 1) squares += normal() ** 2;
  return (normal() / Math.sqrt(squares / freedom)) * Math.sqrt((freedom - 2) / freedom);
}

/** Seconds that each cue of one evening took. */
function played(cues: readonly Cue[], tempo: Tempo, chance: Chance): number[] {
  const evening = world.evening * heavy(chance);
  const habits = new Map<Work, number>();
  const slow = chance.uniform() < world.slowRooms ? 0 : -1;
  const guests = Array.from(
    { length: tempo.guests },
    (_, index) => world.guest * chance.normal() + (index === slow ? world.slow : 0),
  );
  const { from, to } = world.interruption;
  const interrupted = chance.uniform() < world.interrupted ? Math.floor(chance.uniform() * cues.length) : -1;
  const lost = from + (to - from) * chance.uniform();
  return cues.map((cue, index) => {
    const work = workOf(cue);
    const habit = habits.get(work) ?? world.work * heavy(chance);
    habits.set(work, habit);
    const own =
      cue.ideal * Math.exp(Math.max(-1.6, Math.min(1.6, evening + habit + world.cue * heavy(chance))));
    const more = index === interrupted ? lost : 0;
    switch (endingOf(cue, cues[index + 1], tempo.pacing)) {
      case 'clock':
        return cue.ideal + more;
      case 'host':
        return own + more;
      case 'room': {
        if (tempo.pacing.by !== 'room') return own + more;
        const ready = guests.map((guest) => guest + world.guestCue * chance.normal()).sort((a, b) => a - b);
        const last = ready[readySeatsNeeded(tempo.pacing.share, guests.length) - 1] ?? 0;
        return Math.max(cue.floor, own * Math.exp(last)) + more;
      }
      default:
        throw new Error('A cue ends by the host, the clock or the room.');
    }
  });
}

/** Whether the range that a host was shown on entering the cue held the end. */
function holds(cues: readonly Cue[], took: readonly number[], at: number, tempo: Tempo): boolean {
  const timeline: Entered[] = [];
  let now = 0;
  cues.slice(0, at + 1).forEach((cue, index) => {
    const before = cues[index - 1];
    const by = before === undefined ? 'host' : endingOf(before, cue, tempo.pacing);
    timeline.push({ cue: cue.id, at: epochMs(now * 1000), planned: cue.ideal, by });
    if (index < at) now += took[index] ?? 0;
  });
  const current = cues[at];
  const { end } = forecastAhead({
    from: epochMs(now * 1000),
    current: current === undefined ? null : leftOf(current, current.ideal * 1000, 0),
    remaining: cues.slice(at + 1),
    habits: learn(noHabits, livedSoFar(cues, timeline, tempo)),
    tempo,
  });
  const ended = took.reduce((sum, each) => sum + each, 0) * 1000;
  return ended >= end.early && ended <= end.late;
}

/** The cue that stands at this share of the planned time. */
function cueAt(cues: readonly Cue[], share: number): number {
  const whole = cues.reduce((sum, { ideal }) => sum + ideal, 0);
  let passed = 0;
  return cues.findIndex(({ ideal }) => {
    const here = passed >= share * whole;
    passed += ideal;
    return here;
  });
}

/** Plays `runs` evenings of one pacing and size, and counts. */
export function calibrated(plan: Plan, pacing: string, runs: number, seed: number): CalibrationCase[] {
  const tempo = tempoOfPlan(plan);
  const cues = compile(plan);
  const uniform = seededRandom(seed);
  const chance: Chance = { uniform, normal: normalsFrom(uniform) };
  const counts = { start: 0, third: 0, 'two-thirds': 0 };
  const places = (Object.keys(counts) as (keyof typeof counts)[]).map(
    (name) => [name, cueAt(cues, moments[name])] as const,
  );
  for (let run = 0; run < runs; run += 1) {
    const took = played(cues, tempo, chance);
    for (const [name, at] of places) if (holds(cues, took, at, tempo)) counts[name] += 1;
  }
  return places.map(([at]) => ({ pacing, seats: tempo.guests, at, covered: counts[at] / runs }));
}

/** The table of every pacing and size. @param evening what is served */
export function calibrate(evening: PlanInput, runs = evenings, seed = 1): CalibrationCase[] {
  return Object.entries(pacings).flatMap(([name, pacing], index) =>
    sizes.flatMap((seats) =>
      calibrated(
        planSchema.parse({ ...evening, pacing, guests: seats, remoteGuests: 0 }),
        name,
        runs,
        seed + 1000 * index + seats,
      ),
    ),
  );
}
