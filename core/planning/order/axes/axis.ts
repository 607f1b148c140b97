import type { PourFacts } from './pour-facts.ts';

/** What one pour can lay over the next. A level of 1 on an axis leaves the most behind, 0 nothing. */
export type AxisCode =
  | 'drink'
  | 'smoke'
  | 'strength'
  | 'pungency'
  | 'dryness'
  | 'sweetness'
  | 'category'
  | 'body'
  | 'cask'
  | 'age'
  | 'bitterness'
  | 'colour'
  | 'sourness';

export type FactName = keyof PourFacts;

/** What a level needs to know of the whole lineup: which clock tells age, and the newest vintage in it. */
export interface LineupContext {
  readonly ageClock: 'vintage' | 'ageYears';
  readonly newestVintage: number;
  /** False turns the age axis round: the oldest first. */
  readonly youngFirst: boolean;
}

export interface Axis {
  readonly code: AxisCode;
  /** Points that a fall from 1 to 0 on this axis costs. */
  readonly weight: number;
  /** The facts that would tell the level, for naming what is missing. */
  readonly facts: readonly FactName[];
  /** From 0 to 1, or undefined where the facts do not tell. */
  readonly level: (facts: PourFacts, context: LineupContext) => number | undefined;
}

export const vintageLimits = [1700, 2200] as const;
export const ageLimits = [0, 200] as const;

/** A fact within its sensible limits, else undefined: nonsense counts as not known. */
export function within(value: number | undefined, min: number, max: number): number | undefined {
  return value !== undefined && value >= min && value <= max ? value : undefined;
}

/** From 0 towards 1 as `value` grows from 0, at one half where value = half. Strictly rising: no ties by clamping. */
export const saturating = (value: number, half: number): number => value / (value + half);

/** The logistic curve: one half at `middle`, about 0.73 one `spread` above it. */
export const logistic = (value: number, middle: number, spread: number): number =>
  1 / (1 + Math.exp((middle - value) / spread));

/** Straight lines through (x, y) knots of rising x; held level outside them. */
export function throughKnots(value: number, knots: readonly (readonly [number, number])[]): number {
  let [fromX, fromY] = knots[0] ?? [0, 0];
  for (const [x, y] of knots) {
    if (value <= x) return x === fromX ? y : fromY + ((y - fromY) * (value - fromX)) / (x - fromX);
    [fromX, fromY] = [x, y];
  }
  return fromY;
}

/** Every drink has it: the host's own mark of how quiet or powerful the pour is. */
export const pungency = (weight: number): Axis => ({
  code: 'pungency',
  weight,
  facts: ['marks'],
  level: ({ marks }) => {
    const mark = within(marks?.pungency, 0, 10);
    return mark === undefined ? undefined : mark / 10;
  },
});

/** Age on the one clock of the lineup: years in cask or bottle, or years behind the newest vintage. */
export const age = (weight: number, half: number): Axis => ({
  code: 'age',
  weight,
  facts: ['ageYears', 'vintage'],
  level: (facts, context) => {
    const vintage = within(facts.vintage, ...vintageLimits);
    const years =
      context.ageClock === 'ageYears'
        ? within(facts.ageYears, ...ageLimits)
        : vintage === undefined
          ? undefined
          : context.newestVintage - vintage;
    if (years === undefined) return undefined;
    return context.youngFirst ? saturating(years, half) : 1 - saturating(years, half);
  },
});
