import { startOf } from '../../core/planning/invitation/invitation.ts';
import { compile } from '../../core/running-order/compile.ts';
import { type Cue, pourOf } from '../../core/running-order/cue.ts';
import { glassNumbers } from '../../core/running-order/glass-numbers.ts';
import type { Plan, Pour } from '../../core/tasting.ts';
import { timeOfDay } from '../language.ts';

export interface RunRow {
  readonly cue: Cue;
  /** `19:40` on the host's clock, as this device writes it, or `0:40` from the opening of the doors where the date is open. */
  readonly at: string;
}

/** Cues that belong together: the passes of one glass, the practice, or one thing alone. */
export interface RunBlock {
  readonly pour: Pour | null;
  /** Place of the pour in the order of tasting, from 1; 0 without one. */
  readonly position: number;
  readonly practice: boolean;
  readonly rows: readonly RunRow[];
}

export interface RunSheet {
  readonly blocks: readonly RunBlock[];
  readonly ends: string;
  readonly dated: boolean;
}

/**
 * The running order with the times it would have if every cue took its ideal time from the opening of the doors.
 * @param shown writes a moment as a time of day
 */
export function runSheet(plan: Plan, shown: typeof timeOfDay = timeOfDay): RunSheet {
  const start = startOf(plan);
  const clock = (seconds: number): string =>
    start === undefined
      ? `${Math.floor(seconds / 3600)}:${String(Math.floor(seconds / 60) % 60).padStart(2, '0')}`
      : shown(start + seconds * 1000, plan.timeZone);
  const blocks: { pour: Pour | null; position: number; practice: boolean; rows: RunRow[] }[] = [];
  const numbers = glassNumbers(plan);
  let passed = 0;
  for (const cue of compile(plan)) {
    const id = pourOf(cue);
    const pour = plan.pours.find((each) => each.id === id) ?? null;
    const practice = cue.kind === 'practice';
    const last = blocks.at(-1);
    const joins = last !== undefined && (pour === null ? practice && last.practice : last.pour === pour);
    const row = { cue, at: clock(passed) };
    if (joins) last.rows.push(row);
    else
      blocks.push({
        pour,
        position: pour === null ? 0 : (numbers.get(pour.id) ?? 0),
        practice,
        rows: [row],
      });
    passed += cue.ideal;
  }
  return { blocks, ends: clock(passed), dated: start !== undefined };
}
