import { hourAndMinute } from '../../core/time-of-day.ts';

type Style = Intl.DateTimeFormatOptions;

const faces = new Map<string, Intl.DateTimeFormat>();

/**
 * What writes a moment as a locale does.
 * @param timeZone absent, or not known to this device: the device's own
 */
export function faceOf(locale: string, style: Style, timeZone?: string): Intl.DateTimeFormat {
  const key = JSON.stringify([locale, style, timeZone]);
  const known = faces.get(key) ?? faceIn(locale, style, timeZone);
  faces.set(key, known);
  return known;
}

function faceIn(locale: string, style: Style, timeZone: string | undefined): Intl.DateTimeFormat {
  try {
    return new Intl.DateTimeFormat(locale, timeZone === undefined ? style : { ...style, timeZone });
  } catch {
    return new Intl.DateTimeFormat(locale, style);
  }
}

/** The one form of a time of day on screens and paper: `01:08` where people count to 24, `1:08 AM` where to 12. */
export const timeOfDay = (instant: number, locale: string, timeZone?: string): string =>
  faceOf(locale, hourAndMinute(locale), timeZone).format(instant);

/** The same without morning or afternoon, for a narrow column where the hours follow each other anyway. */
export const figuresOfDay = (instant: number, locale: string): string =>
  faceOf(locale, hourAndMinute(locale))
    .formatToParts(instant)
    .filter(({ type }) => type === 'hour' || type === 'minute' || type === 'literal')
    .map(({ value }) => value)
    .join('')
    .trim();

/** A day, as much of it as is asked for, and the time of day. */
export const dayAndTime = (
  instant: number,
  locale: string,
  day: Pick<Style, 'weekday' | 'day' | 'month' | 'year' | 'timeZoneName'>,
  timeZone?: string,
): string => faceOf(locale, { ...day, ...hourAndMinute(locale) }, timeZone).format(instant);
