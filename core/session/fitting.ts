import { traitsOf } from '../running-order/cue-traits.ts';
import { type Ahead, fitAhead, leftOf } from '../running-order/fit-ahead.ts';
import { type Habits, learn, livedSoFar } from '../running-order/forecast.ts';
import type { Fit, Lengths } from '../running-order/repace.ts';
import type { Tempo } from '../running-order/tempo.ts';
import { durationMs, type EpochMs, later } from '../units.ts';
import { playable } from './position.ts';
import { remoteSeated, seated } from './seating.ts';
import { cueNow, type Evening, type UnderWay } from './state.ts';

export function aheadOf(session: UnderWay, now: EpochMs): Ahead {
  const { clock, enteredAt } = session;
  const left = clock.kind === 'held' ? clock.remaining : clock.endsAt - now;
  const order = playable(session);
  const dropped = !order.includes(session.at);
  return {
    // A host may stand on a cue of a pour that was dropped: its time passes, but it is no cue of the room any more.
    from: dropped ? later(now, durationMs(Math.max(0, left))) : now,
    current: dropped ? null : leftOf(cueNow(session), left, now - enteredAt),
    remaining: order.flatMap((index) => (index > session.at ? (session.cues[index] ?? []) : [])),
    unfitted: unfittedOf(session),
    habits: habitsNow(session, tempoOf(session)),
    tempo: tempoOf(session),
  };
}

/** What earlier evenings and this one so far say of the room. */
export const habitsNow = (
  { habits, cues, timeline }: Pick<Evening, 'habits' | 'cues' | 'timeline'>,
  tempo?: Tempo,
): Habits => learn(habits, livedSoFar(cues, timeline, tempo));

/** Until the first glass those count who are still to come; from then on those who are here. */
export function tempoOf(session: UnderWay): Tempo {
  const { plan, pacing, waitForRemote } = session;
  const { part } = traitsOf(cueNow(session));
  const early = part === 'gathering' || part === 'opening';
  const all = seated(session);
  const remote = remoteSeated(session);
  return {
    pacing,
    level: plan.level,
    guests: early ? Math.max(all.length, plan.guests + plan.remoteGuests) : all.length,
    awaited: !waitForRemote ? 0 : early ? Math.max(remote, plan.remoteGuests) : remote,
  };
}

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
