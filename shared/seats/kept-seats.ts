import { type DeviceStorage, keepJson, keptJson } from '../page/device-storage.ts';
import type { SeatPass } from './seat-link.ts';

/** A seat as this device remembers it. */
export interface KeptSeat extends SeatPass {
  /** Code and title as far as this device has learnt them: a seat link carries neither. */
  readonly code: string | null;
  readonly title: string | null;
  /** The cautions have been read on this device. */
  readonly cautioned: boolean;
  /** The guest's four words, where this device made them, and whether they were looked at. */
  readonly words?: readonly string[];
  readonly wordsRead?: boolean;
  /** The link that this device came by, and the one that it made for others: each is found again, not made twice. */
  readonly cameBy?: string;
  /** This device is there for the call alone; another one of the seat shows the evening. */
  readonly callOnly?: boolean;
  readonly ownLink?: string;
}

const shelf = 'quietpour.seats';
/** A regular guest comes to many evenings and wants to see them side by side; for ever they need not pile up. */
const mostKept = 60;

/** Newest first; empty where the device refuses or something else wrote there. */
export function keptSeats(storage?: () => DeviceStorage): KeptSeat[] {
  const list = keptJson(shelf, storage);
  return Array.isArray(list) ? list.filter(isKeptSeat) : [];
}

/** Puts a seat in front, in place of what was known of it. @returns whether the device will remember it */
export const keepSeat = (seat: KeptSeat, storage?: () => DeviceStorage): boolean =>
  keepJson(shelf, [seat, ...othersThan(seat, storage)].slice(0, mostKept), storage);

export const forgetSeat = (seat: SeatPass, storage?: () => DeviceStorage): boolean =>
  keepJson(shelf, othersThan(seat, storage), storage);

const othersThan = (seat: SeatPass, storage?: () => DeviceStorage): KeptSeat[] =>
  keptSeats(storage).filter(({ tasting, key }) => tasting !== seat.tasting || key !== seat.key);

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
