import type { HostView, RoomView } from '../../core/session/views/host.ts';
import type { HostSeat } from '../../core/session/views/host-seats.ts';
import { type Parts, withChange } from '../wire/parts.ts';
import type { SeatsChange } from '../wire/protocol.ts';

/** The room and its seats, which a host's device is told of apart, as one view again. */
export function joinRoomAndSeats(receive: (view: HostView) => void) {
  let room: RoomView | null = null;
  let seats: Parts<HostSeat> = new Map();
  const tell = (): void => {
    if (room !== null) receive({ ...room, seats: [...seats.values()] });
  };
  return {
    room(view: RoomView): void {
      room = view;
      tell();
    },
    seats({ version, anew, withRoom, ...change }: SeatsChange): void {
      seats = withChange(anew ? new Map() : seats, change);
      if (withRoom || room === null) return;
      room = { ...room, version };
      tell();
    },
  };
}
