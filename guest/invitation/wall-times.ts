import { dayAndTime } from '../../shared/language/wall-clock.ts';

/** A moment as two people read it who may be in different zones. */
export interface WallTimes {
  /** On the host's clock; with the name of its zone where the guest's own clock shows another time. */
  readonly host: string;
  /** On the guest's own clock; null where it shows the same. */
  readonly own: string | null;
}

const day = { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' } as const;

/** Day and time in a zone; in this device's own where the zone is not known to it, or not given. */
const wallTime = (moment: number, locale: string, timeZone?: string, named = false): string =>
  dayAndTime(moment, locale, { ...day, ...(named ? { timeZoneName: 'short' } : {}) }, timeZone);

/** `own`: the guest's zone; the device's where it is not given. */
export function wallTimes(startsAt: string, hostZone: string, locale: string, own?: string): WallTimes {
  const moment = Date.parse(startsAt);
  const here = wallTime(moment, locale, own);
  return wallTime(moment, locale, hostZone) === here
    ? { host: here, own: null }
    : { host: wallTime(moment, locale, hostZone, true), own: wallTime(moment, locale, own, true) };
}
