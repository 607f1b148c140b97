import type { Drink } from '../../tasting.ts';
import {
  type Axis,
  type AxisCode,
  ageLimits,
  type FactName,
  type LineupContext,
  vintageLimits,
  within,
} from './axes/axis.ts';
import { beerAxes } from './axes/beer.ts';
import type { PlannedPour, PourFacts } from './axes/pour-facts.ts';
import { spiritAxes } from './axes/spirit.ts';
import { wineAxes } from './axes/wine.ts';

/** Where a pour stands on an axis; `assumed` where the facts did not tell and the middle of the others stands in. */
interface Level {
  readonly value: number;
  /** Points that a fall from 1 to 0 costs. */
  readonly weight: number;
  /** True on the axis that leads the order. */
  readonly leads: boolean;
  readonly assumed: boolean;
}

/** One pour read on the axes of its drink. */
export interface PourReading {
  readonly id: string;
  readonly drink: Drink;
  readonly levels: ReadonlyMap<AxisCode, Level>;
}

/** A pour whose facts did not tell an axis on which others do stand: named, so that nothing is guessed silently. */
export interface MissingFact {
  readonly pour: string;
  readonly axis: AxisCode;
  /** Any one of these would tell. */
  readonly facts: readonly FactName[];
}

/** An axis on which no pour of that drink stands: it took no part in the order. */
export interface SilentAxis {
  readonly drink: Drink;
  readonly axis: AxisCode;
  readonly facts: readonly FactName[];
}

export interface AxisReadings {
  /** In the order of the pours that were given. */
  readonly pours: readonly PourReading[];
  readonly missing: readonly MissingFact[];
  readonly silent: readonly SilentAxis[];
}

export interface ReadingOptions {
  /** Young before old unless false (sources disagree, so the host chooses). */
  readonly youngFirst?: boolean;
  /** The axis that the evening steps along, before all others: age in a vertical. */
  readonly lead?: AxisCode | undefined;
  /** Which fact tells age; left out, the one that more pours have. */
  readonly ageClock?: LineupContext['ageClock'] | undefined;
}

/** Drinks of one evening follow their strength: beer, wine, spirit. Common practice, no source. */
const drinkLevels: Readonly<Record<Drink, number>> = { beer: 0, wine: 0.5, spirit: 1 };
const drinkWeight = 20;

const axesOf: Readonly<Record<Drink, readonly Axis[]>> = {
  spirit: spiritAxes,
  wine: wineAxes,
  beer: beerAxes,
};

/**
 * One clock for the whole lineup, the one that more pours have: years in cask and years of harvest cannot be
 * compared without knowing when each was bottled. At a draw wine goes by its vintage, spirits by their age.
 */
function contextOf(facts: readonly PourFacts[], options: ReadingOptions): LineupContext {
  const vintages = facts.flatMap(({ vintage }) => within(vintage, ...vintageLimits) ?? []);
  const ages = facts.filter(({ ageYears }) => within(ageYears, ...ageLimits) !== undefined).length;
  const byVintage = facts[0]?.drink === 'wine' ? vintages.length >= ages : vintages.length > ages;
  return {
    ageClock: options.ageClock ?? (byVintage ? 'vintage' : 'ageYears'),
    newestVintage: Math.max(0, ...vintages),
    youngFirst: options.youngFirst !== false,
  };
}

function middle(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const lower = sorted[Math.floor((sorted.length - 1) / 2)] ?? 0;
  const upper = sorted[Math.ceil((sorted.length - 1) / 2)] ?? 0;
  return (lower + upper) / 2;
}

/**
 * Reads pours on the axes of their drinks. A pour that does not tell an axis is put in the middle of those
 * that do, so that it neither opens nor closes the lineup for lack of a fact, and is listed as missing.
 */
export function readAxes(pours: readonly PlannedPour[], options: ReadingOptions = {}): AxisReadings {
  const levels = pours.map(({ drink }) => {
    const own: Level = { value: drinkLevels[drink], weight: drinkWeight, leads: false, assumed: false };
    return new Map<AxisCode, Level>([['drink', own]]);
  });
  const missing: MissingFact[] = [];
  const silent: SilentAxis[] = [];
  for (const drink of new Set(pours.map((pour) => pour.drink))) {
    const group = pours.flatMap((pour, index) => (pour.drink === drink ? [{ pour, index }] : []));
    const context = contextOf(
      group.map(({ pour }) => pour),
      options,
    );
    for (const axis of axesOf[drink]) {
      const told = group.map(({ pour, index }) => ({ pour, index, level: axis.level(pour, context) }));
      const known = told.flatMap(({ level }) => (level === undefined ? [] : [level]));
      if (known.length === 0) {
        silent.push({ drink, axis: axis.code, facts: axis.facts });
        continue;
      }
      const standIn = middle(known);
      for (const { pour, index, level } of told) {
        if (level === undefined) missing.push({ pour: pour.id, axis: axis.code, facts: axis.facts });
        levels[index]?.set(axis.code, {
          value: level ?? standIn,
          weight: axis.weight,
          leads: axis.code === options.lead,
          assumed: level === undefined,
        });
      }
    }
  }
  return {
    pours: pours.map(({ id, drink }, index) => ({ id, drink, levels: levels[index] ?? new Map() })),
    missing,
    silent,
  };
}
