import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solve } from 'yalps';
import { cueId } from '../../../core/ids.ts';
import { compile } from '../../../core/running-order/compile.ts';
import type { Cue } from '../../../core/running-order/cue.ts';
import { offersFor } from '../../../core/running-order/offers.ts';
import { type Fit, fitInto, type Pace } from '../../../core/running-order/repace.ts';
import { seconds } from '../../../core/units.ts';
import { planOf } from '../../support/plans.ts';

const cues = fc.array(
  fc
    .record({
      floor: fc.integer({ min: 5, max: 120 }),
      spare: fc.integer({ min: 0, max: 300 }),
      stretch: fc.constantFrom(0, 0.2, 0.3, 0.5, 0.8, 1),
      pace: fc.constantFrom(0.8, 1, 1.2, 1.5),
    })
    .map(({ floor, spare, stretch, pace }) => ({ floor, ideal: floor + spare, stretch, pace })),
  { minLength: 1, maxLength: 12 },
);
type Drawn = typeof cues extends fc.Arbitrary<infer Cues> ? Cues : never;

const asCues = (drawn: Drawn): Cue[] =>
  drawn.map(({ floor, ideal, stretch }, index) => ({
    id: cueId(`${index}`),
    kind: 'welcome',
    floor: seconds(floor),
    ideal: seconds(ideal),
    stretch,
    gate: false,
  }));
const paceOf =
  (drawn: Drawn): Pace =>
  (cue) =>
    drawn[Number(cue.id)]?.pace ?? 1;
const total = (drawn: Drawn, of: 'ideal' | 'floor') =>
  drawn.reduce((sum, each) => sum + each[of] * each.pace, 0);

/** The same programme for a general solver of linear programmes (yalps): the least share that cuts enough. */
function leastShareBySolver(drawn: Drawn, need: number): number {
  const elastic = drawn.filter((each) => each.ideal > each.floor && each.stretch > 0);
  const variables = Object.fromEntries(
    elastic.map((each, index) => [
      `cut${index}`,
      { need: each.pace, [`share${index}`]: 1, [`spare${index}`]: 1 },
    ]),
  );
  const share = Object.fromEntries(
    elastic.map((each, index) => [`share${index}`, -each.stretch * (each.ideal - each.floor)]),
  );
  const constraints = Object.fromEntries(
    elastic.flatMap((each, index) => [
      [`share${index}`, { max: 0 }],
      [`spare${index}`, { max: each.ideal - each.floor }],
    ]),
  );
  const solution = solve({
    direction: 'minimize',
    objective: 'share',
    variables: { ...variables, share: { share: 1, ...share } },
    constraints: { ...constraints, need: { min: need } },
  });
  expect(solution.status).toBe('optimal');
  return solution.result;
}

describe('fitting what remains into the time that is left', () => {
  it('needs the same share as a general solver of linear programmes finds', () => {
    fc.assert(
      fc.property(cues, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (drawn, part) => {
        const elastic = drawn.filter((each) => each.stretch > 0);
        const most = elastic.reduce((sum, each) => sum + (each.ideal - each.floor) * each.pace, 0);
        fc.pre(most > 1);
        const need = most * part;
        const fit = fitInto(asCues(drawn), total(drawn, 'ideal') - need, paceOf(drawn));
        expect(fit.share).toBeCloseTo(leastShareBySolver(drawn, need), 6);
      }),
      { numRuns: 200 },
    );
  });

  it('[C2] keeps every floor, cuts nothing that has no stretch, and never comes out late when it says that it fits', () => {
    fc.assert(
      fc.property(cues, fc.integer({ min: -600, max: 4000 }), (drawn, available) => {
        const remaining = asCues(drawn);
        const fit = fitInto(remaining, available, paceOf(drawn));
        const length = lengthsOf(remaining, fit);
        const expected = remaining.reduce((sum, cue) => sum + length(cue) * paceOf(drawn)(cue), 0);
        for (const cue of remaining) {
          expect(length(cue)).toBeGreaterThanOrEqual(cue.floor);
          expect(length(cue)).toBeLessThanOrEqual(cue.ideal);
          if (cue.stretch === 0) expect(length(cue)).toBe(cue.ideal);
          expect(Number.isInteger(length(cue))).toBe(true);
        }
        expect(fit.expected).toBeCloseTo(expected, 6);
        if (fit.status === 'fits') expect(expected).toBeLessThanOrEqual(available + 1e-6);
        else {
          expect(fit.over).toBeCloseTo(expected - available, 6);
          for (const cue of remaining) if (cue.stretch > 0) expect(length(cue)).toBe(cue.floor);
        }
      }),
    );
  });

  it('does not cut what need not be cut: at most a second a cue more than was asked', () => {
    fc.assert(
      fc.property(cues, fc.integer({ min: 1, max: 2000 }), (drawn, need) => {
        const available = total(drawn, 'ideal') - need;
        const fit = fitInto(asCues(drawn), available, paceOf(drawn));
        if (fit.status === 'fits') expect(available - fit.expected).toBeLessThan(1.5 * 1 + 1e-6);
      }),
    );
  });

  it('leaves an evening alone that is not late', () => {
    expect(fitInto(compile(planOf(6)), 100_000)).toMatchObject({
      status: 'fits',
      lengths: [],
      share: 0,
      over: 0,
    });
    expect(fitInto([], -60)).toMatchObject({ status: 'too-long', over: 60 });
  });

  it('spares spit and water first and breaks never below five minutes, in a real evening', () => {
    const remaining = compile(planOf(9, { level: 'devotees' }));
    const whole = remaining.reduce((sum, cue) => sum + cue.ideal, 0);
    const fit = fitInto(remaining, whole - 1500);
    const length = lengthsOf(remaining, fit);
    expect(fit.status).toBe('fits');
    for (const cue of remaining) {
      if (cue.kind === 'step' && cue.step === 'spit') expect(length(cue)).toBe(cue.ideal);
      if (cue.kind === 'break') expect(length(cue)).toBeGreaterThanOrEqual(300);
    }
  });
});

describe('what to leave out when even the shortest evening is too long', () => {
  it('offers pours that are untouched, the closing pass and shorter talk, each with what it saves', () => {
    const remaining = compile(planOf(6)).slice(20);
    const offers = offersFor(remaining);
    const pours = offers.flatMap((offer) => (offer.kind === 'drop-pour' ? [String(offer.pour)] : []));
    expect(pours).toEqual(['fir', 'elm', 'dogwood', 'cedar', 'birch']);
    expect(offers.map((offer) => offer.kind)).toContain('drop-closing-pass');
    expect(offers.map((offer) => offer.kind)).toContain('shorten-discussions');
    for (const offer of offers) {
      expect(offer.saves).toBeGreaterThan(0);
      if (offer.kind !== 'drop-pour') continue;
      const without = remaining.filter((cue) => !String(cue.id).startsWith(`${offer.pour}/`));
      const floors = (list: readonly Cue[]) => list.reduce((sum, cue) => sum + cue.floor, 0);
      expect(offer.saves).toBe(floors(remaining) - floors(without));
    }
  });

  it('never offers the last pour, nor one that is in hand', () => {
    const last = compile(planOf(1)).slice(10);
    expect(offersFor(last).filter((offer) => offer.kind === 'drop-pour')).toEqual([]);
    expect(offersFor([])).toEqual([]);
  });
});

function lengthsOf(remaining: readonly Cue[], fit: Fit): (cue: Cue) => number {
  const changed = new Map(fit.lengths.map((each) => [each.cue, each.seconds]));
  expect(remaining.length).toBeGreaterThanOrEqual(changed.size);
  return (cue) => changed.get(cue.id) ?? cue.ideal;
}
