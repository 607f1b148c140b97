import { type Level, usualFlights } from '../../tasting.ts';
import type { PlannedPour } from '../order/axes/pour-facts.ts';
import { bestLineup, type FlightCut } from '../order/lineup.ts';
import type { ReadingOptions } from '../order/order-axes.ts';
import type { Theme } from './theme.ts';
import { sidesOf } from './theme-sides.ts';

/** `pours` shared out over `flights` as evenly as can be, the earlier flights larger. None of them is empty. */
export function evenFlights(pours: number, flights: number): readonly number[] {
  const count = Math.max(1, Math.min(pours, flights));
  return pours === 0
    ? []
    : Array.from(
        { length: count },
        (_, flight) => Math.floor(pours / count) + Number(flight < pours % count),
      );
}

/** Flights no larger than the crowd bears (three pours, common practice). */
export function flightsFor(pours: number, level: Level): readonly number[] {
  return evenFlights(pours, Math.ceil(pours / Math.max(...usualFlights[level])));
}

const ids = (pours: readonly PlannedPour[]): string[] => pours.map(({ id }) => id);

/** The i-th of each side together, each side from its lightest up. */
function matchedFlights(sides: readonly (readonly PlannedPour[])[]): string[][] {
  const ordered = sides.map((side) => bestLineup(side).steps.map(({ pour }) => pour));
  const longest = Math.max(0, ...ordered.map((side) => side.length));
  return Array.from({ length: longest }, (_, at) => ordered.flatMap((side) => side[at] ?? []));
}

/**
 * How a theme cuts its pours into flights, ready for the lineup. A comparison makes each side a flight or each
 * match of one per side; pours on no side close the evening together. All else is cut by number alone.
 */
export function cutFlights(theme: Theme, pours: readonly PlannedPour[], level: Level): FlightCut {
  if (theme.kind !== 'versus') return { kind: 'sizes', sizes: flightsFor(pours.length, level) };
  const sides = sidesOf(theme.by, pours);
  const sided = new Set(sides.flat());
  const rest = ids(pours.filter((pour) => !sided.has(pour)));
  const matched = theme.flights === 'matched';
  const groups = matched ? matchedFlights(sides) : sides.map(ids);
  const inSteps = matched || theme.by === 'strength' || theme.by === 'price';
  return {
    kind: 'groups',
    groups: rest.length === 0 ? groups : [...groups, rest],
    order: inSteps || rest.length > 0 ? 'as-given' : 'least-carry-over',
  };
}

/** How a theme bends the order: a vertical steps through its years before palates are asked. */
export function orderOptions(theme: Theme): ReadingOptions {
  if (theme.kind !== 'vertical') return {};
  return { lead: 'age', ageClock: theme.by === 'age' ? 'ageYears' : 'vintage' };
}
