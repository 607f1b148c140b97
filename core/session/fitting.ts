import type { Cue } from '../running-order/cue.ts';
import { forecast, type Habits, learn, livedSoFar, paceFrom } from '../running-order/forecast.ts';
import { type Fit, fitInto } from '../running-order/repace.ts';
import { between, type EpochMs, epochMs } from '../units.ts';
import { playable } from './position.ts';
import type { Entry, UnderWay } from './state.ts';

/** What both the server and a host's preview know of an evening under way, enough to look ahead. */
export interface Ahead {
  /** When the current cue ends as things stand: never in the past. */
  readonly from: EpochMs;
  /** The cues still to come, without the current one. */
  readonly remaining: readonly Cue[];
  readonly habits: Habits;
}

export function aheadOf(session: UnderWay, now: EpochMs): Ahead {
  const endsAt =
    session.clock.kind === 'held' ? now + Math.max(0, session.clock.remaining) : session.clock.endsAt;
  return {
    from: epochMs(Math.max(now, endsAt)),
    remaining: playable(session).flatMap((index) => (index > session.at ? (session.cues[index] ?? []) : [])),
    habits: habitsNow(session.habits, session.cues, session.timeline),
  };
}

/** What earlier evenings and this one so far say of the room. */
export const habitsNow = (habits: Habits, cues: readonly Cue[], timeline: readonly Entry[]): Habits =>
  learn(habits, livedSoFar(cues, timeline));

export function fitTo(session: UnderWay, endsAt: EpochMs, now: EpochMs): Fit {
  const ahead = aheadOf(session, now);
  return fitInto(ahead.remaining, between(ahead.from, endsAt) / 1000, paceFrom(ahead.habits));
}

export const forecastOf = (session: UnderWay, now: EpochMs) => {
  const ahead = aheadOf(session, now);
  return forecast(ahead.from, ahead.remaining, ahead.habits);
};
