import type { Millilitres, Seconds } from '../units.ts';
import type { Drink, Level } from './drink-kinds.ts';
import type { Pass, Sense, Step } from './step.ts';

/** One action in the walk through a glass, with the time it gets. */
export interface StepPlan {
  readonly pass: Pass;
  readonly step: Step;
  readonly sense?: Sense;
  readonly ideal: Seconds;
  readonly floor: Seconds;
  /** See `Cue.stretch`. */
  readonly stretch: number;
}

/** What the conductor has to know about a kind of drink. One file each: spirit, wine, beer. */
export interface DrinkWays {
  readonly drink: Drink;
  /** A usual tasting pour (common practice, no source). */
  readonly pour: Millilitres;
  /** Glasses stand covered until they are tasted, so that the nose keeps. */
  readonly lids: boolean;
  /** Drops of water that go into a glass, where the plan has them (common practice for spirits, no source). */
  readonly dropsOfWater: number;
  /**
   * The passes through one glass for this crowd, in order. Every `sip` is followed by `spit` [C1]. With `drops` the glass
   * is nosed neat first, and gets its water at the beginning of the writing pass.
   */
  readonly passes: (level: Level, closingPass: boolean, drops: boolean) => readonly StepPlan[];
  /** The rest with water after a glass. */
  readonly water: { readonly ideal: Seconds; readonly floor: Seconds };
}
