import { wallAt } from '../wall-time.ts';

const minute = 60_000;

/**
 * Seconds from a moment until a zone's clock next shows `time` (HH:MM): an end before the beginning is one after
 * midnight. Right on nights when the clocks are changed; undefined for a time that they jump over, and for no time.
 */
export function secondsUntil(time: string, from: number, timeZone: string): number | undefined {
  const [hours = Number.NaN, minutes = Number.NaN] = time.split(':').map(Number);
  const begins = wallAt(from, timeZone).time.split(':').map(Number);
  const apart = (hours - (begins[0] ?? 0)) * 60 + minutes - (begins[1] ?? 0);
  if (Number.isNaN(apart)) return undefined;
  const onTheWall = ((apart % 1440) + 1440) % 1440;
  // The clocks are changed by two hours at most; the first moment that fits is meant.
  for (let each = Math.max(0, onTheWall - 120); each <= onTheWall + 120; each += 1) {
    const at = Math.floor(from / minute) * minute + each * minute;
    if (wallAt(at, timeZone).time === time) return Math.max(0, Math.round((at - from) / 1000));
  }
  return undefined;
}
