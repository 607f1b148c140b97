import { describe, expect, it } from 'vitest';
import { cueId, seatId } from '../../../core/ids.ts';
import { aheadOf } from '../../../core/session/fitting.ts';
import { epochMs } from '../../../core/units.ts';
import { EveningTold } from '../../support/evening.ts';
import { forecastOf } from '../../support/forecast.ts';
import { planOf } from '../../support/plans.ts';

const remote = (evening: EveningTold, name: string) => {
  const ask = { type: 'TakeSeat', seat: seatId(name), name, leftHanded: false, remote: true } as const;
  evening.attempt({ by: 'newcomer', ask });
  evening.present.push(seatId(name));
};

describe('fitting to an end', () => {
  it('[P13] reckons what the room took against the lengths it was given, not against those of a later fit', () => {
    const evening = new EveningTold(planOf(6)).goTo('welcome');
    while (evening.cue !== 'cedar/water') evening.wait(evening.idealMs / 1000).next();
    evening.goTo('practice/swirl');
    const before = aheadOf(evening.underWay, epochMs(evening.now)).habits;
    expect(evening.host({ type: 'FitTo', endsAt: epochMs(evening.now + 30 * 60_000) })).toBe('done');
    expect(aheadOf(evening.underWay, epochMs(evening.now)).habits).toEqual(before);
  });

  it('[P13] shortens what is still to come, keeps the cue in hand, and is undone to the second', () => {
    const evening = new EveningTold(planOf(6)).goTo('ash/first/nose');
    const before = evening.underWay.cues;
    const left = evening.left;
    const { end } = forecastOf(evening.underWay, epochMs(evening.now));
    const wanted = epochMs(end.likely - 10 * 60_000);
    expect(evening.host({ type: 'FitTo', endsAt: wanted })).toBe('done');
    const after = evening.underWay.cues;
    expect(after.slice(0, 11)).toEqual(before.slice(0, 11));
    expect(after.some((cue, index) => cue.ideal < (before[index]?.ideal ?? 0))).toBe(true);
    expect(evening.left).toBe(left);
    for (const cue of after) if (cue.kind === 'break') expect(cue.ideal, '[C2]').toBeGreaterThanOrEqual(300);
    expect(evening.host({ type: 'UndoFit' })).toBe('done');
    expect(evening.underWay.cues).toEqual(before);
    expect(evening.host({ type: 'UndoFit' })).toBe('not-fitted');
  });

  it('[P13] does what it can for an end that is past, and nothing where there is time enough', () => {
    const evening = new EveningTold(planOf(6));
    expect(evening.host({ type: 'FitTo', endsAt: epochMs(evening.now + 1e9) })).toBe('nothing-to-do');
    expect(evening.host({ type: 'FitTo', endsAt: epochMs(evening.now - 1) })).toBe('done');
    for (const cue of evening.underWay.cues.slice(1)) {
      if (cue.stretch > 0) expect(cue.ideal).toBe(cue.floor);
      expect(cue.ideal, '[C2]').toBeGreaterThanOrEqual(cue.floor);
    }
    expect(evening.host({ type: 'FitTo', endsAt: epochMs(evening.now) })).toBe('nothing-to-do');
  });
});

describe('waiting for remote guests', () => {
  it('[P12] by the clock: the deadline waits for the last remote guest, who then moves the room', () => {
    const evening = new EveningTold(planOf(3, { pacing: { by: 'clock' } })).sit('ada');
    remote(evening, 'far');
    evening.host({ type: 'WaitForRemote', wait: true });
    expect(evening.host({ type: 'WaitForRemote', wait: true })).toBe('nothing-to-do');
    evening.goTo('ash/first/nose').wait(600);
    expect(evening.clock('ExpireCue')).toBe('nothing-to-do');
    evening.ready('far');
    expect(evening.cue).toBe('ash/first/sip');
  });

  it('[P7, P12] moves nobody out of an overtime that nobody watched', () => {
    const evening = new EveningTold(planOf(3, { pacing: { by: 'clock' } }));
    remote(evening, 'far');
    evening.host({ type: 'WaitForRemote', wait: true });
    evening.goTo('ash/first/nose').wait(600);
    evening.overtimeWaits = true;
    evening.ready('far');
    expect(evening.clock('WeighRoom')).toBe('nothing-to-do');
    evening.hostPresent = false;
    expect(evening.clock('ExpireCue')).toBe('nothing-to-do');
    expect(evening.cue).toBe('ash/first/nose');
    expect(evening.next().cue).toBe('ash/first/sip');
  });

  it('[P12] by the room: a full room waits too, but not for a remote guest who is cut off', () => {
    const evening = new EveningTold(planOf(3, { pacing: { by: 'room', share: 0.5 } })).sit(
      'ada',
      'ben',
      'cleo',
    );
    remote(evening, 'far');
    evening.host({ type: 'WaitForRemote', wait: true });
    evening.goTo('ash/first/nose').wait(60).ready('ada', 'ben', 'cleo');
    expect(evening.cue).toBe('ash/first/nose');
    evening.present = evening.present.filter((seat) => seat !== 'far');
    expect(evening.clock('WeighRoom')).toBe('done');
    expect(evening.cue).toBe('ash/first/sip');
  });

  it('[P12] leaves Next to the host, and does not bind without one', () => {
    const evening = new EveningTold(planOf(3, { pacing: { by: 'clock' } }));
    remote(evening, 'far');
    evening.host({ type: 'WaitForRemote', wait: true });
    evening.goTo('ash/first/nose').next();
    expect(evening.cue).toBe('ash/first/sip');
    evening.wait(600);
    evening.hostPresent = false;
    expect(evening.clock('ExpireCue')).toBe('done');
  });

  it('ticks off a kit item by item', () => {
    const evening = new EveningTold();
    remote(evening, 'far');
    const check = (item: 'vials' | 'water', ready: boolean) =>
      evening.guest('far', { type: 'CheckKit', item, ready });
    expect(check('vials', true)).toBe('done');
    expect(check('vials', true)).toBe('nothing-to-do');
    expect(check('water', true)).toBe('done');
    expect(check('vials', false)).toBe('done');
    expect(evening.underWay.seats[seatId('far')]?.kit).toEqual(['water']);
  });

  it('nudges as a reminder that goes with the cue', () => {
    const evening = new EveningTold().goTo('ash/first/nose');
    evening.host({ type: 'Remind', kind: 'nudge' });
    expect(evening.underWay.reminder?.kind).toBe('nudge');
    expect(evening.host({ type: 'Advance', from: cueId(evening.cue) })).toBe('done');
    expect(evening.underWay.reminder).toBeNull();
  });
});
