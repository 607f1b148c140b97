import type { PourId } from '../ids.ts';
import { compile } from '../running-order/compile.ts';
import { type Cue, pourOf } from '../running-order/cue.ts';
import { pourNumbering } from '../running-order/glass-numbers.ts';
import { flightsOf, type Plan, type Pour } from '../tasting.ts';
import type { Arrangement } from './event.ts';
import { servedInOwnOrders } from './serving.ts';
import type { UnderWay } from './state.ts';

/** Glasses that are still to come: not dropped, never in front of the room, and with every cue ahead of it [P24]. */
export function glassesToCome({ plan, cues, at, reached, dropped }: UnderWay): PourId[] {
  const behind = new Set(cues.slice(0, at + 1).flatMap((cue) => pourOf(cue) ?? []));
  return plan.pours
    .map(({ id }) => id)
    .filter((id) => !behind.has(id) && !reached.includes(id) && !dropped.includes(id));
}

/** The evening with the glasses to come in this order. Flights keep their sizes; dropped pours keep their places. */
export function reordered(session: UnderWay, order: readonly PourId[]): Arrangement {
  const { plan } = session;
  const coming = new Set(order);
  const next = [...order];
  const ids = plan.pours.map(({ id }) => (coming.has(id) ? (next.shift() ?? id) : id));
  const pours = ids.flatMap((id) => plan.pours.find((pour) => pour.id === id) ?? []);
  return arrangementOf(session, { ...plan, pours, flightSizes: sizesOf(plan) });
}

/**
 * The evening with one more pour, behind all others: at the end of the last flight, or in a flight of its own where that is
 * behind the room, or where each seat's order has been drawn and printed.
 */
export function withPour(session: UnderWay, pour: Pour, code: string | null): Arrangement {
  const { plan } = session;
  const sizes = sizesOf(plan);
  const own = servedInOwnOrders(plan);
  const joins = !own && !lastFlightIsOver(session);
  const last = sizes.length - 1;
  return arrangementOf(session, {
    ...plan,
    pours: [...plan.pours, pour],
    flightSizes: joins ? sizes.map((size, index) => (index === last ? size + 1 : size)) : [...sizes, 1],
    codes: code === null ? plan.codes : { ...plan.codes, [pour.id]: code },
    servingOrders: own ? [...plan.servingOrders, { rows: [[pour.id]] }] : plan.servingOrders,
  });
}

const sizesOf = (plan: Plan): number[] => flightsOf(plan).map(({ pours }) => pours.length);

/** Nothing of its glasses is ahead: what follows the flight has begun. */
function lastFlightIsOver({ plan, cues, at }: UnderWay): boolean {
  const last = new Set((flightsOf(plan).at(-1)?.pours ?? []).map(({ id }) => id));
  const end = cues.findLastIndex((cue) => {
    const pour = pourOf(cue);
    return pour !== undefined && last.has(pour);
  });
  return at > end;
}

function arrangementOf(session: UnderWay, plan: Plan): Arrangement {
  const trials = trialsMoved(session, plan);
  const flights = new Map(trials.map(({ trial, flight }) => [trial, flight]));
  const moved = plan.trials.map((trial) => ({ ...trial, flight: flights.get(trial.id) ?? trial.flight }));
  return {
    order: plan.pours.map(({ id }) => id),
    numbers: pourNumbering({ numbers: session.plan.numbers, pours: numberedAsBefore(session.plan, plan) }),
    flightSizes: plan.flightSizes,
    servingOrders: plan.servingOrders,
    trials,
    cues: cuesAfter(session, { ...plan, trials: moved }),
  };
}

/** Those of before in their order, what is new behind them. */
const numberedAsBefore = (before: Plan, after: Plan): Pour[] => [
  ...before.pours,
  ...after.pours.filter(({ id }) => !before.pours.some((pour) => pour.id === id)),
];

/** An odd-one-out still to come waits for the flight in which its drinks have been tasted. */
function trialsMoved({ plan: before, reached }: UnderWay, plan: Plan): Arrangement['trials'] {
  const flights = flightsOf(plan);
  const flightOf = (id: PourId): number =>
    flights.findIndex(({ pours }) => pours.some((pour) => pour.id === id));
  return before.trials.flatMap(({ id, flight, a, b }) => {
    const due = Math.max(flight, flightOf(a), flightOf(b));
    return due === flight || reached.includes(id) ? [] : [{ trial: id, flight: due }];
  });
}

/**
 * What the room has behind it and where it stands, as it was; then what the plan now comes to. Lengths and words that were set
 * since the plan was compiled stay, and so do the breaks that the host called.
 */
function cuesAfter({ plan, cues, at }: UnderWay, next: Plan): Cue[] {
  const behind = cues.slice(0, at + 1);
  const gone = new Set(behind.map(({ id }) => id));
  const known = new Map(cues.map((cue) => [cue.id, cue]));
  const planned = new Map(compile(plan).map((cue) => [cue.id, cue]));
  const coming = compile(next)
    .filter(({ id }) => !gone.has(id))
    .map((cue): Cue => {
      const now = known.get(cue.id);
      const was = planned.get(cue.id);
      if (now === undefined) return cue;
      const kept = was === undefined || now.ideal !== was.ideal || now.floor !== was.floor;
      return {
        ...cue,
        ...(kept ? { ideal: now.ideal, floor: now.floor } : {}),
        ...(now.say === undefined ? {} : { say: now.say }),
      };
    });
  return [...behind, ...withCalledBreaks(cues.slice(at + 1), coming)];
}

/** A break that the host called stands before the cue that it stood before; the room may have gone back past it. */
function withCalledBreaks(before: readonly Cue[], coming: readonly Cue[]): Cue[] {
  const breaks = new Map<string, Cue[]>();
  let waiting: Cue[] = [];
  for (const cue of before) {
    if (cue.kind === 'break' && cue.called) waiting.push(cue);
    else if (waiting.length > 0) {
      breaks.set(cue.id, waiting);
      waiting = [];
    }
  }
  return coming.flatMap((cue) => [...(breaks.get(cue.id) ?? []), cue]);
}
