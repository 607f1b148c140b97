import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  abvFromMassFraction,
  densityOfMixture,
  massFractionFromAbv,
} from '../../../../core/planning/strength/alcoholometry.ts';
import { abvPercent } from '../../../../core/units.ts';

describe('density of ethanol and water', () => {
  it('comes back from strength to mass fraction and again to strength', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 100, noNaN: true }), (abv) => {
        expect(abvFromMassFraction(massFractionFromAbv(abvPercent(abv)))).toBeCloseTo(abv, 9);
      }),
    );
  });

  it('gives more strength for more ethanol all the way, which the inverse leans on', () => {
    for (let p = 0; p < 1; p += 0.005) {
      const next = Math.min(1, p + 0.005);
      expect(abvFromMassFraction(next), String(p)).toBeGreaterThan(abvFromMassFraction(p));
      expect(densityOfMixture(next), String(p)).toBeLessThan(densityOfMixture(p));
    }
  });

  it('keeps the ends exact', () => {
    expect(massFractionFromAbv(abvPercent(0))).toBe(0);
    expect(massFractionFromAbv(abvPercent(100))).toBe(1);
    expect(abvFromMassFraction(1)).toBe(100);
  });
});
