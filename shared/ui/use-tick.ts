import { useLayoutEffect, useState } from 'preact/hooks';
import { untilNextBeat } from './time-left.ts';

export interface Tick {
  /** Off while nothing on the screen depends on the time: a phone's battery is part of the evening. */
  readonly running: boolean;
  /** An epoch at which the figures change, such as the end of the cue. */
  readonly anchor: number;
  /** Milliseconds between beats. */
  readonly period?: number | undefined;
}

/**
 * The given clock's time, refreshed at each beat and on return to the page.
 * @param clock epoch milliseconds; keep it the same function between renders
 */
export function useTick(clock: () => number, { running, anchor, period = 1000 }: Tick): number {
  const [now, setNow] = useState(clock);
  // Before the paint, so that a resumed or new cue never shows a moment of the old time.
  useLayoutEffect(() => {
    if (!running) return;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const beat = (): void => {
      clearTimeout(timer);
      const time = clock();
      setNow(time);
      timer = setTimeout(beat, untilNextBeat(time, anchor, period));
    };
    beat();
    document.addEventListener('visibilitychange', beat);
    return () => {
      clearTimeout(timer);
      document.removeEventListener('visibilitychange', beat);
    };
  }, [clock, running, anchor, period]);
  return now;
}
