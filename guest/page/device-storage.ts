import { nanoid } from 'nanoid';
import type { NoteKeep } from '../../shared/follower/notebook.ts';
import { keepText, keptText } from '../../shared/page/device-storage.ts';
import { isKeptSeat, type KeptSeat } from '../../shared/seats/kept-seats.ts';
import type { SeatPass } from '../../shared/seats/seat-link.ts';

/** Words that the server has not taken yet, apart for each seat. */
export function noteKeep(pass: SeatPass): NoteKeep {
  const name = nameOnDevice('notes', pass);
  return { read: () => keptText(name), write: (text) => keepText(name, text) };
}

/** What is kept on a device for a seat: its notes, and the room as it was last seen. */
export const nameOnDevice = (what: 'notes' | 'stage', { tasting, key }: SeatPass): string =>
  `quietpour.${what}.${tasting}.${key.slice(0, 8)}`;

export function forgetNotes(pass: SeatPass): void {
  for (const what of ['notes', 'stage'] as const) keepText(nameOnDevice(what, pass), null);
}

/** Whether this device keeps anything at all. */
export function keepsThings(): boolean {
  const probe = `quietpour.probe.${nanoid(6)}`;
  return keepText(probe, probe) && keepText(probe, null);
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
  isSet: (): boolean => keptText(name) !== null,
  /** Where it keeps nothing this holds until the page is closed. */
  set: (wanted: boolean): void => void keepText(name, wanted ? '1' : null),
});
