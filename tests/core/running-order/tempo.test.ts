import { describe, expect, it } from 'vitest';
import { compile } from '../../../core/running-order/compile.ts';
import { fitAhead, forecastAhead } from '../../../core/running-order/fit-ahead.ts';
import { noHabits } from '../../../core/running-order/forecast.ts';
import {
  cueTimeOf,
  endingOf,
  normalBelow,
  normalQuantile,
  type Tempo,
  tempoOfPlan,
} from '../../../core/running-order/tempo.ts';
import type { Pacing } from '../../../core/tasting.ts';
import { epochMs } from '../../../core/units.ts';
import { calibrated } from '../../rehearsal/calibration.ts';
import { planOf } from '../../support/plans.ts';

const cues = compile(planOf(6));
const tempo = (pacing: Pacing, more: Partial<Tempo> = {}): Tempo => ({
  pacing,
  level: 'regulars',
  guests: 12,
  awaited: 0,
  ...more,
});
const doors = (pacing: Pacing, more: Partial<Tempo> = {}) => ({
  from: epochMs(0),
  current: null,
  remaining: cues,
  unfitted: [],
  habits: noHabits,
  tempo: tempo(pacing, more),
});
const whole = cues.reduce((sum, { ideal }) => sum + ideal, 0);

describe('what ends a cue', () => {
  it('[P2, P3, P18, P19] is the host at gates, and otherwise whoever sets the pace', () => {
    const ends = (by: Pacing) =>
      new Map(cues.map((cue, index) => [String(cue.id), endingOf(cue, cues[index + 1], by)]));
    for (const by of [{ by: 'steps' }, { by: 'clock' }, { by: 'room', share: 1 }] as const)
      for (const cue of cues) if (cue.gate) expect(ends(by).get(cue.id), '[P2]').toBe('host');
    expect(new Set(ends({ by: 'host' }).values())).toEqual(new Set(['host']));
    const steps = ends({ by: 'steps' });
    expect(steps.get('welcome')).toBe('host');
    expect([steps.get('practice/nose'), steps.get('practice/spit')]).toEqual(['clock', 'host']);
    expect([steps.get('ash/first/swirl'), steps.get('ash/first/spit'), steps.get('ash/water')]).toEqual([
      'clock',
      'clock',
      'host',
    ]);
    expect(ends({ by: 'clock' }).get('welcome')).toBe('clock');
    const room = ends({ by: 'room', share: 0.5 });
    expect([room.get('welcome'), room.get('ash/water')]).toEqual(['clock', 'room']);
  });
});

describe('how long it takes', () => {
  it('has the tables of the standard normal', () => {
    // z(0.9) = 1.2816, z(0.975) = 1.9600; the approximations are off by less than 4.5e-4 and 1.5e-7.
    expect(normalQuantile(0.9)).toBeCloseTo(1.2816, 2);
    expect(normalQuantile(0.025)).toBeCloseTo(-1.96, 2);
    expect(normalBelow(1.2816)).toBeCloseTo(0.9, 4);
    expect(normalBelow(-1.96)).toBeCloseTo(0.025, 4);
  });

  it('is the slowest of n: the expected largest of 10 standard normals is 1.5388 (Teichroew 1956)', () => {
    const at = cues.findIndex(({ id }) => id === 'ash/first/nose');
    const nose = cues[at];
    if (nose === undefined) throw new Error('There is something to nose.');
    const shift = (guests: number, share: number) => {
      const time = cueTimeOf(nose, cues[at + 1], tempo({ by: 'room', share }, { guests }));
      return time.is === 'drawn' ? time.shift / 0.25 : Number.NaN;
    };
    expect(shift(10, 1)).toBeCloseTo(1.5388, 1);
    expect(shift(1, 1)).toBeCloseTo(0, 2);
    expect(shift(40, 1)).toBeGreaterThan(shift(10, 1));
    expect(shift(11, 0.5)).toBeCloseTo(0, 2);
  });

  it('by the clock is what is planned, but for what waits for the host', () => {
    const clocked = cues.filter((cue) => !cue.gate);
    const ahead = { ...doors({ by: 'clock' }), remaining: clocked };
    const exact = clocked.reduce((sum, { ideal }) => sum + ideal, 0) * 1000;
    expect(forecastAhead(ahead).end).toEqual({ early: exact, likely: exact, late: exact });
    expect(fitAhead(ahead, epochMs(exact))).toMatchObject({ status: 'fits', lengths: [], changes: [] });
  });

  it('[P12] is later where those at home are waited for, and later in a fuller room', () => {
    const likely = (pacing: Pacing, more: Partial<Tempo> = {}) =>
      forecastAhead(doors(pacing, more)).end.likely;
    expect(likely({ by: 'clock' }, { awaited: 3 })).toBeGreaterThan(likely({ by: 'clock' }));
    expect(likely({ by: 'room', share: 0.75 }, { awaited: 3 })).toBeGreaterThan(
      likely({ by: 'room', share: 0.75 }),
    );
    expect(likely({ by: 'room', share: 1 }, { guests: 40 })).toBeGreaterThan(
      likely({ by: 'room', share: 1 }, { guests: 4 }),
    );
    expect(likely({ by: 'room', share: 1 })).toBeGreaterThan(likely({ by: 'room', share: 0.5 }));
  });
});

describe('a fitting', () => {
  it('never says that it fits where the forecast of it is late', () => {
    for (const pacing of [
      { by: 'host' },
      { by: 'steps' },
      { by: 'clock' },
      { by: 'room', share: 0.5 },
      { by: 'room', share: 1 },
    ] as const) {
      for (const share of [0.6, 0.7, 0.8, 0.9, 1, 1.1]) {
        const ahead = doors(pacing, { guests: 24 });
        const endsAt = epochMs(Math.round(whole * share) * 1000);
        const fit = fitAhead(ahead, endsAt);
        const lengths = new Map(fit.lengths.map(({ cue, seconds }) => [cue, seconds]));
        const remaining = cues.map((cue) => ({ ...cue, ideal: lengths.get(cue.id) ?? cue.ideal }));
        const { likely } = forecastAhead({ ...ahead, remaining }).end;
        expect(fit.status, `${pacing.by} ${share}`).toBe(likely <= endsAt ? 'fits' : 'too-long');
      }
    }
  });

  it('refuses an end that is no moment', () => {
    for (const none of [Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => fitAhead(doors({ by: 'host' }), epochMs(none))).toThrow(RangeError);
  });
});

describe('the range of a forecast', () => {
  it.each([
    ['host', { by: 'host' }, 8],
    ['clock', { by: 'clock' }, 16],
    ['room-1', { by: 'room', share: 1 }, 8],
  ] as const)('holds eight in ten evenings of another model, paced by %s', (name, pacing, guests) => {
    const plan = planOf(6, { pacing, guests, blind: true });
    expect(tempoOfPlan(plan).guests).toBe(guests);
    // Four points as promised, and two standard errors of 500 evenings (3.6) beside them.
    for (const { at, covered } of calibrated(plan, name, 500, 7)) {
      expect(covered, at).toBeGreaterThan(0.72);
      expect(covered, at).toBeLessThan(0.88);
    }
  });
});
