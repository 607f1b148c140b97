import { type CueId, cueId, type PourId, type SeatId } from '../ids.ts';
import { oddGlass, type TriangleOrder } from '../panel/presentation-orders.ts';
import { type Cue, pourOf } from '../running-order/cue.ts';
import { glassNumbers } from '../running-order/glass-numbers.ts';
import { flightsOf, type Plan, type Trial } from '../tasting.ts';
import { cueNow, type Evening, type Seat, type UnderWay } from './state.ts';

/**
 * Who has which pour in front of them. In a common order everybody has the pour that the running order names; with own
 * orders the running order names a place in the flight, and each seat's row says which pour stands there.
 */

/** Own orders hold only while the pours are blind and the drawn rows cover the flights as they are. */
export function servedInOwnOrders(plan: Plan): boolean {
  if (!plan.blind || !plan.ownOrders) return false;
  return flightsOf(plan).every(({ index, pours }) => {
    const rows = plan.servingOrders[index]?.rows ?? [];
    const ids = pours.map((pour) => pour.id);
    return (
      rows.length > 0 && rows.every((row) => row.length === ids.length && ids.every((id) => row.includes(id)))
    );
  });
}

export interface Place {
  /** The number on the mat, from 1: a dropped pour leaves a gap [P23]. With own orders the place itself. */
  readonly position: number;
  /** From 0. */
  readonly flight: number;
  /** The pour that the running order names for this place. */
  readonly named: PourId;
}

/** In order of tasting, dropped pours left out. */
export function placesOf({ plan, dropped }: Pick<Evening, 'plan' | 'dropped'>): Place[] {
  const numbers = glassNumbers(plan);
  return flightsOf(plan)
    .flatMap(({ index, pours }) => pours.map((pour) => ({ flight: index, named: pour.id })))
    .filter(({ named }) => !dropped.includes(named))
    .map((place) => ({ position: numbers.get(place.named) ?? 0, ...place }));
}

/** The number on this seat's mat at which each pour of `servedTo` stands, in the same order [P23]. */
export function numbersServed(evening: Pick<Evening, 'plan' | 'dropped'>, seat: Pick<Seat, 'row'>): number[] {
  if (!servedInOwnOrders(evening.plan)) return placesOf(evening).map(({ position }) => position);
  const laid = servedTo({ plan: evening.plan, dropped: [] }, seat);
  return servedTo(evening, seat).map((pour) => laid.indexOf(pour) + 1);
}

/** The pours of a seat, place by place. */
export function servedTo(evening: Pick<Evening, 'plan' | 'dropped'>, seat: Pick<Seat, 'row'>): PourId[] {
  const places = placesOf(evening);
  if (!servedInOwnOrders(evening.plan)) return places.map((place) => place.named);
  return flightsOf(evening.plan).flatMap(({ index }) => {
    const rows = evening.plan.servingOrders[index]?.rows ?? [];
    return (rows[seat.row % rows.length] ?? []).filter((pour) => !evening.dropped.includes(pour));
  });
}

/** The pour that this seat has where the running order names `named`; of an odd-one-out, itself. */
export function ownPourAt(
  evening: Pick<Evening, 'plan' | 'dropped'>,
  seat: Pick<Seat, 'row'>,
  named: PourId,
): PourId {
  const place = placesOf(evening).findIndex((each) => each.named === named);
  return servedTo(evening, seat)[place] ?? named;
}

/**
 * What guests' devices call the current cue. A cue's own id begins with the pour that the plan has in that place, which
 * with own orders is another one in each hand: there the place stands for it [Q4, F6].
 */
export function cueForGuests({ plan }: Pick<Evening, 'plan'>, cue: Cue): CueId {
  const named = pourOf(cue);
  if (named === undefined || !servedInOwnOrders(plan)) return cue.id;
  const place = plan.pours.findIndex(({ id }) => id === named) + 1;
  return cueId(`place-${place}${cue.id.slice(named.length)}`);
}

/** By what guests know of them: with own orders not in the order of the plan, which nobody is to read off a list [Q4, F6]. */
export function inTellingOrder(plan: Plan, ids: readonly PourId[]): PourId[] {
  if (!servedInOwnOrders(plan)) return [...ids];
  const code = (id: PourId): string => plan.codes[id] ?? '';
  return ids.toSorted((one, other) => code(one).localeCompare(code(other), 'en') || (one < other ? -1 : 1));
}

/** Position of the glass in hand during the current cue, from 1. */
export function positionNow(session: UnderWay): number | undefined {
  const named = pourOf(cueNow(session));
  return placesOf(session).find((place) => place.named === named)?.position;
}

/** What has been in front of this seat so far, so what its notebook may hold. */
export function reachedBy(evening: Evening, id: SeatId): readonly PourId[] {
  const seat = evening.seats[id];
  if (seat === undefined || !servedInOwnOrders(evening.plan)) return evening.reached;
  const served = servedTo(evening, seat);
  const pours = placesOf(evening).flatMap((place, index) =>
    evening.reached.includes(place.named) ? (served[index] ?? []) : [],
  );
  return [
    ...pours,
    ...evening.plan.trials.map((trial) => trial.id).filter((trial) => evening.reached.includes(trial)),
  ];
}

/**
 * What has been in front of everybody, pours and odd-one-outs: with own orders a pour stands before some seat in each
 * place, so that all have met it only once the last place of its flight has been reached [F6].
 */
export function metByAll({
  plan,
  dropped,
  reached,
}: Pick<Evening, 'plan' | 'dropped' | 'reached'>): PourId[] {
  if (!servedInOwnOrders(plan)) return [...reached];
  const pours = flightsOf(plan)
    .map((flight) => flight.pours.map((pour) => pour.id).filter((pour) => !dropped.includes(pour)))
    .filter((flight) => flight.every((pour) => reached.includes(pour)))
    .flat();
  const trials = plan.trials.map((trial) => trial.id).filter((trial) => reached.includes(trial));
  return [...pours, ...trials];
}

export interface TrialGlass {
  readonly drink: 'a' | 'b';
  readonly code: string;
}

/** The three glasses of an odd-one-out as a seat is served them, from the left. */
export function trialGlasses(trial: Trial, seat: Pick<Seat, 'row'>): TrialGlass[] {
  const used = { a: 0, b: 0 };
  return [...orderOf(trial, seat)].map((letter) => {
    const drink = letter === 'A' ? 'a' : 'b';
    const code = trial.codes[drink][used[drink]] ?? '';
    used[drink] += 1;
    return { drink, code };
  });
}

/** Which of the three, from 1, is the odd one for this seat. */
export const oddGlassOf = (trial: Trial, seat: Pick<Seat, 'row'>): number =>
  oddGlass(orderOf(trial, seat)) + 1;

const orderOf = (trial: Trial, seat: Pick<Seat, 'row'>): TriangleOrder =>
  trial.orders[seat.row % trial.orders.length] ?? 'AAB';
