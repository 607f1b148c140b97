import { waysOf } from '../../drinks/drink-ways.ts';
import type { CommandId, PourId } from '../../ids.ts';
import { type Drink, limits, type Plan } from '../../tasting.ts';

/** What is ticked of a glass before the doors open, each of it done in one go. */
export type PouringStep = 'poured' | 'covered' | 'watered';

/** A step, and how many moves of the hand a glass then has behind it: levels count moves, for they outlast this list. */
export interface PouringTurn {
  readonly step: PouringStep;
  readonly moves: number;
}
export const mostPouringMoves = 5;

/**
 * The steps of a glass in their order (common practice, no source). What must not be parted is one step: a spirit is
 * covered the moment it is poured, or its nose is gone; its drops are measured, turned in once and covered again. Wine and
 * beer are only poured.
 */
export function pouringStepsOf(drink: Drink, { drops }: Pick<Plan, 'drops'>): readonly PouringTurn[] {
  const { lids, dropsOfWater } = waysOf[drink];
  const first: PouringTurn = lids ? { step: 'covered', moves: 2 } : { step: 'poured', moves: 1 };
  if (dropsOfWater === 0 || drops !== 'poured') return [first];
  return [first, { step: 'watered', moves: first.moves + 2 + (lids ? 1 : 0) }];
}

/** One tap: these glasses, each of `places` with each of `pours`, have at least the first `done` of their moves. */
export interface Tick {
  readonly id: CommandId;
  /** Numbers of places at the table, from 1. */
  readonly places: readonly number[];
  readonly pours: readonly PourId[];
  readonly done: number;
}

/** How many moves each glass of a pour has; a place's number less one is its index, 0 where nothing is said. */
interface PourLevels {
  readonly pour: PourId;
  readonly done: readonly number[];
}
export type Levels = readonly PourLevels[];

/**
 * What has been ticked. A glass has as many moves as the furthest tick that covers it, so ticks may arrive in any
 * order, twice, or from two devices at once, and none is lost. An undo takes back one tick and leaves what another
 * tick says of the same glasses. The latest ticks can be undone; older ones have settled.
 */
export interface Pouring {
  readonly settled: Levels;
  readonly recent: readonly RecentTick[];
}

/** An undone tick is remembered, so that it does nothing when it arrives once more. */
type RecentTick = Tick & { readonly undone: boolean };

export const nothingPoured: Pouring = { settled: [], recent: [] };
export const ticksThatCanBeUndone = 60;
/** Places at the table, and beyond them the kits of vials (`vial-kits.ts`). */
export const mostPlaces = 2 * limits.guests;

/** Takes in a tick; the same one again changes nothing, and then the same object comes back. */
export function ticked(pouring: Pouring, { id, places, pours, done }: Tick): Pouring {
  if (pouring.recent.some((each) => each.id === id)) return pouring;
  const recent = [...pouring.recent, { id, places, pours, done, undone: false }];
  const leaving = recent.slice(0, -ticksThatCanBeUndone).filter((tick) => !tick.undone);
  return {
    settled: leaving.reduce(raised, pouring.settled),
    recent: recent.slice(-ticksThatCanBeUndone),
  };
}

/** Takes a tick back. Undefined when it is not known any more: it has settled, or it was never there. */
export function undone(pouring: Pouring, tick: CommandId): Pouring | undefined {
  const found = pouring.recent.find((each) => each.id === tick);
  if (found === undefined) return undefined;
  if (found.undone) return pouring;
  return {
    settled: pouring.settled,
    recent: pouring.recent.map((each) => (each.id === tick ? { ...each, undone: true } : each)),
  };
}

/** Without anything that was said of this pour; the same object where nothing was. */
export function emptied(pouring: Pouring, pour: PourId): Pouring {
  const says = ({ pours }: { readonly pours: readonly PourId[] }): boolean => pours.includes(pour);
  if (!pouring.settled.some((row) => row.pour === pour) && !pouring.recent.some(says)) return pouring;
  return {
    settled: pouring.settled.filter((row) => row.pour !== pour),
    recent: pouring.recent.map((tick) =>
      says(tick) ? { ...tick, pours: tick.pours.filter((each) => each !== pour) } : tick,
    ),
  };
}

/** How far every glass is. */
export const levelsOf = ({ settled, recent }: Pouring): Levels =>
  recent.filter((tick) => !tick.undone).reduce(raised, settled);

function raised(levels: Levels, { places, pours, done }: Tick): Levels {
  const known = new Set(levels.map(({ pour }) => pour));
  const added = pours.filter((pour) => !known.has(pour)).map((pour): PourLevels => ({ pour, done: [] }));
  return [...levels, ...added].map((row) =>
    pours.includes(row.pour) ? { pour: row.pour, done: atLeast(row.done, places, done) } : row,
  );
}

function atLeast(levels: readonly number[], places: readonly number[], done: number): number[] {
  const furthest = Math.max(levels.length, ...places);
  const covered = new Set(places);
  return Array.from({ length: furthest }, (_, index) => {
    const now = levels[index] ?? 0;
    return covered.has(index + 1) ? Math.max(now, done) : now;
  });
}

/** Moves that a glass has, 0 for one that nobody has touched. */
export const levelOf = (levels: Levels, pour: PourId, place: number): number =>
  levels.find((row) => row.pour === pour)?.done[place - 1] ?? 0;

/** How many of its steps a glass has whole. */
export const stepsDone = (steps: readonly PouringTurn[], level: number): number =>
  steps.filter(({ moves }) => moves <= level).length;

/**
 * What one tap on a row or a column does next: the slowest of its glasses come level with the next step. `steps` are those
 * of each pour. Undefined when every glass is done.
 */
export function nextOfGroup(
  levels: Levels,
  group: { readonly places: readonly number[]; readonly pours: readonly PourId[] },
  steps: (pour: PourId) => readonly PouringTurn[],
): Omit<Tick, 'id'> | undefined {
  const open = group.pours.flatMap((pour) =>
    group.places.flatMap((place) => {
      const next = steps(pour)[stepsDone(steps(pour), levelOf(levels, pour, place))];
      return next === undefined ? [] : [{ pour, done: next.moves }];
    }),
  );
  if (open.length === 0) return undefined;
  const done = Math.min(...open.map((each) => each.done));
  const pours = group.pours.filter((pour) => open.some((each) => each.pour === pour && each.done === done));
  return { places: group.places, pours, done };
}
