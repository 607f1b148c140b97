import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  abvFromDensity,
  abvFromMassFraction,
  densityFromAbv,
  densityFromMassFraction,
  massFractionFromAbv,
  massFractionFromDensity,
} from '../../../../core/planning/strength/alcoholometry.ts';
import { abvPercent, degreesCelsius, kilogramsPerCubicMetre, massFraction } from '../../../../core/units.ts';

const fraction = fc.double({ min: 0, max: 1, noNaN: true }).map(massFraction);
const temperature = fc.double({ min: -20, max: 40, noNaN: true }).map(degreesCelsius);
const strength = fc.double({ min: 0, max: 100, noNaN: true }).map(abvPercent);

describe('density of ethanol and water', () => {
  it('comes back from strength to mass fraction and again to strength', () => {
    fc.assert(
      fc.property(strength, temperature, (abv, celsius) => {
        expect(abvFromMassFraction(massFractionFromAbv(abv, celsius), celsius)).toBeCloseTo(abv, 9);
      }),
    );
  });

  it('comes back from density to mass fraction and again to density', () => {
    fc.assert(
      fc.property(fraction, temperature, (p, celsius) => {
        const density = densityFromMassFraction(p, celsius);
        const back = massFractionFromDensity(density, celsius);
        expect(densityFromMassFraction(back, celsius)).toBeCloseTo(density, 8);
        expect(back).toBeCloseTo(p, 8);
      }),
    );
  });

  it('falls all the way from water to ethanol, which the inverse leans on', () => {
    for (let celsius = -20; celsius <= 40; celsius += 2) {
      for (let p = 0; p < 1; p += 0.005) {
        const here = densityFromMassFraction(massFraction(p), degreesCelsius(celsius));
        const next = densityFromMassFraction(massFraction(Math.min(1, p + 0.005)), degreesCelsius(celsius));
        expect(next, `${p} at ${celsius}`).toBeLessThan(here);
      }
    }
  });

  it('reads a strength off a density at the temperature of the hydrometer', () => {
    const warm = degreesCelsius(27.5);
    expect(abvFromDensity(densityFromAbv(abvPercent(43), warm), warm)).toBeCloseTo(43, 8);
  });

  it('keeps the ends exact', () => {
    expect(massFractionFromAbv(abvPercent(0))).toBe(0);
    expect(massFractionFromAbv(abvPercent(100))).toBe(1);
    expect(abvFromMassFraction(massFraction(1))).toBe(100);
  });

  it('says which densities there are', () => {
    expect(() => massFractionFromDensity(kilogramsPerCubicMetre(1010))).toThrow(
      'give a number from 789.24 to 998.20.',
    );
    for (const outside of [789.22, 998.22]) {
      expect(() => massFractionFromDensity(kilogramsPerCubicMetre(outside))).toThrow(RangeError);
    }
    expect(massFractionFromDensity(kilogramsPerCubicMetre(789.23))).toBe(1);
    expect(massFractionFromDensity(kilogramsPerCubicMetre(998.21))).toBe(0);
  });
});
