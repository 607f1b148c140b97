import { describe, expect, it } from 'vitest';
import { cueId, pourId, seatId } from '../../../core/ids.ts';
import { hostView } from '../../../core/session/views/host.ts';
import { seatView } from '../../../core/session/views/seat.ts';
import { seconds } from '../../../core/units.ts';
import { ash, birch, EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';

describe('talk', () => {
  it('[Q6] opens a discussion only of pours that have been in front of the room', () => {
    const evening = new EveningTold().goTo('ash/first/nose');
    expect(evening.host({ type: 'OpenDiscussion', pours: [ash, birch] })).toBe('not-reached');
    expect(evening.host({ type: 'OpenDiscussion', pours: [pourId('nothing')] })).toBe('no-such-pour');
    expect(evening.host({ type: 'Reveal', pours: [birch] })).toBe('not-reached');
    expect(evening.underWay.discussions).toEqual({});
  });

  it('[Q3] seals at the first opening and never again', () => {
    const evening = new EveningTold().goTo('ash/water');
    evening.host({ type: 'OpenDiscussion', pours: [ash] });
    const sealedAt = evening.now;
    expect(evening.host({ type: 'OpenDiscussion', pours: [ash] })).toBe('nothing-to-do');
    expect(evening.host({ type: 'CloseDiscussion', pours: [ash] })).toBe('done');
    expect(evening.host({ type: 'CloseDiscussion', pours: [ash] })).toBe('not-in-discussion');
    evening.wait(60).host({ type: 'OpenDiscussion', pours: [ash] });
    expect(evening.underWay.discussions[ash]).toEqual({ sealedAt, open: true });
  });

  it('closes no discussion that was never opened', () => {
    const evening = new EveningTold().goTo('ash/water');
    expect(evening.host({ type: 'CloseDiscussion', pours: [ash] })).toBe('not-in-discussion');
  });

  it('[Q6] counts no glass that was dropped as tasted when its flight is talked about', () => {
    const evening = new EveningTold(planOf(3));
    evening.host({ type: 'DropPour', pour: birch });
    expect(evening.goTo('flight-1/discussion').underWay.reached).toEqual(['ash', 'cedar']);
  });

  it('[Q5] closes the talk when a glass is in front of the room', () => {
    const evening = new EveningTold().goTo('ash/water');
    evening.host({ type: 'OpenDiscussion', pours: [ash] });
    evening.next();
    expect(evening.cue).toBe('birch/first/swirl');
    expect(evening.underWay.discussions[ash]?.open).toBe(false);
  });

  it('[Q4] reveals at the end every pour that was in front of the room, and no other', () => {
    const evening = new EveningTold(planOf(6, { blind: true }))
      .goTo('ash/first/nose')
      .goTo('birch/first/nose');
    evening.host({ type: 'Reveal', pours: [ash] });
    evening.host({ type: 'Finish' });
    expect(evening.session).toMatchObject({ status: 'finished', revealed: [ash, birch] });
  });

  it('clears a reminder when the host does', () => {
    const evening = new EveningTold().goTo('ash/first/nose');
    evening.host({ type: 'Remind', kind: 'water' });
    expect(evening.host({ type: 'ClearReminder' })).toBe('done');
    expect(evening.events.at(-1)).toEqual({ type: 'ReminderCleared' });
    expect(evening.session).toMatchObject({ status: 'under-way', reminder: null });
  });

  it('keeps a reminder until the cue changes or it is cleared', () => {
    const evening = new EveningTold().goTo('ash/first/nose');
    expect(evening.host({ type: 'ClearReminder' })).toBe('nothing-to-do');
    evening.host({ type: 'Remind', kind: 'quiet' });
    expect(evening.underWay.reminder).toEqual({ kind: 'quiet', at: evening.now });
    evening.next();
    expect(evening.underWay.reminder).toBeNull();
  });
});

describe('seats', () => {
  it('are to be had from the beginning: the doors are open', () => {
    expect(new EveningTold().underWay.doors).toBe('open');
  });

  it('[F3] shows a late guest which glasses were missed, the one in hand not among them', () => {
    const evening = new EveningTold().goTo('ash/first/nose').goTo('birch/first/nose').sit('late');
    const view = () => evening.session.status === 'under-way' && seatView(evening.session, seatId('late'), 1);
    expect(view()).toMatchObject({ missed: [ash] });
    expect(evening.guest('late', { type: 'CatchUp', pour: birch })).toBe('nothing-to-do');
    expect(evening.guest('late', { type: 'CatchUp', pour: ash })).toBe('done');
    expect(view()).toMatchObject({ missed: [] });
  });

  it('lets nobody in through closed doors, and makes people wait at doors that ask', () => {
    const evening = new EveningTold();
    const knock = (name: string) =>
      evening.attempt({
        by: 'newcomer',
        ask: { type: 'TakeSeat', seat: seatId(name), name, leftHanded: true, remote: false },
      });
    evening.host({ type: 'SetDoors', doors: 'closed' });
    expect(knock('ada')).toBe('doors-closed');
    evening.host({ type: 'SetDoors', doors: 'ask' });
    expect(knock('ada')).toBe('done');
    expect(evening.guest('ada', { type: 'AcceptGroundRules' })).toBe('not-seated');
    expect(evening.host({ type: 'AdmitSeat', seat: seatId('ada') })).toBe('done');
    expect(evening.guest('ada', { type: 'AcceptGroundRules' })).toBe('done');
  });

  it('[S1] keeps a seat that left or was removed, so that it can be restored', () => {
    const evening = new EveningTold().sit('ada', 'ben');
    expect(evening.guest('ada', { type: 'LeaveTable' })).toBe('done');
    expect(evening.host({ type: 'RemoveSeat', seat: seatId('ben') })).toBe('done');
    expect(evening.guest('ben', { type: 'AcceptGroundRules' })).toBe('not-seated');
    evening.host({ type: 'RestoreSeat', seat: seatId('ada') });
    evening.host({ type: 'RestoreSeat', seat: seatId('ben') });
    expect(Object.values(evening.underWay.seats).map((seat) => seat.presence)).toEqual(['seated', 'seated']);
  });

  it('[S2] counts a signal for the cue it was given in only, and keeps a call for the host', () => {
    const evening = new EveningTold().sit('ada', 'ben').goTo('ash/first/nose').ready('ada');
    evening.guest('ben', { type: 'GiveSignal', signal: 'needs-host', cue: cueId('ash/first/nose') });
    evening.next();
    expect(evening.underWay.signals).toEqual({ ben: 'needs-host' });
    const late = { type: 'GiveSignal', signal: 'ready', cue: cueId('ash/first/nose') } as const;
    expect(evening.guest('ada', late)).toBe('moved-on');
    expect(evening.host({ type: 'AnswerSeat', seat: seatId('ben') })).toBe('done');
    expect(evening.underWay.signals).toEqual({});
  });

  it('[C2] never edits spit, water or a planned break below its floor', () => {
    const evening = new EveningTold();
    for (const cue of ['ash/first/spit', 'ash/water', 'flight-1/break']) {
      evening.host({ type: 'EditCue', cue: cueId(cue), seconds: seconds(5) });
      const edited = evening.underWay.cues.find((each) => each.id === cue);
      expect(edited?.ideal).toBe(edited?.floor);
    }
    evening.host({ type: 'EditCue', cue: cueId('ash/first/nose'), seconds: seconds(5), say: 'A short one.' });
    expect(evening.underWay.cues.find((each) => each.id === 'ash/first/nose')).toMatchObject({
      ideal: 5,
      floor: 5,
      say: 'A short one.',
    });
  });

  it('[S5] has a latecomer read cautions and rules first, and tells the host so until they agree', () => {
    const evening = new EveningTold().sit('ada').wait(5);
    evening.goTo('ash/first/nose').wait(5).sit('late');
    const reads = (name: string) => seatView(evening.underWay, seatId(name), 1)?.readsRulesFirst;
    const seen = () => hostView(evening.underWay, 1).seats.map(({ readsRulesFirst }) => readsRulesFirst);
    expect([reads('ada'), reads('late')]).toEqual([false, true]);
    expect(seen()).toEqual([false, true]);
    expect(evening.guest('late', { type: 'AcceptGroundRules' })).toBe('done');
    expect([reads('late'), seen()]).toEqual([false, [false, false]]);
  });
});
