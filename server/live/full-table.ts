import type { SeatId, TastingId } from '../../core/ids.ts';
import { mayGiveWay } from '../../core/session/seating.ts';
import type { Session } from '../../core/session/state.ts';
import type { EpochMs } from '../../core/units.ts';
import type { Store } from '../store/store.ts';
import type { Presence } from './presence.ts';

/** A page connects as soon as its seat is taken; a phone in a bad spot within a minute. In ms. */
const neverCame = 60_000;
/** Who has been here may be outside, or have a phone that sleeps. In ms. */
const cameAndWent = 10 * 60_000;

/** Tells whether a seat has written anything, or shares something. */
export const notesIn =
  ({ notebooks }: Pick<Store, 'notebooks'>, tasting: TastingId) =>
  (seat: SeatId): boolean => {
    const { entries, consents } = notebooks.read(tasting, seat);
    return entries.length > 0 || consents.length > 0;
  };

/**
 * How a newcomer finds the table: with a chair that is free, with one that gives way to them [S3], or full. Those who have
 * left or were removed keep their notes but not their chair; in all there may be five times as many as chairs.
 */
export function chairFor(
  session: Session,
  seatLimit: number,
  presence: Pick<Presence, 'whereabouts'>,
  hasNotes: ReturnType<typeof notesIn>,
  now: EpochMs,
): 'free' | 'full' | { readonly inPlaceOf: SeatId } {
  if (session.status !== 'under-way') return 'free';
  const seats = Object.values(session.seats);
  const onChairs = seats.filter((seat) => seat.presence === 'seated' || seat.presence === 'waiting');
  const noChair = onChairs.length >= seatLimit;
  if (!noChair && seats.length < 5 * seatLimit) return 'free';
  const longAway = (noChair ? onChairs : seats).find((seat) => {
    if (!mayGiveWay(session, seat)) return false;
    const { here, since, cameEver } = presence.whereabouts(seat.id, seat.takenAt);
    return !here && now - since >= (cameEver ? cameAndWent : neverCame) && !hasNotes(seat.id);
  });
  return longAway === undefined ? 'full' : { inPlaceOf: longAway.id };
}
