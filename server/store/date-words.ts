import { epochMs } from '../../core/units.ts';

/** As a host may type the day of an evening: in words of both languages, and in figures as each country writes them. */
const ways: readonly (readonly [string, Intl.DateTimeFormatOptions])[] = [
  ['en-GB', { dateStyle: 'full' }],
  ['de', { dateStyle: 'full' }],
  ['en-US', { year: 'numeric', month: 'numeric', day: 'numeric' }],
  ['de', { year: 'numeric', month: 'numeric', day: 'numeric' }],
  ['en-GB', { year: 'numeric', month: '2-digit', day: '2-digit' }],
  ['sv', { year: 'numeric', month: '2-digit', day: '2-digit' }],
];

/** @param startsAt an instant in ISO 8601; what is none has no words
 *  @param timeZone of the host; in one that nobody knows the day is that of UTC */
export function dateWords(startsAt: string, timeZone: string): string {
  const at = epochMs(Date.parse(startsAt));
  if (Number.isNaN(at)) return '';
  try {
    return written(at, timeZone);
  } catch {
    return written(at, 'UTC');
  }
}

const written = (at: number, timeZone: string): string =>
  ways.map(([locale, how]) => new Intl.DateTimeFormat(locale, { ...how, timeZone }).format(at)).join(' · ');
