import { describe, expect, it } from 'vitest';
import { seatId } from '../../../core/ids.ts';
import { readySeatsNeeded } from '../../../core/running-order/room-share.ts';
import { weighRoom } from '../../../core/session/decide/pace.ts';
import { aheadOf } from '../../../core/session/fitting.ts';
import { cueNow } from '../../../core/session/state.ts';
import { durationMs, type EpochMs, epochMs } from '../../../core/units.ts';
import { latenessOf, nearestAt, previewOf, roundedUp } from '../../../host/conduct/pace/wished-end.ts';
import { waitsForLastOnes } from '../../../host/conduct/table/readiness.ts';
import { wallAt } from '../../../host/plan/wall-time.ts';
import { EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';

const minutes = (count: number): EpochMs => epochMs(Date.UTC(2031, 4, 9, 21) + count * 60_000);

describe('how an evening stands to its wished end', () => {
  const end = { early: minutes(20), likely: minutes(30), late: minutes(45) };
  it('is said as soon as it may run past, and plainly when it probably will', () => {
    expect(latenessOf(end, minutes(45))).toEqual({ is: 'in-time' });
    expect(latenessOf(end, minutes(40))).toEqual({ is: 'tight', minutes: 5 });
    expect(latenessOf(end, minutes(30))).toEqual({ is: 'tight', minutes: 15 });
    expect(latenessOf(end, minutes(18))).toEqual({ is: 'late', minutes: 12 });
  });
  it('makes no word of less than half a minute', () => {
    const exact = { early: minutes(30), likely: minutes(30), late: minutes(30) };
    expect(latenessOf(exact, epochMs(minutes(30) - 29_000))).toEqual({ is: 'in-time' });
  });
});

describe('a preview of a wished end', () => {
  const ahead = (evening: EveningTold) => aheadOf(evening.underWay, epochMs(evening.now));

  it('of an end that is past says by how much it fails and what could be left out, most saved first', () => {
    const evening = new EveningTold(planOf(6)).goTo('ash/first/nose');
    const preview = previewOf(ahead(evening), epochMs(evening.now - 3_600_000));
    if (preview.is !== 'too-long') throw new Error('It cannot fit.');
    expect(preview.over).toBeGreaterThan(3600);
    expect(preview.offers.map(({ kind }) => kind).toSorted()).toEqual([
      'drop-closing-pass',
      'drop-pour',
      'drop-pour',
      'shorten-discussions',
    ]);
    expect(preview.offers.map(({ saves }) => saves)).toEqual(
      preview.offers.map(({ saves }) => saves).toSorted((a, b) => b - a),
    );
  });

  it('[C2] takes nothing from spit, and says of each kind of work how much it gives', () => {
    const evening = new EveningTold(planOf(6)).goTo('ash/first/nose');
    const before = ahead(evening);
    const whole = before.remaining.reduce((sum, { ideal }) => sum + ideal, 0);
    const endsAt = epochMs(before.from + whole * 900);
    const preview = previewOf(before, endsAt);
    if (preview.is !== 'shortens') throw new Error('It fits when shortened.');
    evening.host({ type: 'FitTo', endsAt });
    const after = ahead(evening).remaining.reduce((sum, { ideal }) => sum + ideal, 0);
    expect(preview.work.reduce((sum, { seconds }) => sum + seconds, 0)).toBe(whole - after);
  });
});

describe('a typed time', () => {
  const vienna = (at: EpochMs) => wallAt(at, 'Europe/Vienna').time;
  const at = (iso: string) => epochMs(Date.parse(iso));

  it('is the nearest such time: after midnight for an evening that goes there, and past where it is past', () => {
    const eleven = at('2031-05-09T23:10:00+02:00');
    expect(nearestAt('00:15', eleven, vienna)).toBe(at('2031-05-10T00:15:00+02:00'));
    expect(nearestAt('22:30', eleven, vienna)).toBe(at('2031-05-09T22:30:00+02:00'));
    expect(nearestAt('24:00', eleven, vienna)).toBeUndefined();
    expect(nearestAt('', eleven, vienna)).toBeUndefined();
  });

  it('is right on the nights on which the clocks are changed', () => {
    // Central European Time: on 30 March 2031 clocks go from 02:00 to 03:00, on 26 October from 03:00 to 02:00.
    const spring = at('2031-03-30T01:40:00+01:00');
    expect(nearestAt('03:30', spring, vienna)).toBe(at('2031-03-30T03:30:00+02:00'));
    const jumped = nearestAt('02:30', spring, vienna);
    expect(jumped === undefined || Math.abs(jumped - spring) > 11 * 3_600_000).toBe(true);
    const autumn = at('2031-10-26T01:30:00+02:00');
    expect(nearestAt('02:30', autumn, vienna)).toBe(at('2031-10-26T02:30:00+02:00'));
    expect(nearestAt('03:30', autumn, vienna)).toBe(at('2031-10-26T03:30:00+01:00'));
  });

  it('is proposed in whole five minutes', () => {
    expect(roundedUp(minutes(21))).toBe(minutes(25));
    expect(roundedUp(minutes(25))).toBe(minutes(25));
  });
});

describe('a room that waits for its last ones', () => {
  const clock = (left: number) => ({
    asksReady: true,
    clock: { kind: 'held', startsAt: epochMs(0), remaining: durationMs(left) } as const,
    reminder: null,
  });
  const counts = (here: number, ready: number, moreTime = 0) => ({ here, ready, moreTime });
  const now = epochMs(0);

  it('offers to ask them when half are ready or the time is over', () => {
    expect(waitsForLastOnes(clock(5000), counts(8, 3), now)).toBe(false);
    expect(waitsForLastOnes(clock(5000), counts(8, 4), now)).toBe(true);
    expect(waitsForLastOnes(clock(-1), counts(8, 0), now)).toBe(true);
    expect(waitsForLastOnes(clock(-1), counts(1, 0), now)).toBe(true);
  });

  it('hurries nobody who has asked for time, nobody twice, and nobody who is not here', () => {
    expect(waitsForLastOnes(clock(-1), counts(8, 5, 3), now)).toBe(false);
    const nudged = { ...clock(-1), reminder: { kind: 'nudge', at: now } as const };
    expect(waitsForLastOnes(nudged, counts(8, 4), now)).toBe(false);
    expect(waitsForLastOnes(clock(-1), counts(0, 0), now)).toBe(false);
  });

  it('asks where guests can say that they are ready, and nowhere else', () => {
    const silent = { ...clock(-1), asksReady: false };
    expect(waitsForLastOnes(silent, counts(8, 4), now)).toBe(false);
  });
});

describe('[P3] the share of a room in numbers', () => {
  it('is what the session goes by, for 1 to 200 guests', () => {
    const rooms = [1, 2, 3, 7, 8, 10, 40, 200];
    for (const here of rooms) {
      for (const share of [0.5, 0.6, 0.7, 0.75, 1]) {
        const needed = readySeatsNeeded(share, here);
        const told = new EveningTold(planOf(3, { pacing: { by: 'room', share } }));
        const names = Array.from({ length: here }, (_, index) => `g${index}`);
        told.sit(...names).goTo('ash/first/nose');
        const weigh = (ready: number) => {
          const signals = Object.fromEntries(
            names.slice(0, ready).map((name) => [seatId(name), 'ready' as const]),
          );
          const moment = { ...told.wait(0).moment, now: epochMs(told.now + 600_000) };
          return weighRoom({ ...told.underWay, signals }, cueNow(told.underWay).id, moment).ok;
        };
        expect(weigh(needed), `${needed} of ${here} at ${share}`).toBe(true);
        expect(weigh(needed - 1), `${needed - 1} of ${here} at ${share}`).toBe(false);
      }
    }
    expect(readySeatsNeeded(0.7, 10)).toBe(7);
  });
});
