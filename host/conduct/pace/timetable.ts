import type { CueId } from '../../../core/ids.ts';
import type { Cue } from '../../../core/running-order/cue.ts';
import { type Ahead, forecastAhead, leftOf } from '../../../core/running-order/fit-ahead.ts';
import type { ForecastTime } from '../../../core/running-order/forecast.ts';
import type { HostUnderWay, RunningOrderView } from '../../../core/session/views/host.ts';
import { durationMs, type EpochMs, later } from '../../../core/units.ts';

export interface Timetable {
  /** When each cue began, or is likely to begin. Unknown for skipped ones. */
  readonly starts: ReadonlyMap<CueId, EpochMs>;
  readonly end: ForecastTime;
}

type Seen = Pick<HostUnderWay, 'cue' | 'next' | 'clock' | 'takesEffectAt' | 'timeline' | 'habits' | 'tempo'>;

/** The times of the whole running order on the wall clock: those behind as they were, those ahead as forecast. */
export function timetableOf(order: readonly Cue[], view: Seen, now: EpochMs): Timetable {
  const ahead = aheadOf({ cues: order, unfitted: [] }, view, now);
  const entered = new Map(view.timeline.map((entry) => [entry.cue, entry.at]));
  const { starts, end } = forecastAhead(ahead);
  const coming = new Set(ahead.remaining.map(({ id }) => id));
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
  const left = leftOn(view.clock, now);
  const current = cues.find(({ id }) => id === view.cue);
  return {
    from: current === undefined ? later(now, durationMs(Math.max(0, left))) : now,
    current: current === undefined ? null : leftOf(current, left, now - view.takesEffectAt),
    remaining: comingCues(cues, view),
    unfitted,
    habits: view.habits,
    tempo: view.tempo,
  };
}

/** By what comes next and not by the current cue: a host may stand on a cue of a pour that was dropped. */
function comingCues(order: readonly Cue[], { next }: Pick<HostUnderWay, 'next'>): readonly Cue[] {
  const from = order.findIndex(({ id }) => id === next);
  return from < 0 ? [] : order.slice(from);
}

/** Ms; below 0 when the cue is over its time. */
function leftOn(clock: HostUnderWay['clock'], now: EpochMs): number {
  return clock.kind === 'running' ? clock.endsAt - now : clock.remaining;
}
