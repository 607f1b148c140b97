import type { PlannedPour } from './axes/pour-facts.ts';
import { carryOverAt, carryOverTable, fullCarryOver } from './carry-over.ts';
import { type FlightRule, leastCostOrder } from './least-cost-order.ts';
import { explainStep, type Risk, risksOf, type StepReason } from './lineup-reasons.ts';
import {
  type MissingFact,
  type PourReading,
  type ReadingOptions,
  readAxes,
  type SilentAxis,
} from './order-axes.ts';

/** How an evening is cut into flights. */
export type FlightCut =
  | { readonly kind: 'one' }
  /** So many pours in each flight, whichever they are. */
  | { readonly kind: 'sizes'; readonly sizes: readonly number[] }
  /** These pours together in a flight; the flights in this order, or in the one that carries over least. */
  | {
      readonly kind: 'groups';
      readonly groups: readonly (readonly string[])[];
      readonly order: 'as-given' | 'least-carry-over';
    };

export interface LineupOptions extends ReadingOptions {
  readonly cut?: FlightCut;
}

export interface LineupStep {
  readonly pour: string;
  /** From 0. */
  readonly flight: number;
  /** What all earlier pours lay over this one, in thousandths of a point. */
  readonly cost: number;
  readonly reason: StepReason;
  /** Others that could stand here at the same least cost; empty in an order made by hand. */
  readonly equallyGood: readonly string[];
}

export interface Lineup {
  readonly steps: readonly LineupStep[];
  /** The sum of the steps, in thousandths of a point. */
  readonly cost: number;
  readonly risks: readonly Risk[];
  readonly missing: readonly MissingFact[];
  readonly silent: readonly SilentAxis[];
}

/** By code unit, so that every device sorts alike whatever its language. */
const byId = (a: { readonly id: string }, b: { readonly id: string }): number =>
  a.id < b.id ? -1 : a.id > b.id ? 1 : 0;

function refuseDoubles(ids: readonly string[]): void {
  if (new Set(ids).size !== ids.length) throw new RangeError('Each pour may stand only once in a lineup.');
}

function startsOf(sizes: readonly number[], pours: number): number[] {
  const starts: number[] = [];
  let position = 0;
  for (const size of sizes) {
    if (!Number.isInteger(size) || size < 1) throw new RangeError('A flight holds at least one pour.');
    starts.push(position);
    position += size;
  }
  if (position !== pours) {
    throw new RangeError(`The flights hold ${position} pours but the lineup has ${pours}; make them agree.`);
  }
  return starts;
}

function flightOfEach(groups: readonly (readonly string[])[], ids: readonly string[]): number[] {
  refuseDoubles(groups.flat());
  const flights = ids.map((id) => groups.findIndex((group) => group.includes(id)));
  if (flights.includes(-1) || groups.flat().length !== ids.length) {
    throw new RangeError('Every pour belongs to exactly one flight; check the flights.');
  }
  return flights;
}

function ruleFor(cut: FlightCut, ids: readonly string[]): FlightRule {
  switch (cut.kind) {
    case 'one':
      return { kind: 'positions', breaksBefore: new Set() };
    case 'sizes':
      return { kind: 'positions', breaksBefore: new Set(startsOf(cut.sizes, ids.length).slice(1)) };
    case 'groups':
      return {
        kind: 'membership',
        flightOf: flightOfEach(cut.groups, ids),
        inOrder: cut.order === 'as-given',
      };
    default:
      return cut satisfies never;
  }
}

/** The flight of each position of an order that already stands: a break wherever the group changes. */
function flightsAlong(order: readonly string[], cut: FlightCut): number[] {
  const rule = ruleFor(cut, order);
  let flight = 0;
  return order.map((_, position) => {
    const opens =
      rule.kind === 'positions'
        ? rule.breaksBefore.has(position)
        : position > 0 && rule.flightOf[position] !== rule.flightOf[position - 1];
    if (opens) flight++;
    return flight;
  });
}

function stepCost(readings: readonly PourReading[], flights: readonly number[], position: number): number {
  const pour = readings[position];
  if (pour === undefined) return 0;
  return readings.slice(0, position).reduce((sum, before, index) => {
    const apart = flights[index] !== flights[position] ? 'neighbour-after-break' : 'neighbour';
    return sum + carryOverAt(fullCarryOver(before, pour), index === position - 1 ? apart : 'earlier');
  }, 0);
}

/**
 * The cost, reasons and risks of an order as it stands, made by hand or reckoned: `pours` in the order of
 * serving. Throws a RangeError for doubled ids and for flights that do not fit the pours.
 */
export function weighOrder(pours: readonly PlannedPour[], options: LineupOptions = {}): Lineup {
  const order = pours.map(({ id }) => id);
  refuseDoubles(order);
  const read = readAxes(pours, options);
  const flights = flightsAlong(order, options.cut ?? { kind: 'one' });
  const steps = read.pours.map((pour, position): LineupStep => {
    const before = read.pours[position - 1];
    const flight = flights[position] ?? 0;
    const opensFlight = position > 0 && flights[position - 1] !== flight;
    return {
      pour: pour.id,
      flight,
      cost: stepCost(read.pours, flights, position),
      reason: explainStep(before, pour, opensFlight),
      equallyGood: [],
    };
  });
  return {
    steps,
    cost: steps.reduce((sum, step) => sum + step.cost, 0),
    risks: risksOf(read.pours, flights),
    missing: read.missing,
    silent: read.silent,
  };
}

/**
 * The order that carries over least, exactly, for up to 16 pours. The same pours give the same order however
 * they were listed: what the facts leave open is settled by id, and named in `equallyGood`.
 * Throws a RangeError above 16 pours, for doubled ids and for flights that do not fit the pours.
 */
export function bestLineup(pours: readonly PlannedPour[], options: LineupOptions = {}): Lineup {
  const sorted = [...pours].sort(byId);
  const ids = sorted.map(({ id }) => id);
  refuseDoubles(ids);
  const table = carryOverTable(readAxes(sorted, options).pours);
  const best = leastCostOrder(table, ruleFor(options.cut ?? { kind: 'one' }, ids));
  const served = best.order.flatMap((index) => sorted[index] ?? []);
  const weighed = weighOrder(served, options);
  const steps = weighed.steps.map((step, position) => ({
    ...step,
    equallyGood: (best.equallyGood[position] ?? []).flatMap((index) => ids[index] ?? []),
  }));
  return { ...weighed, steps };
}
