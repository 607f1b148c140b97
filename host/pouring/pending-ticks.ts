import { type Levels, levelsOf, type Tick } from '../../core/planning/serving/pouring.ts';

/** What the server has told, with the taps of this device that it has not answered yet. */
export const withTicks = (levels: Levels, ticks: readonly Tick[]): Levels =>
  levelsOf({ settled: levels, recent: ticks.map((tick) => ({ ...tick, undone: false })) });
