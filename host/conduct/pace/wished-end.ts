import type { Work } from '../../../core/running-order/cue-traits.ts';
import { type Ahead, fitAhead, givenUp, paceOf } from '../../../core/running-order/fit-ahead.ts';
import type { ForecastTime } from '../../../core/running-order/forecast.ts';
import { type Offer, offersFor } from '../../../core/running-order/offers.ts';
import { type EpochMs, epochMs } from '../../../core/units.ts';

const minute = 60_000;

/** How an evening stands to the end that its host wishes for. Whole minutes; nothing is said of less than one. */
export type Lateness =
  | { readonly is: 'in-time' }
  /** It may run past, but probably will not. */
  | { readonly is: 'tight'; readonly minutes: number }
  | { readonly is: 'late'; readonly minutes: number };

export function latenessOf({ likely, late }: ForecastTime, wished: EpochMs): Lateness {
  const past = (at: EpochMs) => Math.round((at - wished) / minute);
  if (past(likely) >= 1) return { is: 'late', minutes: past(likely) };
  if (past(late) >= 1) return { is: 'tight', minutes: past(late) };
  return { is: 'in-time' };
}

/** What the server would answer to a wish for this end. */
export type Preview =
  /** Nothing has to be shortened, and nothing is shortened that could be given back. */
  | { readonly is: 'fits-already' }
  /** It has been fitted to this end already. */
  | { readonly is: 'stands' }
  /** Room for what was shortened before: the lengths grow again. */
  | { readonly is: 'gives-back'; readonly minutes: number }
  | { readonly is: 'shortens'; readonly work: readonly Given[] }
  | {
      readonly is: 'too-long';
      readonly work: readonly Given[];
      /** Seconds by which even the shortest evening is too long. */
      readonly over: number;
      readonly offers: readonly Offer[];
      /** Whether the running order already stands at its shortest. */
      readonly atFloors: boolean;
    };
interface Given {
  readonly work: Work;
  readonly seconds: number;
}

/** Pours that are offered to be dropped at once: the choice among all of them is behind Glasses. */
const poursOffered = 2;

export function previewOf(ahead: Ahead, endsAt: EpochMs): Preview {
  const fit = fitAhead(ahead, endsAt);
  const work = givenUp(ahead, fit).map(([kind, seconds]) => ({ work: kind, seconds }));
  if (fit.status === 'too-long') {
    const offers = offersFor(ahead.remaining, paceOf(ahead));
    const pours = offers.filter(({ kind }) => kind === 'drop-pour').slice(0, poursOffered);
    return {
      is: 'too-long',
      work,
      over: fit.over,
      offers: offers.filter((offer) => offer.kind !== 'drop-pour' || pours.includes(offer)),
      atFloors: fit.changes.length === 0,
    };
  }
  if (fit.changes.length === 0 && fit.lengths.length === 0) return { is: 'fits-already' };
  if (fit.changes.length === 0) return { is: 'stands' };
  if (fit.lengths.length > 0) return { is: 'shortens', work };
  const lengths = new Map(ahead.remaining.map(({ id, ideal }) => [id, ideal]));
  const back = fit.changes.reduce(
    (sum, { cue, seconds }) => sum + seconds - (lengths.get(cue) ?? seconds),
    0,
  );
  return { is: 'gives-back', minutes: Math.round(back / 60) };
}

/** The next whole five minutes from a moment on, for a first proposal. */
export const roundedUp = (at: EpochMs, minutes = 5): EpochMs =>
  epochMs(Math.ceil(at / (minutes * minute)) * minutes * minute);

/**
 * The moment nearest to `near` at which a clock of this device shows `time` (HH:MM), so that 00:15 at eleven in the
 * evening is after midnight and 21:30 at ten is half an hour ago; undefined for what is no time.
 * @param wallTime tells what a clock shows, as HH:MM
 */
export function nearestAt(
  time: string,
  near: EpochMs,
  wallTime: (at: EpochMs) => string = onThisDevice,
): EpochMs | undefined {
  if (!/^([01]\d|2[0-3]):[0-5]\d$/.test(time)) return undefined;
  const start = Math.floor(near / minute);
  // Minute by minute and outwards: right also on a night when the clocks are changed.
  for (let step = 0; step <= 13 * 60; step += 1) {
    for (const at of [start + step, start - step]) {
      if (wallTime(epochMs(at * minute)) === time) return epochMs(at * minute);
    }
  }
  return undefined;
}

export function onThisDevice(at: EpochMs): string {
  const date = new Date(at);
  const two = (value: number) => String(value).padStart(2, '0');
  return `${two(date.getHours())}:${two(date.getMinutes())}`;
}
