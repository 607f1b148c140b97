import { hourAndMinute } from '../../time-of-day.ts';
import { type EpochMs, epochMs } from '../../units.ts';

const iso = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2})(?::(\d{2})(?:[.,]\d+)?)?(?:Z|([+-])(\d{2}):?(\d{2}))$/;

/** The instant of a date and time in ISO 8601 with offset, to the second; undefined where it is none. */
export function instantOf(text: string): EpochMs | undefined {
  const [, year, month, day, hour, minute, second = '0', sign, offHours = '0', offMinutes = '0'] =
    iso.exec(text.toUpperCase()) ?? [];
  if (year === undefined) return undefined;
  const wall = Date.UTC(
    Number(year),
    Number(month) - 1,
    Number(day),
    Number(hour),
    Number(minute),
    Number(second),
  );
  const offset = (Number(offHours) * 60 + Number(offMinutes)) * 60_000;
  const instant = wall - (sign === '-' ? -offset : offset);
  return Number.isFinite(instant) ? epochMs(instant) : undefined;
}

/** A moment as it is read off a calendar and a clock in one zone. */
export interface WallTime {
  /** In words, such as `Friday 12 March 2027`. */
  readonly day: string;
  /** `19:30` or `7:30 PM`, as the language counts. */
  readonly time: string;
  /** Difference to UTC as people write it: `UTC+1`, `UTC−3:30`, `UTC`. */
  readonly offset: string;
  /** `Central European Standard Time`, where the language has a name for it. */
  readonly zone: string;
}

/**
 * The wall clock of a zone at an instant, by the rules that hold there on that day. A zone that is not known counts as
 * UTC. Source of the rules: the IANA time zone database in the platform's Intl (ECMA-402).
 */
export function wallTimeIn(instant: EpochMs, timeZone: string, language: string): WallTime {
  const zone = knownZone(timeZone) ? timeZone : 'UTC';
  const format = (options: Intl.DateTimeFormatOptions) =>
    new Intl.DateTimeFormat(language, { ...options, timeZone: zone });
  const nameOf = (style: 'longOffset' | 'long') =>
    format({ timeZoneName: style, hour: 'numeric' })
      .formatToParts(instant)
      .find((part) => part.type === 'timeZoneName')?.value ?? 'UTC';
  return {
    day: format({ weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' }).format(instant),
    time: format(hourAndMinute(language)).format(instant),
    offset: plainOffset(nameOf('longOffset')),
    zone: nameOf('long'),
  };
}

/** `GMT+01:00` becomes `UTC+1`, with a true minus sign. */
function plainOffset(named: string): string {
  const [, sign, hours, minutes] = /([+-])(\d{1,2}):?(\d{2})?/.exec(named) ?? [];
  if (sign === undefined || Number(hours) + Number(minutes ?? 0) === 0) return 'UTC';
  const rest = minutes === undefined || minutes === '00' ? '' : `:${minutes}`;
  return `UTC${sign === '-' ? '−' : '+'}${Number(hours)}${rest}`;
}

function knownZone(timeZone: string): boolean {
  try {
    new Intl.DateTimeFormat('en', { timeZone });
    return true;
  } catch {
    return false;
  }
}

/** `19:30` in UTC as calendars want it, `20270312T183000Z` (RFC 5545, 3.3.5, form 2). */
export function utcStamp(instant: EpochMs): string {
  const parts = new Intl.DateTimeFormat('en-GB', {
    timeZone: 'UTC',
    calendar: 'gregory',
    numberingSystem: 'latn',
    hourCycle: 'h23',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    second: '2-digit',
  }).formatToParts(instant);
  const part = (type: Intl.DateTimeFormatPartTypes) => parts.find((each) => each.type === type)?.value ?? '';
  const year = part('year').padStart(4, '0');
  return `${year}${part('month')}${part('day')}T${part('hour')}${part('minute')}${part('second')}Z`;
}
