import type { HostView } from '../../core/session/views/host.ts';
import type { HostSeat } from '../../core/session/views/host-seats.ts';

interface PlaceTaken {
  /** From 1, as seats were taken; the same number chooses a seat's own order of glasses. */
  readonly place: number;
  readonly seat: HostSeat;
}

/** Who sits at which place in the room. Guests at home have a number too, but no place at the table. */
const placesTaken = (view: HostView | null): PlaceTaken[] =>
  (view?.seats ?? [])
    .map((seat, index) => ({ place: index + 1, seat }))
    .filter(({ seat }) => !seat.remote && seat.presence !== 'removed');

export const leftHandedPlaces = (view: HostView | null): number[] =>
  placesTaken(view)
    .filter(({ seat }) => seat.leftHanded)
    .map(({ place }) => place);
