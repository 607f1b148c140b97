import { describe, expect, it } from 'vitest';
import { pourId, seatId } from '../../../core/ids.ts';
import { triangleOrdersForSeats } from '../../../core/panel/presentation-orders.ts';
import { oddGlassOf, trialGlasses } from '../../../core/session/serving.ts';
import { hostView } from '../../../core/session/views/host.ts';
import { seatView } from '../../../core/session/views/seat.ts';
import { stageView } from '../../../core/session/views/stage.ts';
import type { Plan, Trial } from '../../../core/tasting.ts';
import { EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';
import { seededRandom } from '../../support/seeded-random.ts';

const trial: Trial = {
  id: pourId('juniper'),
  flight: 0,
  a: pourId('ash'),
  b: pourId('birch'),
  codes: { a: ['417', '952'], b: ['638', '285'] },
  orders: triangleOrdersForSeats(6, seededRandom(3)),
};
const plan: Plan = { ...planOf(3, { blind: true }), trials: [trial] };
const names = ['ada', 'ben', 'cleo', 'dai', 'eve', 'fay'];

describe('an odd-one-out', () => {
  it('stands after the glasses of its flight, before the talk, and is talked about with them', () => {
    const cues = new EveningTold(plan).underWay.cues;
    const ids = cues.map((cue) => String(cue.id));
    expect(ids.indexOf('juniper/odd-one-out')).toBe(ids.indexOf('cedar/water') + 1);
    expect(cues.find((cue) => cue.kind === 'discussion')).toMatchObject({
      pours: ['ash', 'birch', 'cedar', 'juniper'],
    });
    expect(cues.find((cue) => cue.kind === 'reveal')).toMatchObject({ pours: ['ash', 'birch', 'cedar'] });
  });

  it('serves six seats the six orders, each with three codes of its own', () => {
    const evening = new EveningTold(plan).sit(...names);
    expect(seatView(evening.underWay, seatId('ada'), 1)?.trials).toEqual([]);
    evening.goTo('juniper/odd-one-out');
    const served = names.map((name) => seatView(evening.underWay, seatId(name), 1)?.trials[0]?.glasses ?? []);
    expect(
      new Set(served.map((glasses) => glasses.map((code) => ('417,952'.includes(code) ? 'A' : 'B')).join('')))
        .size,
    ).toBe(6);
    for (const [index, glasses] of served.entries()) {
      expect(new Set(glasses).size).toBe(3);
      const odd = oddGlassOf(trial, { row: index });
      const isA = (code: string | undefined) => trial.codes.a.includes(code ?? '');
      const alike = glasses.filter((_, at) => at !== odd - 1);
      expect(isA(alike[0])).toBe(isA(alike[1]));
      expect(isA(glasses[odd - 1])).not.toBe(isA(alike[0]));
    }
  });

  it('[Q4] tells nobody which drinks stand in the glasses', () => {
    const evening = new EveningTold(plan).sit(...names).goTo('juniper/odd-one-out');
    const stage = stageView(evening.underWay, 1);
    expect(stage).toMatchObject({ cue: { kind: 'odd-one-out', pours: ['juniper'] } });
    const wire = JSON.stringify([stage, seatView(evening.underWay, seatId('ada'), 1)]);
    expect(wire).not.toContain('The ash cask');
    expect(wire).not.toMatch(/"(ash|birch)"/);
  });

  it('is skipped when one of its drinks is dropped', () => {
    const evening = new EveningTold(plan);
    evening.host({ type: 'DropPour', pour: pourId('birch') });
    evening.goTo('cedar/water').next();
    expect(evening.cue).toBe('flight-1/discussion');
  });
});

describe('[Q5] the talk', () => {
  const talking = (...pours: readonly string[]) => {
    const evening = new EveningTold({ ...plan, ...twoFlights }).goTo('ash/water').goTo('juniper/odd-one-out');
    evening.host({ type: 'OpenDiscussion', pours: pours.map(pourId) });
    return evening;
  };
  const twoFlights = { flightSizes: [2, 1] };
  const open = (evening: EveningTold) =>
    Object.entries(evening.underWay.discussions).flatMap(([id, each]) => (each.open ? [id] : []));

  it('about an odd-one-out ends too when the next glass is in front of the room', () => {
    const evening = talking('ash', 'juniper').goTo('flight-1/discussion');
    expect(open(evening)).toEqual(['ash', 'juniper']);
    evening.goTo('cedar/first/swirl');
    expect(open(evening)).toEqual([]);
    expect(evening.events.at(-2)).toEqual({ type: 'DiscussionClosed', pours: ['ash', 'juniper'] });
  });

  it('about a glass ends when the three of an odd-one-out are in front of the room', () => {
    const evening = talking('ash').goTo('juniper/odd-one-out');
    expect(open(evening)).toEqual([]);
  });
});

describe('an odd-one-out in the running order', () => {
  it('is played when both of its drinks are', () => {
    const evening = new EveningTold(plan).goTo('cedar/water').next();
    expect(evening.cue).toBe('juniper/odd-one-out');
    expect(evening.next().cue).toBe('flight-1/discussion');
    expect(evening.next().cue).toBe('flight-1/reveal');
  });

  it('is skipped when the other of its drinks is dropped', () => {
    const evening = new EveningTold(plan);
    evening.host({ type: 'DropPour', pour: pourId('ash') });
    expect(evening.goTo('cedar/water').next().cue).toBe('flight-1/discussion');
  });

  it('is shown to the host like a pour', () => {
    const evening = new EveningTold(plan);
    const shown = () => hostView(evening.underWay, 1).trials;
    expect(shown()).toEqual([{ id: 'juniper', a: 'ash', b: 'birch', reached: false, discussion: 'silent' }]);
    evening.goTo('juniper/odd-one-out').host({ type: 'OpenDiscussion', pours: [trial.id] });
    expect(shown()).toMatchObject([{ reached: true, discussion: 'open' }]);
  });
});

describe('the glasses of an odd-one-out', () => {
  const fixed: Trial = { ...trial, orders: ['AAB', 'BAB'] };
  it('are drink and code from the left, row by row, and over again when there are more seats than rows', () => {
    expect(trialGlasses(fixed, { row: 0 })).toEqual([
      { drink: 'a', code: '417' },
      { drink: 'a', code: '952' },
      { drink: 'b', code: '638' },
    ]);
    const second = [
      { drink: 'b', code: '638' },
      { drink: 'a', code: '417' },
      { drink: 'b', code: '285' },
    ];
    expect(trialGlasses(fixed, { row: 1 })).toEqual(second);
    expect(trialGlasses(fixed, { row: 3 })).toEqual(second);
    expect([0, 1, 2].map((row) => oddGlassOf(fixed, { row }))).toEqual([3, 2, 3]);
  });
});
