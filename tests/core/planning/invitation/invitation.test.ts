import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import type { PourId } from '../../../../core/ids.ts';
import {
  invitationFile,
  invitationText,
  plannedLength,
} from '../../../../core/planning/invitation/invitation.ts';
import {
  type CalendarEvent,
  calendarFile,
} from '../../../../core/planning/invitation/invitation-calendar.ts';
import { instantOf, utcStamp, wallTimeIn } from '../../../../core/planning/invitation/invitation-time.ts';
import { compile } from '../../../../core/running-order/compile.ts';
import { durationMs, epochMs } from '../../../../core/units.ts';
import { invitationWords } from '../../../../shared/language/en/invite.ts';
import { planOf } from '../../../support/plans.ts';

const way = { link: 'https://tasting.example/j/ABC234', code: 'ABC234' };
const made = { uid: 'harvest@tasting', revision: 3, now: epochMs(Date.UTC(2027, 0, 2, 3, 4, 5)) };
const event: CalendarEvent = {
  uid: 'harvest@tasting',
  sequence: 1,
  madeAt: epochMs(Date.UTC(2027, 0, 2)),
  startsAt: epochMs(Date.UTC(2027, 2, 12, 18, 30)),
  lasts: durationMs(3 * 3_600_000),
  title: 'An evening',
  place: 'The Old Weighhouse',
  description: '',
  link: way.link,
};

/** As a calendar reads it: by ical.js, a general-purpose parser that has nothing to do with how it was written. */
function read(file: string) {
  const calendar = new ICAL.Component(ICAL.parse(file));
  const events = calendar.getAllSubcomponents('vevent');
  const [only] = events;
  if (only === undefined) throw new Error('There is no event in the file.');
  return { calendar, events, component: only, event: new ICAL.Event(only) };
}
const fileFor = (plan = planOf(6)) => invitationFile(plan, way, invitationWords, made) ?? '';
const octets = (text: string) => new TextEncoder().encode(text).length;

describe('the calendar file', () => {
  it('is read by an independent parser as it was meant', () => {
    const plan = planOf(6, { startsAt: '2027-03-12T19:30:00+01:00', place: 'The Old Weighhouse, upstairs' });
    const { calendar, event: found, component } = read(fileFor(plan));
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
    expect(found.summary).toBe(plan.title);
    expect(found.location).toBe('The Old Weighhouse, upstairs');
    expect(found.uid).toBe('harvest@tasting');
    expect(found.sequence).toBe(3);
    expect(component.getFirstPropertyValue('url')).toBe(way.link);
    expect(found.startDate.zone).toBe(ICAL.Timezone.utcTimezone);
    expect(found.startDate.toUnixTime() * 1000).toBe(Date.UTC(2027, 2, 12, 18, 30));
    expect(found.endDate.toUnixTime() * 1000).toBe(Date.UTC(2027, 2, 12, 18, 30) + plannedLength(plan));
    expect(found.description).toContain('ABC234');
  });

  it('keeps an evening across midnight in one piece', () => {
    const plan = planOf(9, { level: 'devotees', startsAt: '2027-06-30T22:45:00+02:00' });
    const { event: found } = read(fileFor(plan));
    expect(found.startDate.toICALString()).toBe('20270630T204500Z');
    expect(found.endDate.toUnixTime()).toBe(found.startDate.toUnixTime() + plannedLength(plan) / 1000);
    expect(plannedLength(plan)).toBeGreaterThan(2 * 3_600_000);
  });

  // Clocks in the EU go back at 01:00 UTC on the last Sunday of October and forward on that of March (Directive
  // 2000/84/EC, articles 2 and 3): 31 October 2027 and 28 March 2027.
  it.each([
    ['2027-10-31T00:30:00+02:00', '20271030T223000Z', '00:30', 'UTC+2'],
    ['2027-10-31T02:30:00+02:00', '20271031T003000Z', '02:30', 'UTC+2'],
    ['2027-10-31T02:30:00+01:00', '20271031T013000Z', '02:30', 'UTC+1'],
    ['2027-03-28T01:30:00+01:00', '20270328T003000Z', '01:30', 'UTC+1'],
    ['2027-03-28T03:30:00+02:00', '20270328T013000Z', '03:30', 'UTC+2'],
  ])('means the same instant on a day when the clocks change: %s', (startsAt, stamp, time, offset) => {
    const plan = planOf(6, { startsAt, timeZone: 'Europe/Vienna' });
    const { event: found } = read(fileFor(plan));
    expect(found.startDate.toICALString()).toBe(stamp);
    expect(found.endDate.toUnixTime() - found.startDate.toUnixTime()).toBe(plannedLength(plan) / 1000);
    const wall = wallTimeIn(instantOf(startsAt) ?? epochMs(0), 'Europe/Vienna', 'en-GB');
    expect(wall).toMatchObject({ time, offset });
  });

  it('keeps hostile text as text: it comes back whole, and adds nothing to the event', () => {
    const title = 'Peat, smoke; and \\n\r\nATTENDEE:mailto:all@example.org\rBEGIN:VALARM\u2028END:VCALENDAR';
    const plain = 'Peat, smoke; and \\n\nATTENDEE:mailto:all@example.org\nBEGIN:VALARM\nEND:VCALENDAR';
    const { event: found, events, component } = read(calendarFile({ ...event, title, place: title }));
    expect(events).toHaveLength(1);
    expect(found.summary).toBe(plain);
    expect(found.location).toBe(plain);
    expect(found.attendees).toEqual([]);
    expect(component.getAllSubcomponents()).toEqual([]);
  });

  it('holds a link to an address, and leaves out anything else', () => {
    const link = 'https://tasting.example/j/ABC234\r\nX-INJECTED:1';
    expect(calendarFile({ ...event, link })).not.toContain('INJECTED');
    expect(calendarFile({ ...event, link: 'javascript:alert(1)' })).not.toContain('URL');
  });

  it('folds at 75 octets and never inside a character, whatever is typed', () => {
    const typed = fc.string({ unit: 'binary', maxLength: 300 });
    fc.assert(
      fc.property(typed, typed, (title, description) => {
        const file = calendarFile({ ...event, title, description });
        expect(file.endsWith('END:VCALENDAR\r\n')).toBe(true);
        for (const line of file.split('\r\n')) {
          expect(octets(line)).toBeLessThanOrEqual(75);
          expect(line).not.toMatch(/[\r\n]/);
          expect(line).not.toMatch(/\p{Cs}/u);
        }
        expect(Object.keys(fieldsOf(file)).sort()).toEqual(
          Object.keys(
            fieldsOf(calendarFile({ ...event, title: 't', description: description && 'd' })),
          ).sort(),
        );
      }),
    );
  });

  it('brings every visible text back unchanged', () => {
    const visible = fc
      .string({ unit: 'grapheme', maxLength: 200 })
      .filter((text) => !/[\p{Cc}\p{Cs}\u2028\u2029]/u.test(text));
    fc.assert(
      fc.property(visible, (title) => {
        expect(read(calendarFile({ ...event, title })).event.summary).toBe(title);
      }),
    );
  });

  it('is not made while the date is not set', () => {
    expect(invitationFile(planOf(6), way, invitationWords, made)).toBeUndefined();
  });
});

const fieldsOf = (file: string): Record<string, string> =>
  Object.fromEntries(
    file
      .replace(/\r\n /g, '')
      .split('\r\n')
      .map((line) => [line.slice(0, line.indexOf(':')), line]),
  );

describe('times of an invitation', () => {
  it('reads instants as the platform does', () => {
    const moments = fc.date({ min: new Date(0), max: new Date('2199-12-31'), noInvalidDate: true });
    fc.assert(
      fc.property(moments, fc.integer({ min: -14 * 60, max: 14 * 60 }), (moment, minutes) => {
        const whole = new Date(Math.floor(moment.getTime() / 1000) * 1000);
        const wall = new Date(whole.getTime() + minutes * 60_000).toISOString().slice(0, 19);
        const two = (value: number) => String(Math.abs(value)).padStart(2, '0');
        const offset = `${minutes < 0 ? '-' : '+'}${two(Math.trunc(minutes / 60))}:${two(minutes % 60)}`;
        expect(instantOf(wall + offset)).toBe(whole.getTime());
        expect(utcStamp(epochMs(whole.getTime()))).toBe(
          whole.toISOString().replace(/[-:]/g, '').replace(/\.\d+/, ''),
        );
      }),
    );
    expect(instantOf('tomorrow at eight')).toBeUndefined();
  });

  it('tells the offset of the day, with its sign, and takes a zone that nobody knows for UTC', () => {
    const winter = epochMs(Date.UTC(2027, 0, 15, 20));
    expect(wallTimeIn(winter, 'America/St_Johns', 'en-GB')).toMatchObject({
      time: '16:30',
      offset: 'UTC−3:30',
    });
    expect(wallTimeIn(winter, 'Asia/Tokyo', 'en-GB')).toMatchObject({
      day: expect.stringMatching(/Saturday,? 16 January 2027/),
      time: '05:00',
      offset: 'UTC+9',
    });
    expect(wallTimeIn(winter, 'Nowhere/Land', 'en-GB')).toMatchObject({ time: '20:00', offset: 'UTC' });
  });
});

describe('the invitation', () => {
  const plan = planOf(6, {
    blind: true,
    hostName: 'Maren',
    place: 'The old ferry house',
    startsAt: '2027-03-12T19:30:00+01:00',
    timeZone: 'Europe/Vienna',
    callLink: 'https://call.example/room',
    remoteGuests: 2,
    lawOf: 'US',
  });
  const text = invitationText(plan, way, invitationWords);

  it('says what, when, where, how, what to bring, the rules and the cautions', () => {
    for (const part of [
      'Maren',
      plan.title,
      '12 March 2027',
      '19:30',
      'UTC+1',
      'The old ferry house',
      way.link,
      way.code,
      'spit',
      'water',
      'eat before',
      'not tasted drive',
      '21 years',
      'pregnant',
      'medicines',
    ]) {
      expect(text, part).toContain(part);
    }
  });

  const fromHome = { ...way, deviceCheck: 'https://tasting.example/kit/ABC234' };
  const home = invitationText(plan, fromHome, invitationWords);

  it('is of another kind for home: when on every clock, the call, the page to try it, the vials and what to have ready', () => {
    const told =
      'Maren|12 March 2027|18:30 UTC|https://call.example/room|6 vials|numbers only|a cup to spit into|white sheet|eat before|Do not drive|21 years|pregnant|medicines';
    for (const part of [way.link, way.code, fromHome.deviceCheck, ...told.split('|')])
      expect(home, part).toContain(part);
    // Who is at home needs no word of the way there, and who comes none of vials and calls.
    for (const part of ['The old ferry house', 'before you come', 'paper for you', 'way home'])
      expect(home, part).not.toContain(part);
    for (const part of ['vial', 'UTC on', 'call.example', '/kit/', 'At home', 'at home'])
      expect(text, part).not.toContain(part);
  });

  it('says where there is no other call that one sees and hears the table on the same page', () => {
    const { callLink: _, ...without } = plan;
    expect(invitationText(without, fromHome, invitationWords)).toContain('on the same page');
  });

  it('asks to have a vial ready for each glass of an odd one out, whichever of its orders one gets', () => {
    const trial = {
      id: 'odd' as PourId,
      flight: 0,
      a: plan.pours[0]?.id ?? ('' as PourId),
      b: plan.pours[1]?.id ?? ('' as PourId),
      codes: { a: ['112', '113'], b: ['114', '115'] },
    };
    const odd = { ...plan, trials: [trial] } as unknown as typeof plan;
    expect(invitationText(odd, fromHome, invitationWords)).toContain('10 vials');
  });

  it('goes into a calendar of its own kind for home: there, with what to have ready, beside the one for the table', () => {
    const uid = 'harvest-home@tasting';
    const file = invitationFile(plan, fromHome, invitationWords, { ...made, uid }) ?? '';
    const { event: found } = read(file);
    expect(found.uid).toBe(uid);
    expect(found.location).toBe(invitationWords.home.place);
    for (const part of [fromHome.deviceCheck, '6 vials', 'call.example', way.link])
      expect(found.description).toContain(part);
    const table = read(fileFor(plan)).event;
    expect(table.location).toBe('The old ferry house');
    for (const part of ['/kit/', 'vial', 'call.example']) expect(table.description).not.toContain(part);
    expect(found.startDate.toUnixTime()).toBe(table.startDate.toUnixTime());
  });

  it('names no pour, so that nothing blind is told', () => {
    for (const pour of plan.pours) expect(text + home + fileFor(plan)).not.toContain(pour.name);
  });

  it('defers to local law where the country is not known, and has no cautions to drink less of water', () => {
    expect(invitationText({ ...plan, lawOf: 'ZZ' }, way, invitationWords)).toContain('legal age');
    const pours = plan.pours.map((pour) => ({ ...pour, abv: 0 }));
    const dry = invitationText({ ...plan, pours }, way, invitationWords);
    expect(dry).toContain('Nothing we pour contains alcohol');
    expect(dry).not.toContain('not tasted drive');
  });

  it('can be written while nearly everything is open', () => {
    const bare = invitationText(planOf(0, { title: '' }), way, invitationWords);
    expect(bare).toContain('date to be announced');
    expect(bare).not.toMatch(/undefined|null|NaN/);
  });

  it('lasts as long as its cues, rounded up to five minutes', () => {
    const total = compile(plan).reduce((sum, cue) => sum + cue.ideal, 0) * 1000;
    expect(plannedLength(plan) - total).toBeGreaterThanOrEqual(0);
    expect(plannedLength(plan) - total).toBeLessThan(300_000);
    expect(plannedLength(plan) % 300_000).toBe(0);
  });
});
