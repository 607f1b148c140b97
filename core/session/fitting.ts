import { type Ahead, fitAhead } from '../running-order/fit-ahead.ts';
import { type Habits, learn, livedSoFar } from '../running-order/forecast.ts';
import type { Fit, Lengths } from '../running-order/repace.ts';
import { type EpochMs, epochMs } from '../units.ts';
import { playable } from './position.ts';
import type { Evening, UnderWay } from './state.ts';

export function aheadOf(session: UnderWay, now: EpochMs): Ahead {
  const endsAt =
    session.clock.kind === 'held' ? now + Math.max(0, session.clock.remaining) : session.clock.endsAt;
  return {
    from: epochMs(Math.max(now, endsAt)),
    remaining: playable(session).flatMap((index) => (index > session.at ? (session.cues[index] ?? []) : [])),
    unfitted: unfittedOf(session),
    habits: habitsNow(session),
  };
}

/** What earlier evenings and this one so far say of the room. */
export const habitsNow = ({
  habits,
  cues,
  timeline,
}: Pick<Evening, 'habits' | 'cues' | 'timeline'>): Habits => learn(habits, livedSoFar(cues, timeline));

/** The lengths from which a new fitting starts. A discussion that was cut to a minute stays at that. */
export const unfittedOf = ({ fitted, shortTalks }: Pick<Evening, 'fitted' | 'shortTalks'>): Lengths =>
  (fitted ?? []).filter(({ cue }) => !shortTalks.some((talk) => talk.cue === cue));

/** [P13] The fit to an end; `lengths` are those that become others, `was` is what undoing gives back. */
export function fitTo(session: UnderWay, endsAt: EpochMs, now: EpochMs): Fit & { readonly was: Lengths } {
  const ahead = aheadOf(session, now);
  const { changes, was, ...fit } = fitAhead(ahead, endsAt);
  const kept = (session.fitted ?? []).filter((each) => !ahead.unfitted.includes(each));
  return { ...fit, lengths: changes, was: [...was, ...kept] };
}
