import { describe, expect, it } from 'vitest';
import { compile } from '../../../core/running-order/compile.ts';
import { type Cue, type CueKind, isClosing } from '../../../core/running-order/cue.ts';
import { guardedLength, shownTraits, traitsOf } from '../../../core/running-order/cue-traits.ts';
import { offersFor } from '../../../core/running-order/offers.ts';
import { fitInto } from '../../../core/running-order/repace.ts';
import { hostView } from '../../../core/session/views/host.ts';
import { stageView } from '../../../core/session/views/stage.ts';
import { seconds } from '../../../core/units.ts';
import { EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';

/** An evening in which every kind of cue comes up. */
const everything: Parameters<typeof planOf>[1] = {
  ranking: 'each-flight',
  blind: true,
  closingPass: true,
  trials: [
    {
      id: 'juniper',
      flight: 0,
      a: 'ash',
      b: 'birch',
      codes: { a: ['417', '952'], b: ['638', '285'] },
      orders: ['ABB'],
    },
  ],
};

describe('what a kind of cue is', () => {
  it('[P18] stage and host are told the same of every cue, and the session counts Ready by it', () => {
    const evening = new EveningTold(planOf(6, everything)).sit('ada');
    const kinds = new Set<CueKind>();
    for (const cue of evening.underWay.cues) {
      evening.goTo(cue.id);
      const stage = stageView(evening.underWay, 1);
      const host = hostView(evening.underWay, 1);
      if (stage.status !== 'under-way' || host.status !== 'under-way') throw new Error('It is under way.');
      expect(stage.cue).toMatchObject(shownTraits(cue));
      expect(host.asksReady, cue.id).toBe(stage.cue.asksReady);
      const given = evening.guest('ada', { type: 'GiveSignal', signal: 'ready', cue: cue.id });
      expect(given, cue.id).toBe(stage.cue.asksReady ? 'done' : 'nothing-to-do');
      kinds.add(cue.kind);
    }
    expect(kinds.size).toBe(13);
  });

  it('[P18] asks in what guests do themselves: the practice, a step, water, a break, an order, the odd one', () => {
    const asked = compile(planOf(6, everything)).filter((cue) => traitsOf(cue).asksReady);
    expect([...new Set(asked.map(({ kind }) => kind))].toSorted()).toEqual([
      'break',
      'odd-one-out',
      'practice',
      'ranking',
      'step',
      'water',
    ]);
  });

  it('[C2] an edit, a fit and a cut talk go by one floor for each kind', () => {
    for (const cue of compile(planOf(6, everything))) {
      const careful =
        cue.kind === 'water' || cue.kind === 'break' || (cue.kind === 'step' && cue.step === 'spit');
      expect(guardedLength(cue, seconds(5)), cue.id).toBe(careful ? cue.floor : 5);
    }
    const cues = compile(planOf(6));
    const fitted = new Map(fitInto(cues, 0).lengths.map(({ cue, seconds: length }) => [cue, length]));
    for (const cue of cues) expect(fitted.get(cue.id) ?? cue.ideal).toBeGreaterThanOrEqual(cue.floor);
    const talks = cues.filter(({ kind }) => kind === 'discussion');
    const offer = offersFor(cues).find(({ kind }) => kind === 'shorten-discussions');
    expect(offer?.saves).toBe(talks.reduce((sum, { floor }) => sum + floor - 60, 0));
  });

  it('[P14] closing cues are the steps of the closing pass', () => {
    const closing = (plan: Parameters<typeof planOf>[1]): Cue[] => compile(planOf(3, plan)).filter(isClosing);
    expect(closing({ closingPass: false })).toEqual([]);
    expect(new Set(closing({ closingPass: true }).map(({ kind }) => kind))).toEqual(new Set(['step']));
  });
});

describe('by the room', () => {
  const paced = () => new EveningTold(planOf(3, { pacing: { by: 'room', share: 0.5 } })).sit('ada', 'berit');

  it('[P18] the welcome, for which no phone has the button, ends by its time and waits for nobody', () => {
    const evening = paced().goTo('welcome');
    evening.now += evening.idealMs - 1;
    expect(evening.clock('WeighRoom')).toBe('nothing-to-do');
    expect(evening.clock('ExpireCue')).toBe('nothing-to-do');
    evening.now += 1;
    expect(evening.clock('ExpireCue')).toBe('done');
    expect(evening.cue).toBe('ground-rules');
  });

  it('[P3, P18] water ends when enough are ready, and not by its time', () => {
    const evening = paced().goTo('ash/water').wait(600);
    expect(evening.clock('ExpireCue')).toBe('nothing-to-do');
    evening.ready('ada');
    expect(evening.cue).toBe('birch/first/swirl');
  });

  it('[P2, P18] a break asks who is back, and is left by the host alone', () => {
    const evening = new EveningTold(planOf(6, { pacing: { by: 'room', share: 0.5 } })).sit('ada');
    evening.goTo('flight-1/break').wait(3600).ready('ada');
    expect(evening.cue).toBe('flight-1/break');
  });

  it('[P12, P18] nobody at home is waited for where they have no button', () => {
    for (const pacing of [{ by: 'clock' }, { by: 'room', share: 0.5 }] as const) {
      const evening = new EveningTold(planOf(3, { pacing })).sit('ada');
      evening.guest('ada', { type: 'ChangeSeat', remote: true });
      evening.host({ type: 'WaitForRemote', wait: true });
      evening.goTo('welcome').wait(600);
      expect(evening.clock('ExpireCue'), pacing.by).toBe('done');
    }
  });
});
