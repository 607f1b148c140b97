import type { CueId, PourId } from '../ids.ts';
import { pourOf } from '../running-order/cue.ts';
import { cueNow, type Evening, type Seat, type UnderWay } from './state.ts';

type Seats = Evening['seats'];

/**
 * What all seats together come to, reckoned once for each record of them: most taps change none, and there may be thousands.
 * Never to be asked of a record that a replay still writes to.
 */
function ofAll<Result>(reckon: (seats: readonly Seat[]) => Result): (evening: { seats: Seats }) => Result {
  const known = new WeakMap<Seats, { readonly is: Result }>();
  return ({ seats }) => {
    const found = known.get(seats) ?? { is: reckon(Object.values(seats)) };
    known.set(seats, found);
    return found.is;
  };
}

export const seated = ofAll<readonly Seat[]>((all) => all.filter((seat) => seat.presence === 'seated'));

export const remoteSeated = ofAll(
  (all) => all.filter((seat) => seat.presence === 'seated' && seat.remote).length,
);

/** When the newest seat was taken: 0 where there is none. */
export const lastTakenAt = ofAll((all) => all.reduce((last, { takenAt }) => Math.max(last, takenAt), 0));

/**
 * [S3] Whether this seat has given no sign, as far as the session knows: notes and devices are not in it. Whom the host
 * has removed keeps their seat, so that they do not come back as somebody else.
 */
export const mayGiveWay = ({ signals }: UnderWay, seat: Seat): boolean =>
  seat.presence !== 'removed' &&
  !seat.groundRulesAccepted &&
  !seat.cautionsRead &&
  !seat.onlyWater &&
  seat.kit.length === 0 &&
  signals[seat.id] === undefined;

/**
 * [S5] Somebody who sat down when the room had gone past the ground rules, and has not agreed to them: they read cautions and
 * rules before anything else.
 */
export function readsRulesFirst(
  { cues, timeline }: Pick<Evening, 'cues' | 'timeline'>,
  { groundRulesAccepted, takenAt }: Pick<Seat, 'groundRulesAccepted' | 'takenAt'>,
): boolean {
  const place = (id: CueId | undefined) => cues.findIndex((cue) => cue.id === id);
  const stoodAt = place(timeline.findLast(({ at }) => at <= takenAt)?.cue);
  return !groundRulesAccepted && stoodAt > cues.findIndex(({ kind }) => kind === 'ground-rules');
}

/** [F3] What somebody who sits down now has missed: every pour the room has behind it. */
export function missedBy(session: UnderWay): PourId[] {
  const current = pourOf(cueNow(session));
  return session.reached.filter((pour) => pour !== current && !session.dropped.includes(pour));
}
