import type { DurationMs, EpochMs } from '../../units.ts';
import { later } from '../../units.ts';
import { utcStamp } from './invitation-time.ts';

/** One evening for a calendar. Texts are as people typed them: whatever they hold, they stay text. */
export interface CalendarEvent {
  /** The same for every file of the same tasting, so that a newer one replaces what a calendar has. */
  readonly uid: string;
  /** Grows with every change of the plan (RFC 5545, 3.8.7.4). */
  readonly sequence: number;
  readonly madeAt: EpochMs;
  readonly startsAt: EpochMs;
  readonly lasts: DurationMs;
  readonly title: string;
  readonly place: string;
  readonly description: string;
  readonly link: string;
}

/** The largest line in octets, without its line break (RFC 5545, 3.1). */
const longestLine = 75;

/**
 * The evening as an iCalendar file (RFC 5545), all times in UTC. Lines end in CRLF and are folded at 75 octets, never
 * inside a character; control characters, which no TEXT may hold, are left out.
 *
 * Ours, because the libraries cost more than these lines: `ics` brings a second schema library, `ical-generator` wants
 * Node 22, and core takes no packages. `ical.js` reads every file that the tests make.
 */
export function calendarFile(event: CalendarEvent): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Quietpour//Invitation//EN',
    'CALSCALE:GREGORIAN',
    'METHOD:PUBLISH',
    'BEGIN:VEVENT',
    `UID:${escaped(event.uid)}`,
    `SEQUENCE:${Math.max(0, Math.trunc(event.sequence))}`,
    `DTSTAMP:${utcStamp(event.madeAt)}`,
    `DTSTART:${utcStamp(event.startsAt)}`,
    `DTEND:${utcStamp(later(event.startsAt, event.lasts))}`,
    `SUMMARY:${escaped(event.title)}`,
    ...(event.place === '' ? [] : [`LOCATION:${escaped(event.place)}`]),
    ...(event.description === '' ? [] : [`DESCRIPTION:${escaped(event.description)}`]),
    ...(isAddress(event.link) ? [`URL:${event.link}`] : []),
    'STATUS:CONFIRMED',
    'END:VEVENT',
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

/** A value of type TEXT (RFC 5545, 3.3.11). Every kind of line break becomes the escaped one. */
function escaped(text: string): string {
  return text
    .replace(/\r\n|[\r\n\u0085\u2028\u2029\v\f]/g, '\n')
    .replace(/(?![\n\t])[\p{Cc}\p{Cs}]/gu, '')
    .replace(/[\\;,]/g, (special) => `\\${special}`)
    .replace(/\n/g, '\\n');
}

/** A URI holds no white space and no control character, so it cannot begin a line of its own. */
const isAddress = (link: string): boolean => /^https?:\/\/[!-~]+$/.test(link);

function folded(line: string): string {
  const parts: string[] = [];
  let part = '';
  let octets = 0;
  for (const character of line) {
    const size = octetsOf(character);
    if (octets + size > longestLine) {
      parts.push(part);
      part = '';
      // The space that begins a continued line counts too.
      octets = 1;
    }
    part += character;
    octets += size;
  }
  return [...parts, part].join('\r\n ');
}

/** Octets of one code point in UTF-8 (RFC 3629). */
function octetsOf(character: string): number {
  const point = character.codePointAt(0) ?? 0;
  if (point < 0x80) return 1;
  if (point < 0x800) return 2;
  return point < 0x10000 ? 3 : 4;
}
