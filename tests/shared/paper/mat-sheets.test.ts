import { describe, expect, it } from 'vitest';
import { type MatChoice, matsFor, placesIn } from '../../../host/print/mat-sheets.ts';
import { planOf } from '../../support/plans.ts';

const choice: MatChoice = { paper: 'A4', footMm: 60, set: 'evening', leftPlaces: [], each: true };
const mats = (plan = planOf(6), change: Partial<MatChoice> = {}) => {
  const found = matsFor(plan, { ...choice, ...change });
  if (!found.fits) throw new Error('The mats do not fit.');
  return found.mats;
};
const labels = (mat: ReturnType<typeof mats>[number] | undefined) =>
  mat?.layout.circles.map(({ label }) => label);
const blind = planOf(4, {
  guests: 4,
  blind: true,
  ownOrders: true,
  flightSizes: [4],
  codes: { ash: '418', birch: '736', cedar: '152', dogwood: '894' },
  servingOrders: [
    {
      rows: [
        ['ash', 'birch', 'dogwood', 'cedar'],
        ['birch', 'cedar', 'ash', 'dogwood'],
        ['cedar', 'dogwood', 'birch', 'ash'],
        ['dogwood', 'ash', 'cedar', 'birch'],
      ],
    },
  ],
});

describe('the mats of an evening', () => {
  it('are one for each place, numbered in the order of tasting and named where nothing is blind', () => {
    const all = mats(planOf(6, { guests: 5 }));
    expect(all.map(({ place }) => place)).toEqual([1, 2, 3, 4, 5]);
    expect(labels(all[0])).toEqual(['1', '2', '3', '4', '5', '6']);
    expect(all[0]?.inside[5]).toBe('The fir cask');
  });

  it('can be one for each flight, counted on', () => {
    const all = mats(planOf(6, { guests: 1 }), { set: 'flight' });
    expect(all.map(labels)).toEqual([
      ['1', '2', '3'],
      ['4', '5', '6'],
    ]);
  });

  it('are mirrored at the places of left-handers', () => {
    const [right, left] = mats(planOf(6, { guests: 2 }), { leftPlaces: [2] });
    expect([right?.hand, left?.hand]).toEqual(['right', 'left']);
    const across = (mat: typeof right) => mat?.layout.circles.map(({ xMm }) => xMm) ?? [];
    for (const [index, x] of across(right).entries()) expect(across(left)[index]).toBeCloseTo(297 - x, 9);
  });

  it('are one for each hand when they are to be copied', () => {
    const all = mats(planOf(6, { guests: 40 }), { each: false });
    expect(all.map(({ place, hand }) => [place, hand])).toEqual([
      [null, 'right'],
      [null, 'left'],
    ]);
  });

  it('follow each place’s own order by code, tell no name, and are never copied', () => {
    const all = mats(blind, { each: false });
    expect(all.map(labels)).toEqual([
      ['418', '736', '894', '152'],
      ['736', '152', '418', '894'],
      ['152', '894', '736', '418'],
      ['894', '418', '152', '736'],
    ]);
    expect(all.flatMap(({ inside }) => inside).join('')).toBe('');
  });

  it('have one more for the three glasses of an odd-one-out', () => {
    const trial = {
      id: 'trial-1',
      flight: 0,
      a: 'ash',
      b: 'birch',
      codes: { a: ['311', '527'] as [string, string], b: ['648', '932'] as [string, string] },
      orders: ['AAB', 'BBA'] as ('AAB' | 'BBA')[],
    };
    const all = mats(planOf(3, { guests: 2, trials: [trial] }), { each: false });
    expect(all.map((mat) => [mat.place, mat.of?.kind ?? null, labels(mat)])).toEqual([
      [1, null, ['1', '2', '3']],
      [1, 'trial', ['311', '527', '648']],
      [2, null, ['1', '2', '3']],
      [2, 'trial', ['648', '932', '311']],
    ]);
  });

  it('say how many glasses a sheet takes when they do not fit, and whether flights would', () => {
    const found = matsFor(planOf(9), { ...choice, footMm: 80 });
    expect(found).toMatchObject({ fits: false, flightsWouldFit: true });
    expect(!found.fits && found.why.most).toBeLessThan(9);
    expect(matsFor(planOf(6), { ...choice, footMm: 150 })).toMatchObject({ flightsWouldFit: false });
  });

  it('refuse a size that no glass has', () => {
    expect(() => matsFor(planOf(3), { ...choice, footMm: Number.NaN })).toThrow(RangeError);
  });
});

describe('the places that are typed', () => {
  it('are read as people write them', () => {
    expect(placesIn('2, 5', 8)).toEqual([2, 5]);
    expect(placesIn(' 7;7 1 ', 8)).toEqual([7, 1]);
    expect(placesIn('', 8)).toEqual([]);
  });
  it('are refused where there is no such place', () => {
    for (const typed of ['9', '0', '1.5', 'two', '-1']) expect(placesIn(typed, 8), typed).toBeUndefined();
  });
});
