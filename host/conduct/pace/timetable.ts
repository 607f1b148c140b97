import type { CueId } from '../../../core/ids.ts';
import type { Cue } from '../../../core/running-order/cue.ts';
import type { Ahead } from '../../../core/running-order/fit-ahead.ts';
import { type ForecastTime, forecast } from '../../../core/running-order/forecast.ts';
import type { HostUnderWay, RunningOrderView } from '../../../core/session/views/host.ts';
import { type EpochMs, epochMs } from '../../../core/units.ts';

export interface Timetable {
  /** When each cue began, or is likely to begin. Unknown for skipped ones. */
  readonly starts: ReadonlyMap<CueId, EpochMs>;
  readonly end: ForecastTime;
}

type Seen = Pick<HostUnderWay, 'cue' | 'next' | 'clock' | 'timeline' | 'habits'>;

/** The times of the whole running order on the wall clock: those behind as they were, those ahead as forecast. */
export function timetableOf(order: readonly Cue[], view: Seen, now: EpochMs): Timetable {
  const { from, remaining, habits } = aheadOf({ cues: order, unfitted: [] }, view, now);
  const entered = new Map(view.timeline.map((entry) => [entry.cue, entry.at]));
  const { starts, end } = forecast(from, remaining, habits);
  const coming = new Set(remaining.map(({ id }) => id));
  const behind = order.flatMap(({ id }) => {
    const at = entered.get(id);
    return at === undefined || coming.has(id) ? [] : [[id, at] as const];
  });
  return { starts: new Map([...behind, ...starts.map(({ cue, at }) => [cue, at.likely] as const)]), end };
}

/**
 * What the server knows when it forecasts and fits, read from what a host's device was told. The two differ only by
 * the moment that they call now.
 */
export function aheadOf(
  { cues, unfitted }: Pick<RunningOrderView, 'cues' | 'unfitted'>,
  view: Seen,
  now: EpochMs,
): Ahead {
  return {
    from: endOfCurrent(view.clock, now),
    remaining: comingCues(cues, view),
    unfitted,
    habits: view.habits,
  };
}

/** By what comes next and not by the current cue: a host may stand on a cue of a pour that was dropped. */
function comingCues(order: readonly Cue[], { next }: Pick<HostUnderWay, 'next'>): readonly Cue[] {
  const from = order.findIndex(({ id }) => id === next);
  return from < 0 ? [] : order.slice(from);
}

/** The current cue ends at its deadline, or now when it is over its time; a held one after what remains of it. */
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
