import type { CueId } from '../../core/ids.ts';
import type { Cue } from '../../core/running-order/cue.ts';
import type { HostUnderWay } from '../../core/session/views/host.ts';
import { type EpochMs, epochMs, later, toMs } from '../../core/units.ts';

export interface ClockTimes {
  /** When each cue began, or will begin if every cue from now on takes its ideal time. Unknown for skipped ones. */
  readonly starts: ReadonlyMap<CueId, EpochMs>;
  /** When the last cue will be over. */
  readonly ends: EpochMs;
}

/**
 * Times on the wall clock for a running order. The current cue ends at its deadline, or now when it is over its time;
 * a held one ends after what remains of it. What is behind has the time at which it was last entered.
 */
export function clockTimes(
  order: readonly Cue[],
  view: Pick<HostUnderWay, 'cue' | 'clock' | 'timeline'>,
  now: EpochMs,
): ClockTimes {
  const entered = new Map(view.timeline.map((entry) => [entry.cue, entry.at]));
  const here = order.findIndex((cue) => cue.id === view.cue);
  const starts = new Map<CueId, EpochMs>();
  for (const cue of order.slice(0, here + 1)) {
    const at = entered.get(cue.id);
    if (at !== undefined) starts.set(cue.id, at);
  }
  let at = endOfCurrent(view.clock, now);
  for (const cue of order.slice(here + 1)) {
    starts.set(cue.id, at);
    at = later(at, toMs(cue.ideal));
  }
  return { starts, ends: at };
}

function endOfCurrent(clock: HostUnderWay['clock'], now: EpochMs): EpochMs {
  switch (clock.kind) {
    case 'running':
      return epochMs(Math.max(clock.endsAt, now));
    case 'held':
      return epochMs(now + Math.max(0, clock.remaining));
    default:
      return clock satisfies never;
  }
}
