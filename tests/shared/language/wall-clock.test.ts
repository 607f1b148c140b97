import { describe, expect, it, vi } from 'vitest';
import { wallTimeIn } from '../../../core/planning/invitation/invitation-time.ts';
import { epochMs } from '../../../core/units.ts';
import { dayAndTime, figuresOfDay, timeOfDay } from '../../../shared/language/wall-clock.ts';
import { zones } from '../../support/moment.ts';

const at = (time: string) => Date.parse(`2028-06-14T${time}:00Z`);
/** CLDR puts a narrow space before AM and PM in some versions. */
const plain = (text: string) => text.replaceAll(/\s/g, ' ');

describe('a time of day', () => {
  // Unicode CLDR, short time formats: HH:mm for en-GB, de, fr; h:mm a for en-US, en-AU, hi.
  it.each([
    ['en-GB', '01:08', '00:05', '14:52'],
    ['de', '01:08', '00:05', '14:52'],
    ['fr', '01:08', '00:05', '14:52'],
    ['en-US', '1:08 AM', '12:05 AM', '2:52 PM'],
    ['en', '1:08 AM', '12:05 AM', '2:52 PM'],
  ])('has one form in %s', (locale, ...written) => {
    const shown = ['01:08', '00:05', '14:52'].map((time) => plain(timeOfDay(at(time), locale, 'UTC')));
    expect(shown).toEqual(written);
  });

  // The platform's own short time, where nobody chose the parts, is the outside word for what a locale is used to.
  it.each(['en-GB', 'de', 'de-AT', 'fr', 'nl', 'pl', 'en-US', 'en-AU', 'en-IN', 'hi'])(
    'is the short time of the locale %s, at every hour and in every zone',
    (locale) => {
      for (const timeZone of zones) {
        const short = new Intl.DateTimeFormat(locale, { timeStyle: 'short', timeZone });
        for (let hour = 0; hour < 24; hour += 1) {
          const instant = at('00:08') + hour * 3_600_000;
          expect(timeOfDay(instant, locale, timeZone)).toBe(short.format(instant));
        }
      }
    },
  );

  it('stands under others of its length in a column where people count to 24', () => {
    const column = (locale: string) =>
      Array.from({ length: 24 }, (_, hour) => figuresOfDay(at('00:08') + hour * 3_600_000, locale));
    for (const locale of ['en-GB', 'de', 'cs', 'es', 'fi'])
      expect(new Set(column(locale).map(({ length }) => length))).toEqual(new Set([5]));
    expect(column('en-US').every((figures) => /^(1[0-2]|[1-9]):[03]8$/.test(figures))).toBe(true);
  });

  it('makes no writer of its own for each of the many times of a running order', () => {
    figuresOfDay(at('01:08'), 'en-GB');
    const made = vi.spyOn(Intl, 'DateTimeFormat');
    for (let minute = 0; minute < 90; minute += 1) figuresOfDay(at('01:08') + minute * 60_000, 'en-GB');
    expect(made).not.toHaveBeenCalled();
    made.mockRestore();
  });

  it('is the same beside a day, and in an invitation', () => {
    const early = at('01:08');
    const day = { weekday: 'short', day: 'numeric', month: 'short' } as const;
    expect(dayAndTime(early, 'en-GB', day, 'UTC')).toContain('01:08');
    expect(plain(dayAndTime(early, 'en-US', day, 'UTC'))).toContain('1:08 AM');
    for (const locale of ['en-GB', 'en-US', 'de'])
      expect(wallTimeIn(epochMs(early), 'UTC', locale).time).toBe(timeOfDay(early, locale, 'UTC'));
  });

  it('is the device’s own where a zone is not known', () => {
    const early = at('01:08');
    expect(timeOfDay(early, 'de', 'Atlantis/Harbour')).toBe(timeOfDay(early, 'de'));
  });
});
