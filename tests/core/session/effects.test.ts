import { describe, expect, it } from 'vitest';
import { cueId, pourId, seatId } from '../../../core/ids.ts';
import { deadlinesOf } from '../../../core/session/deadlines.ts';
import { cueNow } from '../../../core/session/state.ts';
import { seconds } from '../../../core/units.ts';
import { ash, birch, cedar, doorsAt, EveningTold } from '../../support/evening.ts';
import { evolve } from '../../support/evolve.ts';
import { planOf } from '../../support/plans.ts';

/** What happens, event by event, and what is true afterwards. */

const last = (evening: EveningTold, count = 1) => evening.events.slice(-count);
const ids = (evening: EveningTold) => evening.underWay.cues.map((cue) => String(cue.id));

describe('entering a cue', () => {
  it('says who moved the room', () => {
    const evening = new EveningTold(planOf(3, { pacing: { by: 'clock' } })).goTo('ash/first/nose');
    const by = () => last(evening)[0];
    expect(by()).toMatchObject({ type: 'CueEntered', by: 'host' });
    evening.next();
    expect(by()).toMatchObject({ cue: 'ash/first/sip', by: 'host' });
    evening.host({ type: 'GoBack', from: cueId('ash/first/sip') });
    expect(by()).toMatchObject({ cue: 'ash/first/nose', by: 'host' });
    evening.wait(600).clock('ExpireCue');
    expect(by()).toMatchObject({ cue: 'ash/first/sip', by: 'clock' });
    evening.sit('ada').host({ type: 'ChoosePacing', pacing: { by: 'room', share: 1 } });
    evening.wait(600).ready('ada');
    expect(by()).toMatchObject({ cue: 'ash/first/spit', by: 'room' });
    evening.host({ type: 'DropPour', pour: ash });
    expect(last(evening, 2)).toMatchObject([
      { type: 'PourDropped', pour: ash },
      { type: 'CueEntered', cue: 'birch/first/swirl', by: 'host' },
    ]);
  });

  it('[Q5] closes what is open and only that, and only for a glass', () => {
    const evening = new EveningTold(planOf(6)).goTo('ash/water').goTo('birch/water');
    evening.host({ type: 'OpenDiscussion', pours: [ash] });
    evening.goTo('welcome').goTo('practice/nose').goTo('ash/water').goTo('flight-1/break');
    expect(evening.underWay.discussions[ash]?.open).toBe(true);
    evening.goTo('cedar/first/swirl');
    expect(last(evening, 2)).toMatchObject([
      { type: 'DiscussionClosed', pours: [ash] },
      { type: 'CueEntered', cue: 'cedar/first/swirl' },
    ]);
    const count = evening.events.length;
    evening.next();
    expect(evening.events).toHaveLength(count + 1);
  });

  it('remembers the way, and each glass that was in front of the room once', () => {
    const evening = new EveningTold(planOf(6)).goTo('ash/first/nose').wait(60).next();
    expect(evening.underWay.reached).toEqual([ash]);
    expect(evening.underWay.timeline).toEqual([
      { cue: 'gathering', at: doorsAt, planned: 600, by: 'host' },
      { cue: 'ash/first/nose', at: doorsAt, planned: 40, by: 'host' },
      { cue: 'ash/first/sip', at: doorsAt + 60_000, planned: 25, by: 'host' },
    ]);
  });
});

describe('a break that the host calls [P9]', () => {
  it('stands before the cue it interrupts, as a gate with a floor of a minute at most', () => {
    const evening = new EveningTold(planOf(3)).goTo('ash/first/nose');
    const before = ids(evening);
    evening.host({ type: 'CallBreak', seconds: seconds(300) });
    expect(evening.cue).toBe('called-break-1');
    expect(evening.underWay.cues[evening.underWay.at]).toEqual({
      id: 'called-break-1',
      kind: 'break',
      called: true,
      ideal: 300,
      floor: 60,
      stretch: 0,
      gate: true,
    });
    expect(last(evening)[0]).toMatchObject({ type: 'CueEntered', by: 'host' });
    const at = before.indexOf('ash/first/nose');
    expect(ids(evening)).toEqual([...before.slice(0, at), 'called-break-1', ...before.slice(at)]);
    expect(evening.next().cue).toBe('ash/first/nose');
    evening.host({ type: 'CallBreak', seconds: seconds(30) });
    expect(evening.cue).toBe('called-break-2');
    expect(evening.underWay.cues[evening.underWay.at]).toMatchObject({ ideal: 30, floor: 30 });
  });
});

describe('editing a cue', () => {
  it('[C2] keeps spit, water and planned breaks at their floors, whatever is asked', () => {
    const evening = new EveningTold();
    const floors = { 'ash/first/spit': 10, 'ash/water': 30, 'flight-1/break': 300 };
    for (const [cue, floor] of Object.entries(floors)) {
      evening.host({ type: 'EditCue', cue: cueId(cue), seconds: seconds(5) });
      expect(evening.underWay.cues.find(({ id }) => id === cue)).toMatchObject({ ideal: floor, floor });
      evening.host({ type: 'EditCue', cue: cueId(cue), seconds: seconds(900) });
      expect(evening.underWay.cues.find(({ id }) => id === cue)).toMatchObject({ ideal: 900, floor });
    }
    evening.host({ type: 'EditCue', cue: cueId('ash/first/sip'), seconds: seconds(5) });
    evening.host({ type: 'EditCue', cue: cueId('practice/spit'), seconds: seconds(5) });
    // Practised with water.
    expect(evening.underWay.cues.find(({ id }) => id === 'practice/spit')).toMatchObject({ ideal: 5 });
    expect(evening.underWay.cues.find(({ id }) => id === 'ash/first/sip')).toMatchObject({
      ideal: 5,
      floor: 5,
    });
  });

  it('changes that cue alone, and its words only when words are given', () => {
    const evening = new EveningTold();
    const before = evening.underWay.cues;
    const edited = cueId('ash/first/nose');
    evening.host({ type: 'EditCue', cue: edited, say: 'Slowly.' });
    expect(last(evening)[0]).toEqual({
      type: 'CueEdited',
      cue: edited,
      ideal: 40,
      floor: 15,
      say: 'Slowly.',
    });
    evening.host({ type: 'EditCue', cue: edited, seconds: seconds(50) });
    expect(last(evening)[0]).toStrictEqual({ type: 'CueEdited', cue: edited, ideal: 50, floor: 15 });
    expect(evening.underWay.cues).toEqual(
      before.map((cue) => (cue.id === edited ? { ...cue, ideal: 50, say: 'Slowly.' } : cue)),
    );
  });
});

describe('pours', () => {
  it('[P10] drop and come back one by one', () => {
    const evening = new EveningTold();
    evening.host({ type: 'DropPour', pour: birch });
    evening.host({ type: 'DropPour', pour: cedar });
    expect(evening.cue).toBe('gathering');
    evening.host({ type: 'RestorePour', pour: birch });
    expect(evening.underWay.dropped).toEqual([cedar]);
  });

  it('are revealed once each, on top of those before', () => {
    const evening = new EveningTold(planOf(6, { blind: true })).goTo('ash/water').goTo('birch/water');
    evening.host({ type: 'Reveal', pours: [ash] });
    expect(evening.host({ type: 'Reveal', pours: [ash, birch] })).toBe('done');
    expect(last(evening)[0]).toEqual({ type: 'PoursRevealed', pours: [birch] });
    expect(evening.underWay.revealed).toEqual([ash, birch]);
  });

  it('leave nothing behind that is about them alone', () => {
    const evening = new EveningTold(planOf(3, { blind: true, ranking: 'at-the-end' })).goTo('ash/water');
    evening.host({ type: 'DropPour', pour: birch });
    evening.goTo('flight-1/discussion').next();
    expect(evening.cue).toBe('evening/ranking');
    evening.goTo('flight-1/discussion').host({ type: 'DropPour', pour: cedar });
    expect(evening.next().cue).toBe('evening/reveal');
  });

  it('leave one break where two would follow each other', () => {
    const evening = new EveningTold(planOf(9)).goTo('cedar/water');
    for (const pour of ['dogwood', 'elm', 'fir']) evening.host({ type: 'DropPour', pour: pourId(pour) });
    evening.goTo('flight-1/break').next();
    expect(evening.cue).toBe('gorse/first/swirl');
  });
});

describe('seats', () => {
  it('change what they say of themselves, and only that', () => {
    const evening = new EveningTold().sit('ada', 'ben');
    const ada = seatId('ada');
    expect(evening.guest('ada', { type: 'ChangeSeat', leftHanded: true })).toBe('done');
    expect(last(evening)[0]).toEqual({ type: 'SeatChanged', seat: ada, leftHanded: true });
    evening.guest('ada', { type: 'ChangeSeat', name: 'Ada L.', remote: true });
    expect(evening.underWay.seats[ada]).toMatchObject({ name: 'Ada L.', leftHanded: true, remote: true });
    expect(evening.underWay.seats[seatId('ben')]).toMatchObject({ name: 'ben', leftHanded: false });
  });

  it('accept the ground rules, leave, are removed and restored, each seen in its seat', () => {
    const evening = new EveningTold().sit('ada').goTo('ash/first/nose').ready('ada');
    const ada = seatId('ada');
    evening.guest('ada', { type: 'AcceptGroundRules' });
    expect(evening.underWay.seats[ada]).toMatchObject({ groundRulesAccepted: true, presence: 'seated' });
    evening.guest('ada', { type: 'LeaveTable' });
    expect(evening.underWay.seats[ada]?.presence).toBe('left');
    expect(evening.underWay.signals).toEqual({});
    expect(evening.host({ type: 'RemoveSeat', seat: ada })).toBe('done');
    expect(evening.underWay.seats[ada]?.presence).toBe('removed');
    expect(evening.host({ type: 'RestoreSeat', seat: ada })).toBe('done');
    expect(evening.underWay.seats[ada]?.presence).toBe('seated');
  });

  it('catch up with one glass at a time, and tick off a kit', () => {
    const evening = new EveningTold()
      .goTo('ash/water')
      .goTo('birch/water')
      .goTo('cedar/first/nose')
      .sit('ada');
    evening.guest('ada', { type: 'CatchUp', pour: ash });
    expect(evening.underWay.seats[seatId('ada')]?.missed).toEqual([birch]);
    evening.guest('ada', { type: 'CheckKit', item: 'water', ready: true });
    evening.guest('ada', { type: 'CheckKit', item: 'lids', ready: true });
    evening.guest('ada', { type: 'CheckKit', item: 'water', ready: false });
    expect(evening.underWay.seats[seatId('ada')]?.kit).toEqual(['lids']);
  });

  it('[P3] that left or wait at the door do not count for the room', () => {
    const evening = new EveningTold(planOf(3, { pacing: { by: 'room', share: 1 } })).sit('ada', 'ben');
    evening.goTo('ash/first/nose').wait(600);
    evening.guest('ben', { type: 'LeaveTable' });
    evening.ready('ada');
    expect(evening.cue).toBe('ash/first/sip');
  });

  it('call for the host from an earlier cue too', () => {
    const evening = new EveningTold().sit('ada').goTo('ash/first/nose');
    const call = { type: 'GiveSignal', signal: 'needs-host', cue: cueId('ash/first/look') } as const;
    expect(evening.guest('ada', call)).toBe('done');
    expect(evening.underWay.signals).toEqual({ ada: 'needs-host' });
  });
});

describe('the alarms', () => {
  it('[P3] are the end of the cue, and for the room its floor too', () => {
    const evening = new EveningTold().goTo('ash/first/nose');
    const ends = { at: doorsAt + 40_000, ask: { type: 'ExpireCue', cue: 'ash/first/nose' } };
    expect(deadlinesOf(evening.session)).toEqual([ends]);
    evening.host({ type: 'ChoosePacing', pacing: { by: 'room', share: 0.5 } });
    const floor = { at: doorsAt + 15_000, ask: { type: 'WeighRoom', cue: 'ash/first/nose' } };
    expect(deadlinesOf(evening.session)).toEqual([ends, floor]);
    evening.host({ type: 'Finish' });
    expect(deadlinesOf(evening.session)).toEqual([]);
  });
});

describe('a log that ends in the middle of a command', () => {
  it('[P9] stands at the cue that a break is about to interrupt', () => {
    const evening = new EveningTold().goTo('ash/first/nose');
    const before = evening.underWay;
    evening.host({ type: 'CallBreak', seconds: seconds(300) });
    const [called] = last(evening, 2);
    const cut = called === undefined ? before : evolve(before, called);
    expect(cut).toMatchObject({ at: before.at + 1, breaksCalled: 1 });
    expect(cut.status === 'under-way' && cueNow(cut).id).toBe('ash/first/nose');
  });
});

describe('a log that says more than it should', () => {
  it('changes nothing where it means nothing', () => {
    const evening = new EveningTold().goTo('ash/first/nose');
    const before = evening.underWay;
    const nobody = seatId('nobody');
    expect(evolve(before, { type: 'TastingReopened', at: before.openedAt })).toBe(before);
    expect(evolve(before, { type: 'SeatAdmitted', seat: nobody })).toEqual(before);
    expect(evolve(before, { type: 'PourCaughtUp', seat: nobody, pour: ash })).toEqual(before);
    expect(evolve(before, { type: 'KitChecked', seat: nobody, item: 'water', ready: true })).toEqual(before);
    expect(evolve(before, { type: 'DiscussionClosed', pours: [ash] })).toEqual(before);
    expect(
      evolve(before, { type: 'CueEntered', cue: cueId('nowhere'), at: before.openedAt, by: 'host' }),
    ).toBe(before);
    const opened = evening.events[0];
    if (opened !== undefined) expect(evolve(before, opened)).toBe(before);
    const held = { type: 'ClockResumed', endsAt: before.openedAt } as const;
    expect(evolve({ status: 'unopened' }, held)).toEqual({ status: 'unopened' });
    evening.host({ type: 'Finish' });
    expect(evolve(evening.session, held)).toBe(evening.session);
  });

  it('is seen at once when it leads out of the running order', () => {
    const { underWay } = new EveningTold(planOf(3));
    const { length } = underWay.cues;
    expect(() => cueNow({ ...underWay, at: length })).toThrow(
      `The session points at cue ${length} of ${length}.`,
    );
  });

  it('[P11] reopens with the whole time of the cue, a running clock and open doors', () => {
    const evening = new EveningTold().sit('ada').goTo('ash/first/nose').ready('ada');
    evening.host({ type: 'SetDoors', doors: 'closed' });
    evening.host({ type: 'Finish' });
    evening.wait(90).host({ type: 'Reopen' });
    expect(evening.underWay).toMatchObject({
      clock: { kind: 'running', endsAt: evening.now + 40_000 },
      enteredAt: evening.now,
      signals: {},
      doors: 'open',
      waitForRemote: false,
    });
  });
});
