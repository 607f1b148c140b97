import { shuffled } from '../../shuffle.ts';
import { balanceOf, type OrderBalance, type ServingRows, williamsSize } from './order-balance.ts';

/**
 * A Williams design of n samples, numbered from 0: each sample equally often in each position, each ordered
 * pair of neighbours equally often. The zig-zag 0, 1, n-1, 2, n-2, ... developed cyclically gives n rows; for
 * odd n the same rows reversed are added (E. J. Williams 1949, Australian Journal of Scientific Research A 2,
 * 149-168; J. V. Bradley 1958). Each run of n rows is a Latin square of its own, so any first m rows keep
 * positions within one of each other.
 */
export function williamsDesign(n: number): ServingRows {
  const zigzag = Array.from({ length: n }, (_, at) => (at % 2 === 1 ? (at + 1) / 2 : (n - at / 2) % n));
  const square = Array.from({ length: n }, (_, shift) => zigzag.map((sample) => (sample + shift) % n));
  return williamsSize(n) === n ? square : [...square, ...square.map((row) => [...row].reverse())];
}

/** Pours that a host wants in a fixed place: these first or last in their flight, in this order, for everybody. */
export interface ForcedPlaces {
  readonly first?: readonly string[];
  readonly last?: readonly string[];
}

/** What a design cannot keep, in the host's words elsewhere. */
export type OrderLimit =
  /** These stand in the same place for everybody: their position cannot be told from themselves. */
  | {
      readonly code: 'forced-place-breaks-balance';
      readonly flight: number;
      readonly pours: readonly string[];
    }
  /** Seats do not fill whole designs: positions stay within one of each other, neighbours nearly so. */
  | {
      readonly code: 'seats-do-not-fill-design';
      readonly flight: number;
      readonly seats: number;
      readonly needed: number;
    }
  /** Fewer than two pours may change places: nothing to balance. */
  | { readonly code: 'nothing-to-vary'; readonly flight: number };

/** The orders of one flight. Seat k is served row k, and seat k + rows the same row again. */
interface FlightDesign {
  readonly rows: readonly (readonly string[])[];
}

/** The orders of a tasting, kept with its plan: a seat's order follows from its number alone. */
export interface ServingDesign {
  readonly flights: readonly FlightDesign[];
}

function designFlight(pours: readonly string[], forced: ForcedPlaces, random: () => number): FlightDesign {
  const first = (forced.first ?? []).filter((id) => pours.includes(id));
  const last = (forced.last ?? []).filter((id) => pours.includes(id) && !first.includes(id));
  const free = pours.filter((id) => !first.includes(id) && !last.includes(id));
  if (free.length === 0) return { rows: [[...first, ...last]] };
  const labels = shuffled(free, random);
  const rows = williamsDesign(free.length);
  const squares = Array.from({ length: rows.length / free.length }, (_, square) =>
    shuffled(rows.slice(square * free.length, (square + 1) * free.length), random),
  );
  return {
    rows: shuffled(squares, random)
      .flat()
      .map((row) => [...first, ...row.flatMap((sample) => labels[sample] ?? []), ...last]),
  };
}

/**
 * Balanced serving orders for a tasting, flight by flight: samples are relabelled and rows are shuffled with
 * `random` (numbers from 0 up to but not including 1), within each Latin square so that every number of seats
 * keeps positions as level as can be. The same random sequence gives the same design.
 * Throws a RangeError when a pour stands in two flights or twice in one.
 */
export function designServingOrders(
  flights: readonly (readonly string[])[],
  random: () => number,
  forced: ForcedPlaces = {},
): ServingDesign {
  const all = flights.flat();
  if (new Set(all).size !== all.length) throw new RangeError('Each pour may stand only once in the flights.');
  return { flights: flights.map((pours) => designFlight(pours, forced, random)) };
}

/**
 * What the guest at a seat is served, flight by flight. Seats are numbered from 0 as guests arrive, so a late
 * guest takes the next row and nobody else's order changes. Throws a RangeError unless seat is whole, from 0.
 */
export function servingOrderOf(design: ServingDesign, seat: number): readonly (readonly string[])[] {
  if (!Number.isInteger(seat) || seat < 0)
    throw new RangeError('Seats are numbered from 0, in whole numbers.');
  return design.flights.map(({ rows }) => rows[seat % rows.length] ?? []);
}

export interface ServedBalance {
  readonly flights: readonly OrderBalance[];
  readonly limits: readonly OrderLimit[];
}

/** How level the orders are that these seats really get, and what they cannot keep. */
export function balanceOfSeats(
  design: ServingDesign,
  seats: readonly number[],
  forced: ForcedPlaces = {},
): ServedBalance {
  const orders = seats.map((seat) => servingOrderOf(design, seat));
  const fixed = new Set([...(forced.first ?? []), ...(forced.last ?? [])]);
  const limits: OrderLimit[] = [];
  const flights = design.flights.map(({ rows }, flight) => {
    const pours = rows[0] ?? [];
    const forcedHere = pours.filter((id) => fixed.has(id));
    const free = pours.length - forcedHere.length;
    if (forcedHere.length > 0)
      limits.push({ code: 'forced-place-breaks-balance', flight, pours: forcedHere });
    if (free < 2) limits.push({ code: 'nothing-to-vary', flight });
    else if (seats.length % williamsSize(free) !== 0) {
      const needed = Math.ceil(Math.max(1, seats.length) / williamsSize(free)) * williamsSize(free);
      limits.push({ code: 'seats-do-not-fill-design', flight, seats: seats.length, needed });
    }
    return balanceOf(orders.map((order) => (order[flight] ?? []).map((id) => pours.indexOf(id))));
  });
  return { flights, limits };
}
