/**
 * What a device knows about the time of a cue. Epochs are milliseconds on the server's clock, as the follower
 * estimates it.
 */
export type CueTime =
  | { readonly status: 'running'; readonly startsAt: number; readonly endsAt: number }
  | { readonly status: 'held'; readonly remaining: number; readonly total: number };

export type TimePhase = 'running' | 'held' | 'over';

export interface TimeLeft {
  readonly phase: TimePhase;
  /** Milliseconds; below zero in overtime. */
  readonly remaining: number;
  /** Share of the whole that is left, 0 to 1. */
  readonly share: number;
}

/** @param now epoch milliseconds on the server's clock */
export function timeLeft(time: CueTime, now: number): TimeLeft {
  switch (time.status) {
    case 'running': {
      const remaining = time.endsAt - now;
      const share = shareOf(remaining, time.endsAt - time.startsAt);
      // The first second after the end still reads 00:00; overtime is what the figures can show.
      return { phase: remaining <= -1000 ? 'over' : 'running', remaining, share };
    }
    case 'held':
      return { phase: 'held', remaining: time.remaining, share: shareOf(time.remaining, time.total) };
    default: {
      const unknown: never = time;
      return unknown;
    }
  }
}

function shareOf(remaining: number, total: number): number {
  return total > 0 ? Math.min(Math.max(remaining / total, 0), 1) : 0;
}

const twoFigures = (value: number): string => String(value).padStart(2, '0');

/**
 * Minutes and seconds, mm:ss; overtime as +mm:ss. A second counts as left until it is gone, so a cue of one minute
 * starts at 01:00 and reads 00:00 only at its end. Minutes run past 59 rather than into hours.
 * @param remaining milliseconds, below zero in overtime
 */
export function countdownFigures(remaining: number): string {
  const seconds = remaining >= 0 ? Math.ceil(remaining / 1000) : Math.floor(-remaining / 1000);
  const sign = remaining < 0 && seconds > 0 ? '+' : '';
  return `${sign}${twoFigures(Math.floor(seconds / 60))}:${twoFigures(seconds % 60)}`;
}

/** Seconds at which the time is said aloud, beside the start; more often would talk over the host. */
export const spokenMarks = [60, 20, 0] as const;

/**
 * The mark that was crossed between two looks at the clock, if any; the latest one when a sleep crossed several.
 * @param before remaining milliseconds at the earlier look
 * @param after remaining milliseconds now
 */
export function crossedMark(before: number, after: number): (typeof spokenMarks)[number] | undefined {
  return spokenMarks.findLast((mark) => before > mark * 1000 && after <= mark * 1000);
}

/**
 * Milliseconds until figures change next, so that all devices turn over together.
 * @param now epoch milliseconds
 * @param anchor an epoch at which they change, such as the end of the cue
 */
export function untilNextBeat(now: number, anchor: number, period: number): number {
  const rest = (((anchor - now) % period) + period) % period;
  return rest === 0 ? period : rest;
}
