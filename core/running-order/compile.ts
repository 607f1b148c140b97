import type { DrinkWays, StepPlan } from '../drinks/drink.ts';
import { waysOf } from '../drinks/drink-ways.ts';
import { type CueId, cueId, type PourId } from '../ids.ts';
import type { Told } from '../panel/round-result.ts';
import { type Flight, flightsOf, type Plan, type Pour, type Trial } from '../tasting.ts';
import { type Seconds, seconds } from '../units.ts';
import type { Cue, Move, PlainCueKind, ResultCue, RoundCue } from './cue.ts';
import { guardedLength } from './cue-traits.ts';

/**
 * Compiles a plan to its running order. Pure and total: the same plan always gives the same cues with the same ids,
 * and a plan without pours gives an evening that is only greeted and said goodbye to.
 */
export function compile(plan: Plan): Cue[] {
  const flights = flightsOf(plan);
  const cues = [
    plain('gathering', 600, 0, true),
    plain('welcome', 180, 30, false),
    plain('ground-rules', 90, 30, true),
    ...(plan.practice ? practice() : []),
    ...flights.flatMap((flight) => flightCues(plan, flight, flight.index === flights.length - 1)),
    ...closingRounds(plan),
    plain('farewell', 180, 30, true),
  ];
  return cues.map((cue) => edited(plan, cue));
}

function plain(kind: PlainCueKind, ideal: number, floor: number, gate: boolean): Cue {
  return {
    id: cueId(kind),
    kind,
    ideal: seconds(ideal),
    floor: seconds(floor),
    stretch: gate ? 0 : 0.8,
    gate,
  };
}

/** The moves with plain water, before the first glass (common practice, no source). */
function practice(): Cue[] {
  const moves: readonly (readonly [Move, number])[] = [
    ['swirl', 15],
    ['look', 15],
    ['nose', 20],
    ['sip', 20],
    ['spit', 15],
  ];
  return moves.map(([step, ideal]) => ({
    id: cueId(`practice/${step}`),
    kind: 'practice',
    step,
    ideal: seconds(ideal),
    floor: seconds(10),
    stretch: step === 'spit' ? 0 : 0.8,
    gate: false,
  }));
}

function flightCues(plan: Plan, flight: Flight, last: boolean): Cue[] {
  const pours = flight.pours.map((pour) => pour.id);
  const name = `flight-${flight.index + 1}`;
  const trials = plan.trials.filter((trial) => trial.flight === flight.index);
  // With own orders the pours of a flight are in different hands at the same time: talk waits for its end.
  const eachFlight = plan.discussion === 'each-flight' || (plan.discussion === 'each-pour' && plan.ownOrders);
  const ranked = isRanked(plan, 'each-flight', pours);
  const talked = plan.discussion !== 'at-the-end';
  return [
    ...flight.pours.flatMap((pour) => pourCues(plan, flight, pour)),
    ...trials.map(trialCue),
    ...(ranked ? [ranking(`${name}/ranking`, pours)] : []),
    ...(eachFlight ? [discussion(plan, name, [...pours, ...trials.map((trial) => trial.id)])] : []),
    ...(talked ? result(name, pours, [ranked ? 'order' : null, plan.liking ? 'liking' : null]) : []),
    ...(talked ? reveal(plan, name, 'flight', pours) : []),
    ...(last ? [] : [flightBreak(plan, name)]),
  ];
}

const isRanked = (plan: Plan, when: 'each-flight' | 'at-the-end', pours: readonly PourId[]): boolean =>
  plan.ranking === when && pours.length > 1;

/**
 * After what the names of these pours are told: after their talk, or only once they were put in order, for what one knows
 * is what one tastes, unless the host chose the names first.
 */
function namedAfter(plan: Plan, pours: readonly PourId[]): 'pour' | 'flight' | 'evening' {
  const talk =
    plan.discussion === 'each-pour' && !plan.ownOrders
      ? 'pour'
      : plan.discussion === 'at-the-end'
        ? 'evening'
        : 'flight';
  if (plan.rankNamed) return talk;
  const flight = flightsOf(plan).find((each) => each.pours.some(({ id }) => pours.includes(id)));
  const inFlight = (flight?.pours ?? []).map(({ id }) => id);
  const all = plan.pours.map(({ id }) => id);
  if (isRanked(plan, 'at-the-end', all)) return 'evening';
  return talk === 'pour' && isRanked(plan, 'each-flight', inFlight) ? 'flight' : talk;
}

function pourCues(plan: Plan, flight: Flight, pour: Pour): Cue[] {
  const ways = waysOf[pour.drink];
  const drops = plan.drops === 'after-nose' && ways.dropsOfWater > 0;
  const steps = ways
    .passes(plan.level, plan.closingPass, drops)
    .map((each) => stepCue(plan, flight, pour.id, each));
  const talks = plan.discussion === 'each-pour' && !plan.ownOrders;
  return [
    ...steps,
    waterCue(flight, pour.id, ways),
    ...(talks ? [discussion(plan, pour.id, [pour.id]), ...reveal(plan, pour.id, 'pour', [pour.id])] : []),
  ];
}

function stepCue(plan: Plan, flight: Flight, pour: PourId, planned: StepPlan): Cue {
  const { pass, step, sense } = planned;
  const ideal = Math.max(planned.floor, Math.round(planned.ideal * paceOf(plan, planned)));
  return {
    id: cueId([pour, pass, step, ...(sense === undefined ? [] : [sense])].join('/')),
    kind: 'step',
    flight: flight.index,
    pour,
    pass,
    step,
    ...(sense === undefined ? {} : { sense }),
    ideal: seconds(ideal),
    floor: planned.floor,
    stretch: planned.stretch,
    gate: false,
  };
}

function paceOf(plan: Plan, { step }: StepPlan): number {
  switch (step) {
    case 'look':
    case 'nose':
    case 'sip':
      return plan.pace[step];
    case 'write':
    case 'review':
    case 'reflect':
      return plan.pace.write;
    case 'swirl':
    case 'spit':
      return 1;
  }
}

function waterCue(flight: Flight, after: PourId, ways: DrinkWays): Cue {
  const id = cueId(`${after}/water`);
  return { id, kind: 'water', flight: flight.index, after, ...ways.water, stretch: 0.2, gate: false };
}

function flightBreak(plan: Plan, name: string): Cue {
  const ideal = seconds(Math.round(plan.breakMinutes * 60));
  const floor = seconds(5 * 60);
  return { id: cueId(`${name}/break`), kind: 'break', called: false, ideal, floor, stretch: 0.5, gate: true };
}

function discussion(plan: Plan, name: string, pours: readonly PourId[]): RoundCue {
  const talk = Math.round(minutesOfTalk(pours.length) * 60 * plan.pace.discussion);
  const floor = seconds(60 * Math.min(3, pours.length));
  return round('discussion', cueId(`${name}/discussion`), pours, seconds(Math.max(talk, floor)), floor, 0.9);
}

/** The names of blind pours never come before everybody's own words. */
function reveal(
  plan: Plan,
  name: string,
  after: ReturnType<typeof namedAfter>,
  pours: readonly PourId[],
): RoundCue[] {
  if (!plan.blind || pours.length === 0 || namedAfter(plan, pours) !== after) return [];
  return [round('reveal', cueId(`${name}/reveal`), pours, seconds(60), seconds(20), 0.5)];
}

/**
 * What the room made of its glasses stands after their talk, so that nobody speaks after the majority (common practice, no
 * source), and before their names.
 */
function result(name: string, pours: readonly PourId[], tells: readonly (Told | null)[]): ResultCue[] {
  const told = tells.filter((each) => each !== null);
  if (told.length === 0 || pours.length === 0) return [];
  const length = { ideal: seconds(120), floor: seconds(30), stretch: 0.5 };
  return [{ id: cueId(`${name}/result`), kind: 'result', pours, tells: told, ...length, gate: true }];
}

/** Four minutes for the first pour and two for each other (common practice, no source). */
const minutesOfTalk = (pours: number): number => 4 + 2 * (pours - 1);

function trialCue({ id, a, b }: Trial): Cue {
  const length = { ideal: seconds(240), floor: seconds(120), stretch: 0.3 };
  return { id: cueId(`${id}/odd-one-out`), kind: 'odd-one-out', trial: id, a, b, ...length, gate: false };
}

function ranking(id: string, pours: readonly PourId[]): RoundCue {
  return round('ranking', cueId(id), pours, seconds(90), seconds(30), 0.6, false);
}

function closingRounds(plan: Plan): Cue[] {
  const pours = plan.pours.map((pour) => pour.id);
  if (pours.length === 0) return [];
  const trials = plan.trials.map((trial) => trial.id);
  const ranked = isRanked(plan, 'at-the-end', pours);
  const talks = plan.discussion === 'at-the-end';
  const orders =
    ranked ||
    (talks &&
      flightsOf(plan).some(({ pours: own }) =>
        isRanked(
          plan,
          'each-flight',
          own.map(({ id }) => id),
        ),
      ));
  return [
    ...(ranked ? [ranking('evening/ranking', pours)] : []),
    ...(talks ? [discussion(plan, 'evening', [...pours, ...trials])] : []),
    ...result('evening', pours, [orders ? 'order' : null, talks && plan.liking ? 'liking' : null]),
    ...reveal(plan, 'evening', 'evening', pours),
  ];
}

function round(
  kind: RoundCue['kind'],
  id: CueId,
  pours: readonly PourId[],
  ideal: Seconds,
  floor: Seconds,
  stretch: number,
  gate = true,
): RoundCue {
  return { id, kind, pours, ideal, floor, stretch, gate };
}

/** The host's own seconds and words. Seconds below the floor lower it only where care does not forbid it [C2]. */
function edited(plan: Plan, cue: Cue): Cue {
  const edit = plan.cueEdits[cue.id];
  if (edit === undefined) return cue;
  const ideal = guardedLength(cue, seconds(edit.seconds ?? cue.ideal));
  const floor = seconds(Math.min(cue.floor, ideal));
  return { ...cue, ideal, floor, ...(edit.say ? { say: edit.say } : {}) };
}
