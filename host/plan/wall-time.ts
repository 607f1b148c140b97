/** A date and a time as a clock on the wall of a zone shows them: '2026-11-27' and '19:30'. */
export interface WallTime {
  readonly date: string;
  readonly time: string;
}

const faces = new Map<string, Intl.DateTimeFormat>();
function faceOf(zone: string): Intl.DateTimeFormat {
  const known = faces.get(zone);
  if (known !== undefined) return known;
  const face = new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
  });
  faces.set(zone, face);
  return face;
}

export function zoneIsKnown(zone: string): boolean {
  try {
    faceOf(zone);
    return true;
  } catch {
    return false;
  }
}

/** The wall clock of a zone at an instant; of UTC where this device does not know the zone. */
export function wallAt(epoch: number, zone: string): WallTime {
  const parts = faceOf(zoneIsKnown(zone) ? zone : 'UTC').formatToParts(epoch);
  const of = (type: Intl.DateTimeFormatPartTypes) => parts.find((part) => part.type === type)?.value ?? '00';
  return {
    date: `${of('year').padStart(4, '0')}-${of('month')}-${of('day')}`,
    time: `${of('hour')}:${of('minute')}`,
  };
}

const asIfUtc = ({ date, time }: WallTime): number => Date.parse(`${date}T${time}:00Z`);

/** Whether an evening was planned for more than a day ago: a year was mistyped, or a plan taken from an older one. */
export const isLongPast = (startsAt: string, now: number): boolean => now - Date.parse(startsAt) > 86_400_000;

export type Instant =
  | { readonly is: 'instant'; readonly startsAt: string }
  /** The clocks jump over this time on that day. */
  | { readonly is: 'no-such-time' }
  | { readonly is: 'not-a-date' };

/**
 * The instant at which a zone's clock shows this, as ISO 8601 with that zone's offset; the earlier one where the clock
 * shows it twice.
 */
export function instantOf(wall: WallTime, zone: string): Instant {
  const naive = asIfUtc(wall);
  if (Number.isNaN(naive) || !/^\d{4}-\d\d-\d\d$/.test(wall.date)) return { is: 'not-a-date' };
  const offsetAt = (epoch: number) => asIfUtc(wallAt(epoch, zone)) - Math.floor(epoch / 60_000) * 60_000;
  const day = 86_400_000;
  // Both sides of any change of the clocks near that day; the larger offset gives the earlier instant.
  const offsets = [...new Set([offsetAt(naive - day), offsetAt(naive + day)])].sort((a, b) => b - a);
  const fitting = offsets.find((offset) => offsetAt(naive - offset) === offset);
  if (fitting === undefined) return { is: 'no-such-time' };
  const minutes = Math.round(Math.abs(fitting) / 60_000);
  const two = (value: number) => String(value).padStart(2, '0');
  const sign = fitting < 0 ? '-' : '+';
  const offset = `${sign}${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
  return { is: 'instant', startsAt: `${wall.date}T${wall.time}:00${offset}` };
}
