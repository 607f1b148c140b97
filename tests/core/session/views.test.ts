import { describe, expect, it } from 'vitest';
import { pourId, seatId } from '../../../core/ids.ts';
import { hostView, runningOrderView } from '../../../core/session/views/host.ts';
import { seatView } from '../../../core/session/views/seat.ts';
import { stageView } from '../../../core/session/views/stage.ts';
import { seconds } from '../../../core/units.ts';
import { ash, birch, cedar, doorsAt, EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';

/** What devices are told, word for word: a view that is nearly right sends a room to the wrong glass. */

const stage = (evening: EveningTold) => {
  if (evening.session.status === 'unopened') throw new Error('There is no stage yet.');
  return stageView(evening.session, evening.events.length);
};
const cue = (evening: EveningTold) => {
  const view = stage(evening);
  if (view.status !== 'under-way') throw new Error('The evening is over.');
  return view;
};
const host = (evening: EveningTold) => hostView(evening.underWay, 7);
const codes = { ash: '417', birch: '952', cedar: '638' };

describe('the stage', () => {
  it('says what the room does now, what comes next and how far it is', () => {
    const evening = new EveningTold(planOf(6));
    evening.lead = 120;
    evening.goTo('ash/writing/write/nose');
    expect(cue(evening)).toMatchObject({
      version: 2,
      cue: {
        id: 'ash/writing/write/nose',
        kind: 'step',
        pass: 'writing',
        step: 'write',
        sense: 'nose',
        position: 1,
        pours: [ash],
        gate: false,
      },
      next: { kind: 'step', step: 'sip' },
      takesEffectAt: doorsAt + 120,
      clock: { kind: 'running', startsAt: doorsAt + 120, endsAt: doorsAt + 120 + evening.idealMs },
      progress: { cue: 15, of: evening.underWay.cues.length },
      pacedBy: 'host',
      lastWaterAt: doorsAt + 120,
      reminder: null,
    });
    expect(evening.underWay.cues.findIndex(({ id }) => id === 'ash/writing/write/nose')).toBe(14);
  });

  it('has no pass, step or sense outside a glass, and nothing next at the end', () => {
    const evening = new EveningTold(planOf(6)).goTo('flight-1/break');
    expect(cue(evening)).toMatchObject({
      cue: { kind: 'break', pass: null, step: null, sense: null, position: null, pours: [], gate: true },
      next: { kind: 'step', step: 'swirl' },
    });
    evening.goTo('flight-2/discussion');
    expect(cue(evening)).toMatchObject({
      cue: { pours: ['dogwood', 'elm', 'fir'] },
      next: { kind: 'farewell', step: null },
    });
    evening.goTo('farewell');
    expect(cue(evening)).toMatchObject({ next: null, progress: { cue: evening.underWay.cues.length } });
  });

  it('shows a practice step without a pass, and a first pass without a sense', () => {
    const evening = new EveningTold(planOf(3)).goTo('practice/look');
    expect(cue(evening).cue).toMatchObject({ kind: 'practice', pass: null, step: 'look', sense: null });
    evening.goTo('ash/first/look');
    expect(cue(evening).cue).toMatchObject({
      pass: 'first',
      step: 'look',
      sense: null,
      say: null,
    });
  });

  it('asks newcomers in plain words and others in the trade’s, unless the host chose', () => {
    const asked = (plan: Parameters<typeof planOf>[1]) => {
      const evening = new EveningTold(planOf(3, plan));
      return [stage(evening).terms, host(evening).terms];
    };
    expect(asked({ level: 'newcomers' })).toEqual(['plain', 'plain']);
    expect(asked({ level: 'devotees' })).toEqual(['trade', 'trade']);
    expect(asked({ level: 'devotees', terms: 'plain' })).toEqual(['plain', 'plain']);
    expect(asked({ level: 'newcomers', terms: 'trade' })).toEqual(['trade', 'trade']);
  });

  it('has the glass in hand during water too', () => {
    const evening = new EveningTold(planOf(6)).goTo('birch/water');
    expect(cue(evening).cue).toMatchObject({ kind: 'water', position: 2, pours: [birch], pass: null });
  });

  it('says when the room last had water or a break', () => {
    const evening = new EveningTold(planOf(6)).goTo('ash/water');
    const water = evening.now;
    expect(cue(evening).lastWaterAt).toBe(water);
    evening.wait(60).goTo('birch/first/nose');
    expect(cue(evening).lastWaterAt).toBe(water);
    evening.wait(60).goTo('flight-1/break');
    expect(cue(evening).lastWaterAt).toBe(water + 120_000);
  });

  it('leaves dropped pours out of the arc, the progress and the talk', () => {
    const evening = new EveningTold(planOf(6)).goTo('ash/first/nose');
    const whole = cue(evening).progress.of;
    evening.host({ type: 'DropPour', pour: birch });
    expect(cue(evening).glasses.map(({ position, flight, reached }) => [position, flight, reached])).toEqual([
      [1, 0, true],
      [3, 0, false],
      [4, 1, false],
      [5, 1, false],
      [6, 1, false],
    ]);
    expect(cue(evening).progress.of).toBeLessThan(whole);
    expect(cue(evening.goTo('flight-1/discussion')).cue.pours).toEqual([ash, cedar]);
  });

  it('names open boards and sealed pours, the closed ones among the sealed', () => {
    const evening = new EveningTold(planOf(6)).goTo('ash/water').goTo('birch/water');
    expect(cue(evening)).toMatchObject({ openBoards: [], sealed: [] });
    evening.host({ type: 'OpenDiscussion', pours: [ash, birch] });
    evening.host({ type: 'CloseDiscussion', pours: [ash] });
    expect(cue(evening)).toMatchObject({ openBoards: [birch], sealed: [ash, birch] });
  });

  it('holds the clock, shows a reminder and who sets the pace', () => {
    const evening = new EveningTold(planOf(3, { pacing: { by: 'clock' } })).goTo('ash/first/nose').wait(10);
    evening.host({ type: 'Hold' });
    evening.host({ type: 'Remind', kind: 'spit' });
    expect(cue(evening)).toMatchObject({
      pacedBy: 'clock',
      clock: { kind: 'held', startsAt: doorsAt, remaining: evening.idealMs - 10_000 },
      reminder: { kind: 'spit', at: evening.now },
    });
  });

  it('has the link of the call for remote guests, where there is one', () => {
    const callLink = 'https://call.example/harvest';
    expect(stage(new EveningTold(planOf(3, { callLink }))).callLink).toBe(callLink);
    expect(stage(new EveningTold(planOf(3))).callLink).toBeNull();
  });

  it('ends with when it ended', () => {
    const evening = new EveningTold(planOf(3)).wait(5);
    evening.host({ type: 'Finish' });
    expect(stage(evening)).toMatchObject({ status: 'finished', finishedAt: doorsAt + 5000 });
    expect(stage(evening)).not.toHaveProperty('cue');
  });
});

describe('a pour’s card', () => {
  it('[Q4] is its code until the reveal, and its facts afterwards', () => {
    const evening = new EveningTold({ ...planOf(3, { blind: true }), codes }).goTo('ash/first/nose');
    const first = () => cue(evening).glasses[0]?.pour;
    expect(first()).toEqual({ kind: 'coded', id: ash, drink: 'spirit', code: '417' });
    expect(evening.host({ type: 'Reveal', pours: [ash] })).toBe('done');
    expect(first()).toMatchObject({
      kind: 'named',
      name: 'The ash cask',
      abv: 40,
      producer: null,
      code: '417',
    });
    expect(cue(evening).glasses[1]).toEqual({ position: 2, flight: 0, reached: false, pour: null });
  });
});

describe('a seat’s view', () => {
  it('says how this seat stands, and no more of what was dropped', () => {
    const evening = new EveningTold(planOf(3))
      .goTo('ash/water')
      .goTo('birch/water')
      .goTo('cedar/first/nose')
      .sit('ada');
    const ada = () => seatView(evening.underWay, seatId('ada'), 9);
    expect(ada()).toMatchObject({
      version: 9,
      name: 'ada',
      presence: 'seated',
      signal: null,
      missed: [ash, birch],
    });
    evening.ready('ada');
    evening.host({ type: 'DropPour', pour: ash });
    expect(ada()).toMatchObject({ signal: 'ready', missed: [birch], served: null, trials: [] });
    expect(seatView(evening.underWay, seatId('nobody'), 9)).toBeUndefined();
  });
});

describe('the host’s view', () => {
  it('names this cue, the one before and the one after', () => {
    const evening = new EveningTold(planOf(6));
    expect(host(evening)).toMatchObject({ cue: 'gathering', previous: null, next: 'welcome' });
    evening.goTo('ash/first/nose');
    expect(host(evening)).toMatchObject({ previous: 'ash/first/look', next: 'ash/first/sip', version: 7 });
    evening.goTo('farewell');
    expect(host(evening)).toMatchObject({ previous: 'flight-2/discussion', next: null });
  });

  it('passes over what was dropped', () => {
    const evening = new EveningTold(planOf(6)).goTo('ash/water');
    evening.host({ type: 'DropPour', pour: birch });
    expect(host(evening)).toMatchObject({ next: 'cedar/first/swirl' });
    expect(runningOrderView(evening.underWay, 3).cues.map(({ id }) => String(id))).not.toContain(
      'birch/water',
    );
    evening.goTo('cedar/first/swirl');
    expect(host(evening)).toMatchObject({ previous: 'ash/water' });
  });

  it('shows each seat with its signal and what it has missed', () => {
    const evening = new EveningTold(planOf(6))
      .goTo('ash/water')
      .goTo('birch/first/nose')
      .sit('ada', 'ben')
      .ready('ben');
    const seats = () => host(evening).seats.map(({ id, signal, missed }) => [id, signal, missed]);
    expect(seats()).toEqual([
      ['ada', null, 1],
      ['ben', 'ready', 1],
    ]);
    evening.host({ type: 'DropPour', pour: ash });
    expect(seats()[0]).toEqual(['ada', null, 0]);
  });

  it('shows each pour with its place and what became of it', () => {
    const evening = new EveningTold({ ...planOf(6), codes }).goTo('ash/water').goTo('birch/water');
    evening.host({ type: 'OpenDiscussion', pours: [ash, birch] });
    evening.host({ type: 'CloseDiscussion', pours: [ash] });
    evening.host({ type: 'DropPour', pour: pourId('fir') });
    const pours = host(evening).pours.map(({ id, position, flight, code, reached, dropped, discussion }) => [
      id,
      position,
      flight,
      code,
      reached,
      dropped,
      discussion,
    ]);
    expect(pours).toEqual([
      ['ash', 1, 0, '417', true, false, 'closed'],
      ['birch', 2, 0, '952', true, false, 'open'],
      ['cedar', 3, 0, '638', false, false, 'silent'],
      ['dogwood', 4, 1, null, false, false, 'silent'],
      ['elm', 5, 1, null, false, false, 'silent'],
      ['fir', 6, 1, null, false, true, 'silent'],
    ]);
  });

  it('says whether the order was fitted, and waits for remote guests', () => {
    const evening = new EveningTold(planOf(6));
    expect(host(evening)).toMatchObject({ fitted: false, waitForRemote: false });
    evening.host({ type: 'FitTo', endsAt: evening.underWay.openedAt });
    evening.host({ type: 'WaitForRemote', wait: true });
    expect(host(evening)).toMatchObject({ fitted: true, waitForRemote: true });
    evening.host({ type: 'GiveTime', seconds: seconds(30) });
    expect(host(evening)).toMatchObject({ clock: { endsAt: doorsAt + evening.idealMs + 30_000 } });
  });

  it('offers to leave out the closing passes while one is to come', () => {
    const evening = new EveningTold(planOf(3, { level: 'devotees' })).goTo('ash/first/nose');
    const closing = () => host(evening).status === 'under-way' && host(evening);
    expect(closing()).toMatchObject({ closingPass: 'kept' });
    evening.host({ type: 'DropClosingPass' });
    expect(closing()).toMatchObject({ closingPass: 'dropped' });
    evening.host({ type: 'RestoreClosingPass' });
    expect(closing()).toMatchObject({ closingPass: 'kept' });
    evening.goTo('flight-1/discussion');
    expect(closing()).toMatchObject({ closingPass: 'none' });
    expect(host(new EveningTold(planOf(3, { level: 'newcomers' })))).toMatchObject({ closingPass: 'none' });
  });

  it('says whether discussions were cut to a minute', () => {
    const evening = new EveningTold(planOf(6));
    expect(host(evening)).toMatchObject({ shortTalks: false });
    evening.host({ type: 'ShortenDiscussions' });
    expect(host(evening)).toMatchObject({ shortTalks: true });
    evening.host({ type: 'RestoreDiscussions' });
    expect(host(evening)).toMatchObject({ shortTalks: false });
  });

  it('has the whole running order beside it', () => {
    const evening = new EveningTold(planOf(6));
    expect(runningOrderView(evening.underWay, 3)).toEqual({
      version: 3,
      cues: evening.underWay.cues,
      unfitted: [],
    });
  });
});
