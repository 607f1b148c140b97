import fc from 'fast-check';
import { describe, expect, expectTypeOf, it } from 'vitest';
import type { PlannedPour, PourFacts } from '../../../../core/planning/order/axes/pour-facts.ts';
import { bestLineup } from '../../../../core/planning/order/lineup.ts';
import { checkTheme, type Theme } from '../../../../core/planning/theme/theme.ts';
import {
  cutFlights,
  evenFlights,
  flightsFor,
  orderOptions,
} from '../../../../core/planning/theme/theme-flights.ts';
import type { Plan } from '../../../../core/tasting.ts';
import { plannedPours } from '../order/lineup-arbitraries.ts';

const pour = (id: string, facts: Omit<PourFacts, 'drink'> = {}): PlannedPour => ({
  id,
  drink: 'spirit',
  ...facts,
});

describe('what a theme asks of its pours', () => {
  it('takes the theme of a plan as it is', () => {
    expectTypeOf<Plan['theme']>().toExtend<Theme>();
  });

  it('asks nothing of a free one', () => {
    expect(checkTheme({ kind: 'free' }, [])).toEqual([]);
  });

  it('wants one producer and different years in a vertical', () => {
    const pours = [
      pour('a', { producer: 'Elder Still', vintage: 2001 }),
      pour('b', { producer: ' elder still ', vintage: 2001 }),
      pour('c', { producer: 'Hollow Hill', vintage: 2005 }),
      pour('d', { producer: 'Elder Still' }),
      pour('e', { vintage: 2010 }),
    ];
    expect(checkTheme({ kind: 'vertical', by: 'vintage' }, pours)).toEqual([
      { code: 'fact-missing', fact: 'producer', pour: 'e' },
      { code: 'another-producer', pour: 'c', producer: 'Hollow Hill', expected: 'Elder Still' },
      { code: 'fact-missing', fact: 'vintage', pour: 'd' },
      { code: 'same-step', pours: ['a', 'b'], step: 2001 },
    ]);
  });

  it('wants one thing held and another apart in a horizontal', () => {
    const pours = [
      pour('a', { producer: 'Elder Still', region: 'North' }),
      pour('b', { producer: 'Elder Still', region: 'North' }),
      pour('c', { producer: 'Hollow Hill', region: 'South' }),
    ];
    expect(checkTheme({ kind: 'horizontal', by: 'producer', held: 'region' }, pours)).toEqual([
      { code: 'not-apart', fact: 'producer', pours: ['a', 'b'], value: 'Elder Still' },
      { code: 'does-not-share', fact: 'region', pour: 'c', value: 'South', expected: 'North' },
    ]);
  });

  it('wants two even sides in a comparison', () => {
    const theme: Theme = { kind: 'versus', by: 'region' };
    const [a, b, c] = [pour('a', { region: 'North' }), pour('b', { region: 'South' }), pour('c')];
    expect(checkTheme(theme, [a, b])).toEqual([]);
    expect(checkTheme(theme, [a, { ...a, id: 'a2' }, b])).toEqual([{ code: 'uneven-sides', sizes: [2, 1] }]);
    expect(checkTheme(theme, [a, c])).toEqual([
      { code: 'fact-missing', fact: 'region', pour: 'c' },
      { code: 'one-side-only' },
    ]);
    expect(checkTheme({ kind: 'versus', by: 'price' }, [c])).toContainEqual({
      code: 'too-few-pours',
      pours: 1,
    });
  });
});

describe('a theme for flights', () => {
  const [a, b, c, d] = [
    pour('a', { producer: 'Elder Still', vintage: 2018, region: 'North' }),
    pour('b', { producer: 'Hollow Hill', vintage: 2018, region: 'South' }),
    pour('c', { producer: 'Elder Still', vintage: 2020, region: 'North' }),
    pour('d', { producer: 'Hollow Hill', vintage: 2021, region: 'South' }),
  ];
  const all = [a, b, c, d];
  const inPairs = [
    [a, b],
    [c, d],
  ];

  it('holds one vintage, in the whole evening or in each flight by itself', () => {
    const theme: Theme = { kind: 'horizontal', by: 'producer', held: 'vintage' };
    expect(checkTheme(theme, all, inPairs)).toContainEqual(
      expect.objectContaining({ code: 'does-not-share', fact: 'vintage', pour: 'c', expected: '2018' }),
    );
    expect(checkTheme({ ...theme, each: 'flight' }, all, inPairs)).toEqual([
      { code: 'does-not-share', fact: 'vintage', pour: 'd', value: '2021', expected: '2020', flight: 1 },
    ]);
  });

  it('steps through the years of one producer in each flight', () => {
    const byProducer = [
      [a, c],
      [b, d],
    ];
    const theme: Theme = { kind: 'vertical', by: 'vintage', each: 'flight' };
    expect(checkTheme(theme, all, byProducer)).toEqual([]);
    expect(checkTheme({ kind: 'vertical', by: 'vintage' }, all, byProducer)).not.toEqual([]);
    expect(checkTheme(theme, all, [[a, c, b], [d]])).toEqual([
      { code: 'another-producer', pour: 'b', producer: 'Hollow Hill', expected: 'Elder Still', flight: 0 },
      { code: 'same-step', pours: ['a', 'b'], step: 2018, flight: 0 },
      { code: 'too-few-pours', pours: 1, flight: 1 },
    ]);
  });

  it('wants the sides of a comparison in its flights as they were chosen to meet', () => {
    const sides: Theme = { kind: 'versus', by: 'region' };
    const matched: Theme = { ...sides, flights: 'matched' };
    expect(checkTheme(matched, all, inPairs)).toEqual([]);
    expect(checkTheme(sides, all, inPairs)).toEqual([
      { code: 'sides-mixed', pours: ['a', 'b'], flight: 0 },
      { code: 'sides-mixed', pours: ['c', 'd'], flight: 1 },
    ]);
    const apart = [
      [a, c],
      [b, d],
    ];
    expect(checkTheme(sides, all, apart)).toEqual([]);
    expect(checkTheme(matched, all, apart)).toEqual([
      { code: 'side-missing', flight: 0 },
      { code: 'side-missing', flight: 1 },
    ]);
    // One flight alone is no order of flights.
    expect(checkTheme(sides, all, [all])).toEqual([]);
  });
});

describe('flights', () => {
  it.each([
    [0, 'newcomers', []],
    [3, 'newcomers', [3]],
    [6, 'regulars', [3, 3]],
    [9, 'devotees', [3, 3, 3]],
    [7, 'regulars', [3, 2, 2]],
    [1, 'devotees', [1]],
  ] as const)('%i pours for %s', (pours, level, sizes) => {
    expect(flightsFor(pours, level)).toEqual(sizes);
  });

  it('are as even as can be and hold every pour', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 16 }), fc.integer({ min: 1, max: 16 }), (pours, flights) => {
        const sizes = evenFlights(pours, flights);
        expect(sizes.reduce((sum, size) => sum + size, 0)).toBe(pours);
        expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
        expect(Math.min(...sizes)).toBeGreaterThan(0);
      }),
    );
  });

  it('are the sides of a comparison, or matches of one from each', () => {
    const pours = [
      pour('n-strong', { region: 'North', abv: 60 }),
      pour('s-mild', { region: 'South', abv: 40 }),
      pour('n-mild', { region: 'North', abv: 43 }),
      pour('s-strong', { region: 'South', abv: 55 }),
    ];
    expect(cutFlights({ kind: 'versus', by: 'region' }, pours, 'regulars')).toEqual({
      kind: 'groups',
      groups: [
        ['n-strong', 'n-mild'],
        ['s-mild', 's-strong'],
      ],
      order: 'least-carry-over',
    });
    const matched = cutFlights({ kind: 'versus', by: 'region', flights: 'matched' }, pours, 'regulars');
    expect(matched).toMatchObject({
      groups: [
        ['n-mild', 's-mild'],
        ['n-strong', 's-strong'],
      ],
      order: 'as-given',
    });
    expect(bestLineup(pours, { cut: matched }).steps.map(({ pour: id }) => id)).toEqual([
      's-mild',
      'n-mild',
      's-strong',
      'n-strong',
    ]);
  });

  it('end with the pours that are on no side', () => {
    const pours = [pour('lost'), pour('a', { region: 'North' }), pour('b', { region: 'South' })];
    expect(cutFlights({ kind: 'versus', by: 'region' }, pours, 'regulars')).toEqual({
      kind: 'groups',
      groups: [['a'], ['b'], ['lost']],
      order: 'as-given',
    });
  });

  it('step from low to high at the widest gap', () => {
    const pours = [40, 60, 43, 58].map((abv) => pour(`p${abv}`, { abv }));
    expect(cutFlights({ kind: 'versus', by: 'strength' }, pours, 'regulars')).toEqual({
      kind: 'groups',
      groups: [
        ['p40', 'p43'],
        ['p58', 'p60'],
      ],
      order: 'as-given',
    });
  });

  it('always make a cut that the lineup can follow', () => {
    const themes: readonly Theme[] = [
      { kind: 'free' },
      { kind: 'vertical', by: 'age' },
      { kind: 'horizontal', by: 'region' },
      { kind: 'versus', by: 'region' },
      { kind: 'versus', by: 'producer', flights: 'matched' },
      { kind: 'versus', by: 'strength' },
      { kind: 'versus', by: 'price' },
    ];
    fc.assert(
      fc.property(fc.constantFrom(...themes), plannedPours('spirit', 0, 8), (theme, pours) => {
        const cut = cutFlights(theme, pours, 'regulars');
        expect(bestLineup(pours, { cut, ...orderOptions(theme) }).steps).toHaveLength(pours.length);
      }),
    );
  });

  it('step through the years of a vertical whatever the strengths', () => {
    const pours = [
      pour('2010', { vintage: 2010, abv: 40, ageYears: 9 }),
      pour('1998', { vintage: 1998, abv: 43, ageYears: 8 }),
      pour('2003', { vintage: 2003, abv: 61, peat: 3, ageYears: 20 }),
    ];
    const lineup = bestLineup(pours, orderOptions({ kind: 'vertical', by: 'vintage' }));
    expect(lineup.steps.map(({ pour: id }) => id)).toEqual(['2010', '2003', '1998']);
  });
});
