import { type DurationMs, durationMs } from '../../core/units.ts';

/** No change of cue is set further ahead, in ms. */
export const mostLead = 400;
const least = 80;
const withoutData = 150;
/** For what a device does with the message before it can show it. */
const margin = 30;

/**
 * How far ahead a change of cue is set, so that nearly every device has it before it takes effect [F4]: the 95th
 * percentile (nearest rank) of how long a message may take to a device and a margin, never less than 80 ms nor more
 * than 400 ms. A few slow or lying devices do not hold up the room.
 * @param reaches in ms, one for each device that has measured its own
 */
export function leadFor(reaches: readonly number[]): DurationMs {
  if (reaches.length === 0) return durationMs(withoutData);
  const sorted = reaches.toSorted((a, b) => a - b);
  const slow = sorted[Math.ceil(0.95 * sorted.length) - 1] ?? 0;
  return durationMs(Math.min(mostLead, Math.max(least, Math.round(slow + margin))));
}
