import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { instantOf, isLongPast, wallAt } from '../../../host/plan/wall-time.ts';

const at = (date: string, time: string, zone: string) => instantOf({ date, time }, zone);

it.each([
  ['2020-11-27T19:00:00+01:00', true],
  ['2026-11-26T18:59:00+00:00', true],
  // The evening itself, and the night after it.
  ['2026-11-27T19:00:00+00:00', false],
  ['2026-11-26T22:00:00+00:00', false],
  ['2027-01-01T19:00:00+00:00', false],
])('an evening planned for %s is told to be past: %s', (startsAt, past) => {
  expect(isLongPast(startsAt, Date.parse('2026-11-27T20:00:00Z'))).toBe(past);
});

describe('a time on the wall of a zone', () => {
  // Rules of the tz database: the European Union changes at 01:00 UTC on the last Sundays of March and October.
  it.each([
    ['2026-11-27', '19:00', 'Europe/Berlin', '2026-11-27T19:00:00+01:00'],
    ['2026-07-03', '19:30', 'Europe/Berlin', '2026-07-03T19:30:00+02:00'],
    ['2026-07-03', '19:30', 'Asia/Kathmandu', '2026-07-03T19:30:00+05:45'],
    ['2026-07-03', '19:30', 'America/St_Johns', '2026-07-03T19:30:00-02:30'],
    ['2026-07-03', '19:30', 'UTC', '2026-07-03T19:30:00+00:00'],
    // It comes twice in that night; the earlier one is summer time.
    ['2026-10-25', '02:30', 'Europe/Berlin', '2026-10-25T02:30:00+02:00'],
    ['2026-10-25', '03:00', 'Europe/Berlin', '2026-10-25T03:00:00+01:00'],
  ])('%s %s in %s', (date, time, zone, startsAt) => {
    expect(at(date, time, zone)).toEqual({ is: 'instant', startsAt });
  });

  it('that the clocks jump over does not exist', () => {
    expect(at('2026-03-29', '02:30', 'Europe/Berlin')).toEqual({ is: 'no-such-time' });
    expect(at('2026-03-08', '02:30', 'America/New_York')).toEqual({ is: 'no-such-time' });
  });

  it.each(['', '2026-13-01', '2026-02', 'tomorrow'])('needs a whole date, and %s is none', (date) => {
    expect(at(date, '19:00', 'UTC')).toEqual({ is: 'not-a-date' });
  });

  it('comes back from its instant', () => {
    const zones = fc.constantFrom(
      'Europe/Berlin',
      'America/New_York',
      'Australia/Lord_Howe',
      'Asia/Kathmandu',
      'UTC',
    );
    fc.assert(
      fc.property(zones, fc.integer({ min: Date.UTC(2000, 0), max: Date.UTC(2060, 0) }), (zone, epoch) => {
        const wall = wallAt(epoch, zone);
        const instant = instantOf(wall, zone);
        if (instant.is !== 'instant') throw new Error(`${zone} ${wall.date} ${wall.time} was not found`);
        expect(wallAt(Date.parse(instant.startsAt), zone)).toEqual(wall);
      }),
    );
  });
});
