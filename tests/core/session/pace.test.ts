import { describe, expect, it } from 'vitest';
import { cueId } from '../../../core/ids.ts';
import { deadlinesOf } from '../../../core/session/deadlines.ts';
import { seconds } from '../../../core/units.ts';
import { ash, birch, cedar, EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';

const atNose = () => new EveningTold().goTo('ash/first/nose');

describe('pace', () => {
  it('[P1] leaves a cue once, however often Next is tapped', () => {
    const evening = atNose();
    const tap = { type: 'Advance', from: cueId('ash/first/nose') } as const;
    expect(evening.host(tap)).toBe('done');
    expect(evening.host(tap)).toBe('moved-on');
    expect(evening.cue).toBe('ash/first/sip');
  });

  it('[P1] goes back from the cue it names only, and not before the beginning', () => {
    const evening = atNose();
    expect(evening.host({ type: 'GoBack', from: cueId('ash/first/nose') })).toBe('done');
    expect(evening.host({ type: 'GoBack', from: cueId('ash/first/nose') })).toBe('moved-on');
    expect(evening.cue).toBe('ash/first/look');
    evening.goTo('gathering');
    expect(evening.host({ type: 'GoBack', from: cueId('gathering') })).toBe('at-start');
  });

  it('[P1] ends at the farewell', () => {
    const evening = new EveningTold().goTo('farewell');
    expect(evening.host({ type: 'Advance', from: cueId('farewell') })).toBe('at-end');
  });

  it.each(['host', 'clock', 'room'] as const)('[P2] keeps the room at a gate when paced by the %s', (by) => {
    const evening = new EveningTold(planOf(6, { pacing: by === 'room' ? { by, share: 0.5 } : { by } })).sit(
      'ada',
    );
    evening.goTo('flight-1/break').wait(10_000);
    expect(evening.clock('ExpireCue')).toBe('nothing-to-do');
    evening.ready('ada');
    evening.hostPresent = false;
    expect(evening.clock('ExpireCue')).toBe('nothing-to-do');
    expect(evening.clock('WeighRoom')).toBe('nothing-to-do');
    expect(evening.cue).toBe('flight-1/break');
    expect(deadlinesOf(evening.session)).toEqual([]);
  });

  it('[P3] by the host: a deadline passes and the room waits', () => {
    const evening = atNose();
    expect(evening.wait(evening.idealMs / 1000).clock('ExpireCue')).toBe('nothing-to-do');
    expect(evening.cue).toBe('ash/first/nose');
  });

  it('[P4] moves nothing while the clock is held, by whatever the room is paced and however ready it is', () => {
    for (const pacing of [{ by: 'clock' }, { by: 'room', share: 0.5 }] as const) {
      const evening = new EveningTold(planOf(3, { pacing })).sit('ada').goTo('ash/first/nose');
      evening.host({ type: 'Hold' });
      evening.wait(600).ready('ada');
      for (const hostPresent of [true, false]) {
        evening.hostPresent = hostPresent;
        expect(evening.clock('ExpireCue')).toBe('nothing-to-do');
        expect(evening.clock('WeighRoom')).toBe('nothing-to-do');
      }
      expect(evening.cue).toBe('ash/first/nose');
    }
  });

  it('[P4] runs again from what was left when it was held', () => {
    const evening = atNose().wait(10);
    evening.host({ type: 'Hold' });
    evening.wait(300).host({ type: 'Resume' });
    expect(evening.underWay.clock).toEqual({
      kind: 'running',
      endsAt: evening.now + evening.idealMs - 10_000,
    });
  });

  it('[P4] runs on when it is given time', () => {
    const evening = atNose().wait(10);
    evening.host({ type: 'GiveTime', seconds: seconds(30) });
    const endsAt = evening.now + evening.idealMs + 20_000;
    expect(evening.underWay.clock).toEqual({ kind: 'running', endsAt });
  });

  it('[P12] is not moved by a remote guest who is ready where nothing is paced by the clock', () => {
    const evening = new EveningTold(planOf(3, { pacing: { by: 'host' } })).sit('ada').goTo('ash/first/nose');
    evening.host({ type: 'WaitForRemote', wait: true });
    evening.hostPresent = false;
    expect(evening.wait(600).clock('WeighRoom')).toBe('nothing-to-do');
  });

  it('[P3] by the clock: a cue ends at its deadline and not a millisecond before', () => {
    const evening = new EveningTold(planOf(3, { pacing: { by: 'clock' } })).goTo('ash/first/nose');
    evening.now += evening.idealMs - 1;
    expect(evening.clock('ExpireCue')).toBe('nothing-to-do');
    evening.now += 1;
    expect(evening.clock('ExpireCue')).toBe('done');
    expect(evening.cue).toBe('ash/first/sip');
    expect(evening.clock('ExpireCue', 'ash/first/nose')).toBe('moved-on');
  });

  it('[P3] by the room: at the chosen share of those who are here, and never before the floor', () => {
    const evening = new EveningTold(planOf(3, { pacing: { by: 'room', share: 0.7 } }));
    evening.sit(...'abcdefghijkl'.split('')).goTo('ash/first/nose');
    evening.present = evening.present.filter((seat) => seat !== 'k' && seat !== 'l');
    evening.ready('a', 'b', 'c', 'd', 'e', 'f', 'g');
    expect(evening.cue).toBe('ash/first/nose');
    expect(deadlinesOf(evening.session).map((each) => each.ask.type)).toEqual(['ExpireCue', 'WeighRoom']);
    evening.wait(15);
    expect(evening.clock('WeighRoom')).toBe('done');
    expect(evening.cue).toBe('ash/first/sip');
    evening.wait(12).ready('a', 'b', 'c', 'd', 'e', 'f');
    expect(evening.cue).toBe('ash/first/sip');
    evening.ready('g');
    expect(evening.cue).toBe('ash/first/spit');
  });

  it('[P3] by the room: an empty room is never ready', () => {
    const evening = new EveningTold(planOf(3, { pacing: { by: 'room', share: 0.5 } })).sit('ada');
    evening.goTo('ash/first/nose').wait(60);
    evening.present = [];
    expect(evening.clock('WeighRoom')).toBe('nothing-to-do');
  });

  it('[P4] holds and resumes to the millisecond', () => {
    const evening = atNose();
    evening.now += 12_345;
    const left = evening.left;
    expect(evening.host({ type: 'Hold' })).toBe('done');
    expect(evening.host({ type: 'Hold' })).toBe('already-held');
    expect(deadlinesOf(evening.session)).toEqual([]);
    evening.wait(3600);
    expect(evening.clock('ExpireCue')).toBe('nothing-to-do');
    expect(evening.left).toBe(left);
    expect(evening.host({ type: 'Resume' })).toBe('done');
    expect(evening.host({ type: 'Resume' })).toBe('not-held');
    expect(evening.left).toBe(left);
  });

  it('[P4] gives more time while it runs, while it is held, and from now when it is over', () => {
    const evening = atNose();
    const before = evening.left;
    evening.host({ type: 'GiveTime', seconds: seconds(60) });
    expect(evening.left).toBe(before + 60_000);
    evening.host({ type: 'Hold' });
    evening.host({ type: 'GiveTime', seconds: seconds(60) });
    expect(evening.left).toBe(before + 120_000);
    evening.host({ type: 'Resume' });
    evening.wait(1000);
    expect(evening.left).toBeLessThan(0);
    evening.host({ type: 'GiveTime', seconds: seconds(60) });
    expect(evening.left).toBe(60_000);
  });

  it('[P8] goes on without the host to the next gate, and waits there', () => {
    const evening = new EveningTold(planOf(3, { closingPass: false }))
      .sit('ada')
      .goTo('cedar/writing/write/finish');
    evening.hostPresent = false;
    evening.wait(600);
    expect(evening.clock('ExpireCue')).toBe('done');
    expect(evening.cue).toBe('cedar/water');
    evening.wait(600);
    expect(evening.clock('ExpireCue')).toBe('done');
    expect(evening.cue).toBe('flight-1/discussion');
    evening.wait(6000);
    expect(evening.clock('ExpireCue')).toBe('nothing-to-do');
  });

  it('[P19] lets the steps of a glass run and waits at its end, with Next always ahead of the clock', () => {
    const evening = new EveningTold(planOf(3, { pacing: { by: 'steps' } })).goTo('ash/first/nose');
    evening.now += evening.idealMs - 1;
    expect(evening.clock('ExpireCue')).toBe('nothing-to-do');
    evening.now += 1;
    expect(evening.clock('ExpireCue')).toBe('done');
    expect(evening.cue).toBe('ash/first/sip');
    evening.next();
    expect(evening.clock('ExpireCue', 'ash/first/sip')).toBe('moved-on');
    evening.host({ type: 'Hold' });
    expect(evening.wait(600).clock('ExpireCue')).toBe('nothing-to-do');
    evening.host({ type: 'Resume' });
    evening.host({ type: 'GiveTime', seconds: seconds(60) });
    evening.goTo('ash/water').wait(6000);
    expect(evening.clock('ExpireCue')).toBe('nothing-to-do');
    evening.goTo('welcome').wait(6000);
    expect(evening.clock('ExpireCue')).toBe('nothing-to-do');
  });

  it("[P19] needs no more than 35 taps of the big button for regulars' six blind pours", () => {
    const evening = new EveningTold(planOf(6, { pacing: { by: 'steps' }, blind: true }));
    let taps = 0;
    while (evening.cue !== 'farewell') {
      const cue = evening.underWay.cues[evening.underWay.at];
      // Before the big button goes on, it opens the talk and tells the names.
      if (cue?.kind === 'discussion' || cue?.kind === 'reveal') taps += 1;
      evening.now += evening.idealMs;
      if (evening.clock('ExpireCue') === 'done') continue;
      evening.next();
      taps += 1;
    }
    expect(taps + 1).toBeLessThanOrEqual(35);
    expect(taps).toBeGreaterThan(12);
  });

  it('[P9] begins the interrupted cue again after a called break', () => {
    const evening = atNose().wait(20);
    expect(evening.host({ type: 'CallBreak', seconds: seconds(300) })).toBe('done');
    expect(evening.cue).toBe('called-break-1');
    expect(evening.left).toBe(300_000);
    evening.next();
    expect(evening.cue).toBe('ash/first/nose');
    expect(evening.left).toBe(evening.idealMs);
    evening.host({ type: 'CallBreak', seconds: seconds(300) });
    expect(evening.cue).toBe('called-break-2');
  });

  it('[P10] moves on when the pour in hand is dropped, and never comes back to it', () => {
    const evening = atNose();
    expect(evening.host({ type: 'DropPour', pour: ash })).toBe('done');
    expect(evening.cue).toBe('birch/first/swirl');
    expect(evening.host({ type: 'GoBack', from: cueId('birch/first/swirl') })).toBe('done');
    expect(evening.cue).toBe('practice/spit');
    expect(evening.host({ type: 'DropPour', pour: ash })).toBe('already-dropped');
  });

  it('[P10] leaves the room where it is when another pour is dropped, and restores it', () => {
    const evening = atNose();
    evening.host({ type: 'DropPour', pour: birch });
    expect(evening.cue).toBe('ash/first/nose');
    evening.goTo('ash/water').next();
    expect(evening.cue).toBe('cedar/first/swirl');
    expect(evening.host({ type: 'RestorePour', pour: birch })).toBe('done');
    evening.host({ type: 'GoBack', from: cueId('cedar/first/swirl') });
    expect(evening.cue).toBe('birch/water');
  });

  it('[P10] keeps the last pour, and makes one break of two when a whole flight is dropped', () => {
    const evening = new EveningTold(planOf(9));
    for (const pour of evening.underWay.plan.pours.slice(3, 6))
      evening.host({ type: 'DropPour', pour: pour.id });
    evening.goTo('flight-1/break').next();
    expect(evening.cue).toBe('gorse/first/swirl');
    const short = new EveningTold(planOf(3));
    short.host({ type: 'DropPour', pour: ash });
    short.host({ type: 'DropPour', pour: birch });
    expect(short.host({ type: 'DropPour', pour: cedar })).toBe('only-pour');
  });

  it('[P11] reopens an evening that was ended by mistake', () => {
    const evening = atNose();
    expect(evening.host({ type: 'Finish' })).toBe('done');
    expect(evening.host({ type: 'Advance', from: cueId('ash/first/nose') })).toBe('finished');
    evening.wait(60);
    expect(evening.host({ type: 'Reopen' })).toBe('done');
    expect(evening.cue).toBe('ash/first/nose');
    expect(evening.left).toBe(evening.idealMs);
  });

  it('[F4] sets a change of cue a little ahead, and counts its time from there', () => {
    const evening = atNose();
    evening.lead = 150;
    evening.next();
    expect(evening.underWay.enteredAt).toBe(evening.now + 150);
    expect(evening.left).toBe(evening.idealMs + 150);
  });

  it('opens the doors once, and not without pours', () => {
    const evening = new EveningTold();
    expect(evening.host({ type: 'OpenDoors', plan: planOf(3) })).toBe('already-open');
    const bare = new EveningTold(planOf(0));
    expect(bare.session.status).toBe('unopened');
    expect(bare.host({ type: 'Hold' })).toBe('not-open');
  });
});
