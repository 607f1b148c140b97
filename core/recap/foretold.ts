import { traitsOf } from '../running-order/cue-traits.ts';
import { forecastAhead } from '../running-order/fit-ahead.ts';
import type { ForecastTime } from '../running-order/forecast.ts';
import type { SessionEvent } from '../session/event.ts';
import { evolveAll } from '../session/evolve.ts';
import { aheadOf } from '../session/fitting.ts';
import { indexOfCue } from '../session/position.ts';
import { type Session, unopened } from '../session/state.ts';
import { type EpochMs, epochMs } from '../units.ts';

const foretoldAt = ['start', 'third', 'two-thirds'] as const;

/** What the head said of the end when so much of the evening was over, from the welcome on. */
export interface Foretold {
  readonly when: (typeof foretoldAt)[number];
  readonly end: ForecastTime;
  /** Whether the evening ended within that range; eight in ten should. */
  readonly held: boolean;
}

/**
 * The forecasts of an evening, made once more from its log as it stood then, beside the end that came. Empty where the
 * evening never began, or was opened again: then there is no one end to hold them against.
 */
export function foretoldBy(events: readonly SessionEvent[]): readonly Foretold[] {
  const finished = events.filter((event) => event.type === 'TastingFinished');
  const [last] = finished;
  const began = beginningOf(events);
  if (last === undefined || finished.length > 1 || began === undefined || last.at <= began) return [];
  return foretoldAt.flatMap((when, index) => {
    const at = epochMs(began + ((last.at - began) * index) / foretoldAt.length);
    const session = sessionAt(events, at);
    if (session.status !== 'under-way') return [];
    const { end } = forecastAhead(aheadOf(session, at));
    return [{ when, end, held: end.early <= last.at && last.at <= end.late }];
  });
}

/** When the room left the gathering for the first time. */
function beginningOf(events: readonly SessionEvent[]): EpochMs | undefined {
  const opened = events.find((event) => event.type === 'DoorsOpened');
  const begun = events.find((event) => {
    if (event.type !== 'CueEntered' || opened === undefined) return false;
    const cue = opened.cues[indexOfCue(opened.cues, event.cue)];
    return cue !== undefined && traitsOf(cue).part !== 'gathering';
  });
  return begun?.type === 'CueEntered' ? begun.at : undefined;
}

function sessionAt(events: readonly SessionEvent[], at: EpochMs): Session {
  const later = events.findIndex((event) => 'at' in event && typeof event.at === 'number' && event.at > at);
  return evolveAll(unopened, later < 0 ? events : events.slice(0, later));
}
