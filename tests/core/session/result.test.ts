import { describe, expect, it } from 'vitest';
import { cueId, pourId } from '../../../core/ids.ts';
import { type RoundResult, roundResult } from '../../../core/panel/round-result.ts';
import { evolveAll } from '../../../core/session/evolve.ts';
import { unopened } from '../../../core/session/state.ts';
import { hostView } from '../../../core/session/views/host.ts';
import { stageView } from '../../../core/session/views/stage.ts';
import { ash, birch, cedar, EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';

const plan = planOf(6, { blind: true, ranking: 'each-flight', discussion: 'each-flight' });
const orders = (...rows: readonly (readonly number[])[]): RoundResult[] => [
  roundResult({
    of: 'order',
    pours: [ash, birch, cedar],
    answers: rows.map((values) => ({ values, counts: values.map(() => true) })),
  }),
];
const parts = orders([1, 2, 3], [2, 1, 3], [1, 3, 2]);
const tell = (cue: string, what = parts) => ({ type: 'TellResult', cue: cueId(cue), parts: what }) as const;

describe('the result', () => {
  it('[R1] given that the room stands at it, when the host taps, then all are told the same', () => {
    const evening = new EveningTold(plan).sit('ada').goTo('cedar/water').goTo('flight-1/result');
    expect(stageView(evening.underWay, 1).results).toEqual([]);
    expect(evening.host(tell('flight-1/result'))).toBe('done');
    const told = [{ cue: 'flight-1/result', at: evening.now, parts }];
    expect(stageView(evening.underWay, 1).results).toEqual(told);
    expect(hostView(evening.underWay, 1).results).toEqual(told);
  });

  it('[R1] is told once, and stays as it was told', () => {
    const evening = new EveningTold(plan).goTo('cedar/water').goTo('flight-1/result');
    evening.host(tell('flight-1/result'));
    expect(evening.host(tell('flight-1/result', orders([3, 2, 1])))).toBe('nothing-to-do');
    evening.host({ type: 'DropPour', pour: ash });
    evening.next().goTo('flight-1/result');
    expect(evening.host(tell('flight-1/result'))).toBe('nothing-to-do');
    expect(evening.underWay.results.map((told) => told.parts)).toEqual([parts]);
  });

  it('[R1] two taps, or a tap that comes late, tell no other one', () => {
    const evening = new EveningTold(plan).goTo('cedar/water').goTo('flight-1/result').next();
    expect(evening.host(tell('flight-1/result'))).toBe('moved-on');
    expect(evening.host(tell(evening.cue))).toBe('nothing-to-do');
    expect(evening.underWay.results).toEqual([]);
  });

  it('[R1, Q6] is refused for pours that have not been in front of everybody', () => {
    const rows = [
      ['ash', 'birch', 'cedar'],
      ['cedar', 'ash', 'birch'],
    ];
    const servingOrders = [{ rows }];
    const own = planOf(3, { blind: true, ownOrders: true, ranking: 'each-flight', servingOrders });
    const evening = new EveningTold(own).sit('ada', 'ben').goTo('ash/water');
    const after = evolveAll(unopened, evening.events);
    if (after.status !== 'under-way') throw new Error('It is under way.');
    // Entering the cue puts its pours before the room, so that only a log of another time could lack one.
    const at = after.cues.findIndex(({ kind }) => kind === 'result');
    evening.session = { ...after, at };
    expect(evening.host(tell('flight-1/result'))).toBe('not-reached');
  });

  it('[R1] is the same after a replay, and lasts to the end of the evening and behind it', () => {
    const evening = new EveningTold(plan).goTo('cedar/water').goTo('flight-1/result');
    evening.host(tell('flight-1/result'));
    evening.host({ type: 'Finish' });
    const again = evolveAll(unopened, evening.events);
    expect(again).toEqual(evening.session);
    if (again.status !== 'finished') throw new Error('It is finished.');
    expect(stageView(again, 1).results[0]?.parts).toEqual(parts);
  });

  it('[P2] waits for the host, however the room is paced', () => {
    const clocked = planOf(6, { ranking: 'each-flight', pacing: { by: 'clock' } });
    const evening = new EveningTold(clocked).goTo('flight-1/result').wait(3600);
    expect(evening.clock('ExpireCue')).toBe('nothing-to-do');
    expect(evening.cue).toBe('flight-1/result');
  });

  it('[P10] of an order goes when one pour is left, and of a liking stays', () => {
    const dropping = (more: Parameters<typeof planOf>[1]) => {
      const evening = new EveningTold(planOf(3, { ranking: 'each-flight', ...more }));
      for (const pour of [ash, birch]) evening.host({ type: 'DropPour', pour });
      return evening.goTo('flight-1/discussion').next().cue;
    };
    expect(dropping({})).toBe('farewell');
    expect(dropping({ liking: true })).toBe('flight-1/result');
  });

  it('[R1, F6] of own orders gives everybody the cards of what it tells, and not in the order of the plan', () => {
    const rows = [
      ['ash', 'birch', 'cedar'],
      ['cedar', 'ash', 'birch'],
    ];
    const codes = { ash: '903', birch: '417', cedar: '652' };
    const own = planOf(3, {
      blind: true,
      ownOrders: true,
      ranking: 'each-flight',
      servingOrders: [{ rows }],
      codes,
    });
    const evening = new EveningTold(own).sit('ada', 'ben');
    for (const place of ['ash', 'birch', 'cedar']) evening.goTo(`${place}/water`);
    evening.goTo('flight-1/result').host(tell('flight-1/result'));
    expect(stageView(evening.underWay, 1).cards).toEqual(
      [birch, cedar, ash].map((id) => ({ kind: 'coded', id, drink: 'spirit', code: codes[id as 'ash'] })),
    );
  });
});

describe('a ranking after the names', () => {
  it('[R3] is known as one by stage and host, once all its names are told', () => {
    const evening = new EveningTold(planOf(3, { blind: true, ranking: 'each-flight' })).goTo('cedar/water');
    const named = () => {
      const view = stageView(evening.underWay, 1);
      return view.status === 'under-way' && view.cue.named;
    };
    evening.goTo('flight-1/ranking');
    expect(named()).toBe(false);
    evening.host({ type: 'Reveal', pours: [ash, birch] });
    expect(named()).toBe(false);
    evening.host({ type: 'Reveal', pours: [pourId('cedar')] });
    expect(named()).toBe(true);
  });
});
