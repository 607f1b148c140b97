import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sources } from '../../../../core/planning/figures/sources.ts';
import {
  australianDay,
  canadianOccasion,
  guidanceMarks,
} from '../../../../core/planning/strength/drinking-guidance.ts';
import { ethanolInPours, type Poured } from '../../../../core/planning/strength/ethanol.ts';
import { eveningStrength } from '../../../../core/planning/strength/evening-strength.ts';
import { smallerPours } from '../../../../core/planning/strength/smaller-pours.ts';
import { abvPercent, grams, millilitres } from '../../../../core/units.ts';

const poured = (volume: number, strength: number): Poured => ({
  volume: millilitres(volume),
  strength: abvPercent(strength),
});
const lineup = (count: number, volume: number, strength: number) =>
  Array.from({ length: count }, () => poured(volume, strength));

const pours = fc.array(
  fc
    .tuple(fc.double({ min: 0, max: 200, noNaN: true }), fc.double({ min: 0, max: 70, noNaN: true }))
    .map(([volume, strength]) => poured(volume, strength)),
  { maxLength: 12 },
);

describe('[C3] ethanol of an evening', () => {
  it('finds about ten US drinks in nine pours of 44 mL at 46 %, says so aloud and offers less', () => {
    const evening = eveningStrength(lineup(9, 44, 46), 'US');
    expect(evening.total.mass).toBeCloseTo(143.8, 1);
    expect(evening.total.drinks).toBeCloseTo(10.27, 2);
    expect(evening.crossed.map((mark) => mark.id)).toEqual(guidanceMarks.map((mark) => mark.id));
    if (evening.caution.level !== 'loud') throw new Error(evening.caution.level);
    expect(sources[evening.caution.line.source]).toMatchObject({ year: 2020, checked: 'text seen' });
    expect(evening.caution.offer).toMatchObject({ kind: 'smaller-pours', volumes: Array(9).fill(12) });
  });

  it('counts drink by drink up to the total', () => {
    fc.assert(
      fc.property(pours, (given) => {
        const evening = eveningStrength(given, 'GB');
        expect(evening.pours).toHaveLength(given.length);
        let mass = 0;
        for (const { pour, soFar } of evening.pours) {
          mass += pour.mass;
          expect(soFar.mass).toBeCloseTo(mass, 8);
        }
        expect(evening.total.mass).toBeCloseTo(mass, 8);
        expect(evening.total.drinks).toBeCloseTo(evening.total.volume / 10, 8);
        expect(evening.total.reckoning.at(-1)?.result.value).toBe(evening.total.drinks);
      }),
    );
  });

  it('gets louder with the sum, at the lines that bodies drew', () => {
    const level = (mass: number, standard: 'US' | 'CA') => {
      const volume = (mass / 0.78924) * 2;
      return eveningStrength([poured(volume, 50)], standard).caution.level;
    };
    expect([26.9, 26.91, 40, 40.01].map((mass) => level(mass, 'US'))).toEqual([
      'quiet',
      'notice',
      'notice',
      'loud',
    ]);
    expect([26.9, 26.91].map((mass) => level(mass, 'CA'))).toEqual(['quiet', 'loud']);
  });

  it('tells a line that one must not pass from one that one must not reach', () => {
    const crossedAt = (mass: number) =>
      eveningStrength([poured((mass / 0.78924) * 2, 50)], 'US').crossed.map((mark) => mark.id);
    expect(crossedAt(40)).not.toContain('au-day');
    expect(crossedAt(56)).toContain('us-binge-women');
    expect(crossedAt(55.99)).not.toContain('us-binge-women');
  });

  it('keeps its marks rising and sourced', () => {
    const masses = guidanceMarks.map((mark) => mark.ethanol);
    expect(masses).toEqual([...masses].sort((one, other) => one - other));
    expect(canadianOccasion.ethanol).toBeLessThan(australianDay.ethanol);
    for (const mark of guidanceMarks) expect(sources[mark.source].year).not.toBeNull();
  });

  it('is quiet over nothing', () => {
    expect(eveningStrength([], 'JP')).toMatchObject({
      total: { mass: 0, drinks: 0 },
      crossed: [],
      caution: { level: 'quiet' },
    });
    expect(eveningStrength(lineup(9, 100, 0), 'US').caution).toEqual({ level: 'quiet' });
  });

  it('offers what no longer needs the caution it came with', () => {
    fc.assert(
      fc.property(pours, fc.constantFrom('US', 'CA', 'AU'), (given, standard) => {
        const { caution } = eveningStrength(given, standard);
        if (caution.level === 'quiet') return;
        const offered = caution.offer.volumes.map((volume, at): Poured => {
          return { volume, strength: given[at]?.strength ?? abvPercent(0) };
        });
        const after = eveningStrength(offered, standard);
        expect(after.crossed).not.toContain(caution.line);
        expect(after.total.mass).toBeCloseTo(caution.offer.ethanol, 9);
      }),
    );
  });
});

describe('smaller pours', () => {
  it('never pours more than before, nor more than the limit', () => {
    fc.assert(
      fc.property(pours, fc.double({ min: 0, max: 150, noNaN: true }), (given, limit) => {
        const offer = smallerPours(given, grams(limit));
        expect(offer.ethanol).toBeLessThanOrEqual(limit + 1e-9);
        for (const [at, volume] of offer.volumes.entries()) {
          expect(volume).toBeLessThanOrEqual(given[at]?.volume ?? 0);
        }
        if (offer.kind === 'smaller-pours') expect(offer.volumes).toHaveLength(given.length);
        else expect(offer.keep).toBeLessThan(given.length);
      }),
    );
  });

  it('keeps a small pour at the smallest and takes from the large ones', () => {
    const offer = smallerPours([poured(6, 60), poured(150, 40)], grams(30));
    expect(offer).toMatchObject({ kind: 'smaller-pours', volumes: [5, 87] });
  });

  it('leaves drinks without ethanol as they are', () => {
    const offer = smallerPours([poured(100, 0), poured(100, 40)], grams(20));
    expect(offer.volumes).toEqual([100, 63]);
  });

  it('offers fewer drinks when the smallest pours are still too much', () => {
    const offer = smallerPours(lineup(30, 44, 60), grams(40));
    // 5 mL at 60 % hold 2.368 g.
    expect(offer).toMatchObject({ kind: 'fewer-pours', keep: 16 });
    expect(ethanolInPours(lineup(16, 5, 60)).mass).toBeCloseTo(offer.ethanol, 9);
  });

  it('changes nothing within the limit', () => {
    expect(smallerPours(lineup(3, 12.5, 43), grams(40))).toMatchObject({ volumes: [12.5, 12.5, 12.5] });
  });
});
