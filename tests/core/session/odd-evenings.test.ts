import { describe, expect, it } from 'vitest';
import { deadlinesOf } from '../../../core/session/deadlines.ts';
import { cueNow } from '../../../core/session/state.ts';
import { hostView } from '../../../core/session/views/host.ts';
import { epochMs } from '../../../core/units.ts';
import { timetableOf } from '../../../host/conduct/pace/timetable.ts';
import { wallAt } from '../../../host/plan/wall-time.ts';
import { doorsAt, EveningTold } from '../../support/evening.ts';
import { forecastOf } from '../../support/forecast.ts';
import { planOf } from '../../support/plans.ts';

const crowd = (count: number) => Array.from({ length: count }, (_, index) => `guest-${index}`);
const byRoom = (share: number) => planOf(3, { pacing: { by: 'room', share } });

describe('rooms of any size', () => {
  it('[P3] of one guest: the room goes on with that one, at the floor at the earliest', () => {
    const evening = new EveningTold(byRoom(0.5)).sit('ada').goTo('ash/first/nose').ready('ada');
    expect(evening.cue).toBe('ash/first/nose');
    evening.wait(cueNow(evening.underWay).floor);
    expect(evening.clock('WeighRoom')).toBe('done');
    expect(evening.cue).toBe('ash/first/sip');
  });

  it('[P3] of two hundred: the hundred-and-fiftieth moves it on at three of four, and nobody before', () => {
    const names = crowd(200);
    const evening = new EveningTold(byRoom(0.75))
      .sit(...names)
      .goTo('ash/first/nose')
      .wait(60);
    evening.ready(...names.slice(0, 149));
    expect(evening.cue).toBe('ash/first/nose');
    evening.ready(...names.slice(149, 150));
    expect(evening.cue).toBe('ash/first/sip');
    expect(evening.underWay.signals).toEqual({});
  });

  it('[P3] in which nobody is ready: it waits for the host, by the clock it goes on', () => {
    const room = new EveningTold(byRoom(0.5)).sit('ada', 'ben').goTo('ash/first/nose').wait(7200);
    for (const asks of ['WeighRoom', 'ExpireCue'] as const) expect(room.clock(asks)).toBe('nothing-to-do');
    expect(room.next().cue).toBe('ash/first/sip');
    const clock = new EveningTold(planOf(3, { pacing: { by: 'clock' } })).sit('ada').goTo('ash/first/nose');
    expect(clock.wait(600).clock('ExpireCue')).toBe('done');
  });

  it('[P2, P8] without a host at a gate: nothing moves it, however long and however ready all are', () => {
    for (const pacing of [{ by: 'host' }, { by: 'clock' }, { by: 'room', share: 0.5 }] as const) {
      const evening = new EveningTold(planOf(6, { pacing })).sit('ada', 'ben').goTo('flight-1/break');
      evening.hostPresent = false;
      evening.ready('ada', 'ben').wait(86_400);
      expect(deadlinesOf(evening.underWay)).toEqual([]);
      for (const asks of ['WeighRoom', 'ExpireCue'] as const)
        expect(evening.clock(asks)).toBe('nothing-to-do');
      expect(evening.cue).toBe('flight-1/break');
      // The forecast waits with it and is never in the past.
      const { end } = forecastOf(evening.underWay, epochMs(evening.now));
      expect(end.early).toBeGreaterThan(evening.now);
    }
  });
});

describe('nights on which the wall clock does what it likes', () => {
  /** The same evening, its doors opened at another instant: the walls of a zone, and the seconds between. */
  function walls(opened: string, zone: string) {
    const evening = new EveningTold();
    const by = Date.parse(opened) - doorsAt;
    const view = hostView(evening.underWay, 1);
    if (view.status !== 'under-way') throw new Error('It is under way.');
    const { clock } = view;
    if (clock.kind !== 'running') throw new Error('It runs.');
    const moved = {
      ...view,
      timeline: view.timeline.map((entry) => ({ ...entry, at: epochMs(entry.at + by) })),
      clock: { ...clock, endsAt: epochMs(clock.endsAt + by) },
    };
    const { starts, end } = timetableOf(evening.underWay.cues, moved, epochMs(doorsAt + by));
    const instants = [...starts.values(), end.likely];
    return {
      apart: instants.map((at) => at - by),
      walls: instants.map((at) => wallAt(at, zone)),
    };
  }
  const usual = walls('2031-06-06T19:00:00+02:00', 'Europe/Vienna');

  it('ends the same time later across midnight, on the next day', () => {
    const night = walls('2031-06-06T23:20:00+02:00', 'Europe/Vienna');
    expect(night.apart).toEqual(usual.apart);
    expect([night.walls[0]?.date, night.walls.at(-1)?.date]).toEqual(['2031-06-06', '2031-06-07']);
  });

  it('ends the same time later when the clocks are put back in the middle of it', () => {
    // Central European Time: on 26 October 2031 the clocks go from 03:00 back to 02:00, at 01:00 UTC.
    const night = walls('2031-10-26T02:20:00+02:00', 'Europe/Vienna');
    expect(night.apart).toEqual(usual.apart);
    const times = night.walls.map(({ time }) => time);
    expect(times.toSorted()).not.toEqual(times);
    expect(times.every((time) => time >= '02:00')).toBe(true);
  });

  it('ends the same time later when an hour is left out', () => {
    // On 30 March 2031 they go from 02:00 to 03:00, at 01:00 UTC.
    const night = walls('2031-03-30T01:20:00+01:00', 'Europe/Vienna');
    expect(night.apart).toEqual(usual.apart);
    expect(night.walls.some(({ time }) => time.startsWith('02:'))).toBe(false);
    expect(night.walls.some(({ time }) => time.startsWith('03:'))).toBe(true);
  });
});
