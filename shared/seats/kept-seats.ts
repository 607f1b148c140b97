import type { SeatPass } from './seat-link.ts';

/** A seat as this device remembers it. */
export interface KeptSeat extends SeatPass {
  /** Code and title as far as this device has learnt them: a seat link carries neither. */
  readonly code: string | null;
  readonly title: string | null;
  /** The cautions have been read on this device. */
  readonly cautioned: boolean;
}

/** The calls of Web Storage that are used. */
export type DeviceStorage = Pick<Storage, 'getItem' | 'setItem'>;

const shelf = 'quietpour.seats';
/** A regular guest comes to many evenings and wants to see them side by side; for ever they need not pile up. */
const mostKept = 60;

/** Newest first; empty where the device refuses or something else wrote there. */
export function keptSeats(storage: () => DeviceStorage): KeptSeat[] {
  try {
    const list: unknown = JSON.parse(storage().getItem(shelf) ?? '[]');
    return Array.isArray(list) ? list.filter(isKeptSeat) : [];
  } catch {
    return [];
  }
}

/** Puts a seat in front, in place of what was known of it. @returns whether the device will remember it */
export function keepSeat(seat: KeptSeat, storage: () => DeviceStorage): boolean {
  const others = keptSeats(storage).filter((each) => !sameSeat(each, seat));
  return store([seat, ...others].slice(0, mostKept), storage);
}

export function forgetSeat(seat: SeatPass, storage: () => DeviceStorage): boolean {
  return store(
    keptSeats(storage).filter((each) => !sameSeat(each, seat)),
    storage,
  );
}

const sameSeat = (one: SeatPass, other: SeatPass): boolean =>
  one.tasting === other.tasting && one.key === other.key;

function store(seats: readonly KeptSeat[], storage: () => DeviceStorage): boolean {
  try {
    storage().setItem(shelf, JSON.stringify(seats));
    return true;
  } catch {
    return false;
  }
}

export function isKeptSeat(value: unknown): value is KeptSeat {
  if (typeof value !== 'object' || value === null) return false;
  const seat = value as Record<string, unknown>;
  const textOrNull = (part: unknown) => part === null || typeof part === 'string';
  return (
    typeof seat.tasting === 'string' &&
    typeof seat.key === 'string' &&
    textOrNull(seat.code) &&
    textOrNull(seat.title) &&
    typeof seat.cautioned === 'boolean'
  );
}
