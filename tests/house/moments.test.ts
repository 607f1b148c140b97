import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { coveringMoments } from '../hours/covering-moments.ts';
import { inTable } from '../hours/moment-table.ts';
import { timeOfDayFiles, touchesTimeOfDay } from '../hours/time-of-day-files.ts';
import {
  changes,
  drawMoment,
  locales,
  type Moment,
  momentNow,
  momentOf,
  moments,
  zones,
} from '../support/moment.ts';
import { trackedTexts } from './tree.ts';

const root = new URL('../..', import.meta.url).pathname;

const wall = (at: number, timeZone: string) =>
  new Intl.DateTimeFormat('sv', { timeZone, dateStyle: 'short', timeStyle: 'short' }).format(at);

const timeOf = (name: string) => name.split(', ')[0] ?? '';

describe('the moments of the tests', () => {
  it('have every time of day in every zone and locale', () => {
    expect(moments).toHaveLength(8 * zones.length * locales.length);
    expect(new Set(moments.map(({ name }) => name)).size).toBe(moments.length);
  });

  it('begin when the clocks of their zone show what their name says', () => {
    for (const { name, zone, begins } of moments) {
      const [, time] = /^(\d\d:\d\d)/.exec(name) ?? [];
      if (time !== undefined) expect(wall(begins, zone)).toContain(time);
      if (name.includes('28 February')) expect(wall(begins, zone)).toContain('-02-28');
      if (name.includes('31 December')) expect(wall(begins, zone)).toContain('-12-31');
    }
  });

  it('know when clocks change, as this machine’s own zones do', () => {
    for (const [zone, { spring, autumn }] of Object.entries(changes)) {
      const home = zone === 'UTC' || zone === 'Asia/Kolkata' ? 'Europe/Vienna' : zone;
      const hourOf = (at: number) => Number(wall(at, home).slice(-5, -3));
      // Forward from 01:59 to 03:00, back from 02:59 to 02:00 or, in Newfoundland, from 01:59 to 01:00.
      expect(hourOf(spring) - hourOf(spring - 1)).toBe(2);
      expect(hourOf(autumn) - hourOf(autumn - 1)).toBe(0);
      expect(wall(autumn - 1, home)).toMatch(/:59$/);
      expect(wall(autumn, home)).toMatch(/:00$/);
    }
  });

  it('are covered by few: each time, zone and locale meets each of the others', () => {
    const met = coveringMoments().map((seed) => momentOf(String(seed)));
    const times = new Set(moments.map(({ name }) => timeOf(name)));
    const pairs = (one: (of: Moment) => string, other: (of: Moment) => string) =>
      new Set(met.map((moment) => `${one(moment)} with ${other(moment)}`)).size;
    const [time, zone, locale] = [
      ({ name }: Moment) => timeOf(name),
      (moment: Moment) => moment.zone,
      (moment: Moment) => moment.locale,
    ] as const;
    expect(met).toHaveLength(32);
    expect(pairs(time, zone)).toBe(times.size * zones.length);
    expect(pairs(time, locale)).toBe(times.size * locales.length);
    expect(pairs(zone, locale)).toBe(zones.length * locales.length);
  });

  it('are run through with the files that write or read a time, and only with those', () => {
    const chosen = timeOfDayFiles();
    for (const file of ['e2e/pace', 'e2e/before', 'shared/language/wall-clock', 'house/moments'])
      expect(chosen).toContain(`tests/${file}.test.ts`);
    expect(chosen.length).toBeLessThan(60);
    expect(touchesTimeOfDay("expect(head).toBe('ends 2:08')")).toBe(false);
    expect(touchesTimeOfDay('await tablet.text(like(words.ends(aTime))).waitFor()')).toBe(true);
  });

  it('are told in a table, with what went wrong by its seed', () => {
    const table = inTable(
      new Map([
        [0, { well: true, seconds: 12 }],
        [4, { well: false, seconds: 48 }],
      ]),
    );
    expect(table.split('\n')).toEqual([
      expect.stringMatching(/^ +UTC +America\/St_Johns +Asia\/Kolkata +Pacific\/Auckland$/),
      expect.stringMatching(/^00:05 +en-GB 12 s +en-US WRONG \(4\)$/),
      ...Array.from({ length: 7 }, () => expect.stringMatching(/^[\w: ]+$/)),
      '2 moments in 1 minutes, 1 of them wrong.',
    ]);
  });

  it('are drawn once for a run and can be asked for again', () => {
    const environment: NodeJS.ProcessEnv = { MOMENT: '57' };
    expect(drawMoment(environment)).toBe(momentOf('57'));
    expect(environment.TZ).toBe(momentOf('57').zone);
    for (const seed of ['96', '-1', 'noon', '']) expect(() => momentOf(seed)).toThrow(/from 0 to 95/);
  });

  it.runIf(momentNow() !== undefined)('are what this run’s clock and zone show', () => {
    const moment = momentOf(process.env.MOMENT ?? '');
    // A zone that was renamed is known here by its older name.
    const named = new Intl.DateTimeFormat('en', { timeZone: moment.zone }).resolvedOptions().timeZone;
    expect(Intl.DateTimeFormat().resolvedOptions().timeZone).toBe(named);
    const into = Date.now() - moment.begins;
    expect(into).toBeGreaterThanOrEqual(0);
    expect(into).toBeLessThan(600_000);
    expect(Date.parse(new Date().toISOString()) - moment.begins).toBeLessThan(600_000);
    expect(Date.parse(Date()) - moment.begins).toBeLessThan(600_000);
  });
});

it('has one place that knows how a time of day is written', () => {
  const writers = trackedTexts()
    .filter((file) => /^(core|shared|server|host|guest)\//.test(file))
    .filter((file) =>
      /\bhour: '|timeStyle|toLocaleTimeString|toLocaleString/.test(readFileSync(join(root, file), 'utf8')),
    );
  expect(writers).toEqual([
    'core/planning/invitation/invitation-time.ts',
    'core/time-of-day.ts',
    'host/plan/wall-time.ts',
  ]);
});
