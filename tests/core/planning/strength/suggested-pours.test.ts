import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drinks, levels } from '../../../../core/drinks/drink-kinds.ts';
import { waysOf } from '../../../../core/drinks/drink-ways.ts';
import { canadianOccasion } from '../../../../core/planning/strength/drinking-guidance.ts';
import { suggestedPours } from '../../../../core/planning/strength/suggested-pours.ts';
import { usualFlights } from '../../../../core/tasting.ts';
import { abvPercent, grams, millilitres } from '../../../../core/units.ts';

/** Ethanol has 0.78924 g/mL at 20 °C (OIML R 22). */
const massOf = (volumes: readonly number[], strength: number, glasses = 1): number =>
  volumes.reduce((sum, volume) => sum + (volume * glasses * strength * 0.78924) / 100, 0);

const pour = (usual: number, strength: number, glasses = 1, own?: number) => ({
  own: own === undefined ? undefined : millilitres(own),
  usual: millilitres(usual),
  strength: abvPercent(strength),
  glasses,
});

/** Two Canadian drinks of 13.45 g: the lowest line for one occasion (CCSA 2023). */
const line = 26.9;

describe('[C3] the pours that a plan suggests', () => {
  it('stay below the lowest line for one occasion with the numbers that a plan suggests for each crowd', () => {
    expect(canadianOccasion.ethanol).toBeCloseTo(line, 9);
    // The strongest that is usual of each drink: cask strength, a ripe red, a strong beer (common practice, no source).
    const strongest = { spirit: 60, wine: 15, beer: 9 } as const;
    for (const drink of drinks) {
      for (const level of levels) {
        const count = usualFlights[level].reduce((sum, size) => sum + size, 0);
        const pours = Array.from({ length: count }, () => pour(waysOf[drink].pour, strongest[drink]));
        expect(massOf(suggestedPours(pours, canadianOccasion.ethanol), strongest[drink])).toBeLessThanOrEqual(
          line,
        );
      }
    }
  });

  it('are the usual ones while those fit, and less of each where nine pours of 20 mL at 43 % would be 61 g', () => {
    const nine = Array.from({ length: 9 }, () => pour(20, 43));
    expect(
      massOf(
        nine.map(({ usual }) => usual),
        43,
      ),
    ).toBeCloseTo(61.1, 1);
    expect(suggestedPours(nine.slice(0, 3), grams(line))).toEqual([20, 20, 20]);
    expect(suggestedPours(nine, grams(line))).toEqual(Array(9).fill(8));
  });

  it('leave sizes of the host’s own alone, and count them', () => {
    // 50 mL at 50 % are 19.7 g and leave 7.2 g: 18 mL of the same, no more.
    const [own, other] = suggestedPours([pour(20, 50, 1, 50), pour(20, 50)], grams(line));
    expect(own).toBe(50);
    expect(massOf([50, other ?? 0], 50)).toBeLessThanOrEqual(line);
    expect(other).toBe(18);
  });

  it('count every glass of an odd-one-out', () => {
    const volumes = suggestedPours([pour(20, 60, 3), pour(20, 60, 3), pour(20, 60)], grams(line));
    expect(massOf(volumes.slice(0, 2), 60, 3) + massOf(volumes.slice(2), 60)).toBeLessThanOrEqual(line);
  });

  it('never go below what can be nosed, nor above the usual size', () => {
    const some = fc.record({
      usual: fc.integer({ min: 5, max: 75 }),
      strength: fc.integer({ min: 0, max: 96 }),
      glasses: fc.integer({ min: 1, max: 3 }),
    });
    fc.assert(
      fc.property(fc.array(some, { maxLength: 16 }), (given) => {
        const pours = given.map(({ usual, strength, glasses }) => pour(usual, strength, glasses));
        suggestedPours(pours, grams(line)).forEach((volume, at) => {
          expect(volume).toBeGreaterThanOrEqual(5);
          expect(volume).toBeLessThanOrEqual(pours[at]?.usual ?? 0);
        });
      }),
    );
  });
});
