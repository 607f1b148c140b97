import { describe, expect, it } from 'vitest';
import { pourId, seatId } from '../../../core/ids.ts';
import { triangleOrdersForSeats } from '../../../core/panel/presentation-orders.ts';
import { oddGlassOf } from '../../../core/session/serving.ts';
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
