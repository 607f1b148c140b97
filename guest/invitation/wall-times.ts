/** A moment as two people read it who may be in different zones. */
export interface WallTimes {
  /** On the host's clock; with the name of its zone where the guest's own clock shows another time. */
  readonly host: string;
  /** On the guest's own clock; null where it shows the same. */
  readonly own: string | null;
}

const parts = {
  weekday: 'long',
  day: 'numeric',
  month: 'long',
  year: 'numeric',
  hour: 'numeric',
  minute: '2-digit',
} as const;

/** Day and time in a zone; in this device's own where the zone is not known to it, or not given. */
function wallTime(moment: Date, locale: string, timeZone?: string, named = false): string {
  const style = { ...parts, ...(named ? { timeZoneName: 'short' as const } : {}) };
  try {
    return new Intl.DateTimeFormat(locale, { ...style, ...(timeZone ? { timeZone } : {}) }).format(moment);
  } catch {
    return new Intl.DateTimeFormat(locale, style).format(moment);
  }
}

/** `own`: the guest's zone; the device's where it is not given. */
export function wallTimes(startsAt: string, hostZone: string, locale: string, own?: string): WallTimes {
  const moment = new Date(startsAt);
  const here = wallTime(moment, locale, own);
  return wallTime(moment, locale, hostZone) === here
    ? { host: here, own: null }
    : { host: wallTime(moment, locale, hostZone, true), own: wallTime(moment, locale, own, true) };
}
