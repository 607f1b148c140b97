import { nanoid } from 'nanoid';
import type { NoteKeep } from '../../shared/follower/notebook.ts';
import { isKeptSeat, type KeptSeat } from '../../shared/seats/kept-seats.ts';
import type { SeatPass } from '../../shared/seats/seat-link.ts';

/** Reading the property itself throws where a browser refuses storage, so it is asked for only inside a try. */
export const deviceStorage = (): Storage => localStorage;

/** Words that the server has not taken yet, apart for each seat. */
export function noteKeep(pass: SeatPass): NoteKeep {
  const name = nameOnDevice('notes', pass);
  return {
    read() {
      try {
        return deviceStorage().getItem(name);
      } catch {
        return null;
      }
    },
    write(text) {
      try {
        deviceStorage().setItem(name, text);
        return true;
      } catch {
        return false;
      }
    },
  };
}

/** What is kept on a device for a seat: its notes, and the room as it was last seen. */
export const nameOnDevice = (what: 'notes' | 'stage', { tasting, key }: SeatPass): string =>
  `quietpour.${what}.${tasting}.${key.slice(0, 8)}`;

export function forgetNotes(pass: SeatPass): void {
  try {
    for (const what of ['notes', 'stage'] as const) deviceStorage().removeItem(nameOnDevice(what, pass));
  } catch {
    // A device that keeps nothing has nothing to forget.
  }
}

/** Whether this device keeps anything at all. */
export function keepsThings(): boolean {
  try {
    const probe = `quietpour.probe.${nanoid(6)}`;
    deviceStorage().setItem(probe, probe);
    deviceStorage().removeItem(probe);
    return true;
  } catch {
    return false;
  }
}

/** The seat of this tab: outlives a reload even where the device keeps nothing, and never stands in the address. */
export function seatOfTab(): KeptSeat | undefined {
  const state: unknown = history.state;
  const seat = typeof state === 'object' && state !== null && 'seat' in state ? state.seat : undefined;
  return isKeptSeat(seat) ? seat : undefined;
}

/** Puts the tab at the seat's address, without a trace of the key in it. */
export const sitTab = (seat: KeptSeat): void => history.replaceState({ seat }, '', '/seat');

/** Something that this device remembers as set or not; where it keeps nothing it is not set. */
export const deviceFlag = (name: string) => ({
  isSet(): boolean {
    try {
      return deviceStorage().getItem(name) !== null;
    } catch {
      return false;
    }
  },
  set(wanted: boolean): void {
    try {
      if (wanted) deviceStorage().setItem(name, '1');
      else deviceStorage().removeItem(name);
    } catch {
      // It holds until the page is closed.
    }
  },
});
