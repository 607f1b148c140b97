import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beerAbsorbance, beerColour, ebcToSrm, srmToEbc } from '../../support/colour/beer-colour.ts';
import { ciede2000, toLab } from '../../support/colour/colour-difference.ts';
import {
  caskColour,
  hueIndexOf,
  spiritAbsorbance,
  spiritColour,
} from '../../support/colour/spirit-colour.ts';
import { toScreen } from '../../support/colour/srgb.ts';
import { d65White } from '../../support/colour/tristimulus.ts';
import { wineAbsorbance, wineColour, wineReadings } from '../../support/colour/wine-colour.ts';

it.each([-1, Number.NaN, Number.POSITIVE_INFINITY])('a beer of %s has a colour by neither scale', (none) => {
  for (const turned of [srmToEbc, ebcToSrm]) expect(() => turned(none)).toThrow(RangeError);
});

describe('the amber range of spirits', () => {
  it('has the absorbance and the hue index that it is given', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 3, noNaN: true }),
        fc.double({ min: 3, max: 8, noNaN: true }),
        (a430, hueIndex) => {
          const absorbance = spiritAbsorbance({ a430, hueIndex });
          expect(absorbance(430)).toBeCloseTo(a430, 12);
          expect(hueIndexOf(absorbance)).toBeCloseTo(hueIndex, 9);
        },
      ),
    );
  });

  it('keeps its hue index in the usual range of caramel colours, browner as it darkens', () => {
    // Usual values of about 4 to 7.5: from memory.
    const indices = [0.001, 0.02, 0.1, 0.5, 2.5, 9].map((a430) => caskColour(a430).hueIndex);
    expect(indices).toEqual([...indices].sort((a, b) => b - a));
    expect(Math.min(...indices)).toBeGreaterThanOrEqual(4);
    expect(Math.max(...indices)).toBeLessThanOrEqual(7.5);
  });

  it('falls with wavelength as the average of 99 beers does', () => {
    // deLange's spectrum, an independent fit to measured amber drinks, has an index of 5.3.
    expect(hueIndexOf(beerAbsorbance(10))).toBeCloseTo(5.3, 1);
    const atSameIndex = spiritAbsorbance({ a430: 10 / 12.7, hueIndex: hueIndexOf(beerAbsorbance(10)) });
    for (const wavelength of [430, 480, 530, 580, 630, 680]) {
      expect(Math.abs(atSameIndex(wavelength) - beerAbsorbance(10)(wavelength))).toBeLessThan(0.02);
    }
  });

  it('darkens with more colour and with more depth, and is white without colour', () => {
    expect(spiritColour(caskColour(0), 4)).toEqual(d65White);
    const share = fc.double({ min: 0.01, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, (a430, more) => {
        const here = spiritColour(caskColour(a430), 3).Y;
        expect(spiritColour(caskColour(a430 + more), 3).Y).toBeLessThan(here);
        expect(spiritColour(caskColour(a430), 3 + more).Y).toBeLessThan(here);
      }),
    );
  });

  it('refuses a colour or a depth that is none', () => {
    expect(() => spiritColour({ a430: -1, hueIndex: 5 }, 4)).toThrow(RangeError);
    expect(() => spiritColour({ a430: Number.NaN, hueIndex: 5 }, 4)).toThrow(RangeError);
    expect(() => spiritColour(caskColour(1), -1)).toThrow(/depth/);
  });
});

describe('the ranges of wine', () => {
  it('reads a young red and an old red as laboratories do', () => {
    // OIV-MA-AS2-07B defines the readings; a hue near 0.5 for young reds that rises to about 1 and more with
    // age, and a share of A620 near a tenth in young reds: from memory.
    const young = wineReadings({ yellow: 2.4, red: 6.4, blue: 1 });
    const old = wineReadings({ yellow: 5.2, red: 3.2, blue: 0.5 });
    expect(young.hue).toBeGreaterThan(0.35);
    expect(young.hue).toBeLessThan(0.7);
    expect(old.hue).toBeGreaterThan(1);
    expect(young.a620 / young.intensity).toBeGreaterThan(0.08);
    expect(young.a620 / young.intensity).toBeLessThan(0.2);
    expect(young.intensity).toBeCloseTo(young.a420 + young.a520 + young.a620, 12);
  });

  it('gives an empty band no reading and no NaN', () => {
    expect(wineReadings({ yellow: 0, red: 0, blue: 0 })).toEqual({
      a420: 0,
      a520: 0,
      a620: 0,
      intensity: 0,
      hue: 0,
    });
  });

  it('moves from blue-red to yellow-red as the yellow band grows', () => {
    const hues = [1, 2, 4, 8].map((yellow) => {
      const [, a, b] = toLab(wineColour({ yellow, red: 5, blue: 0.5 }, 0.5));
      return Math.atan2(b, a);
    });
    expect(hues).toEqual([...hues].sort((a, b) => a - b));
  });

  it('refuses a band below nothing', () => {
    expect(() => wineAbsorbance({ yellow: 0, red: -0.1, blue: 0 })).toThrow(RangeError);
  });
});

describe('beer', () => {
  it('has a round trip between its two scales', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 100, noNaN: true }), (srm) => {
        expect(ebcToSrm(srmToEbc(srm))).toBeCloseTo(srm, 9);
      }),
    );
  });

  it('depends on colour times depth alone', () => {
    const one = beerColour(20, 1);
    const other = beerColour(4, 5);
    expect(one.X).toBeCloseTo(other.X, 12);
    expect(one.Z).toBeCloseTo(other.Z, 12);
  });

  it('refuses a colour below nothing, and goes black without NaN where it is very deep', () => {
    expect(() => beerColour(-1, 5)).toThrow(RangeError);
    expect(() => beerColour(Number.NaN, 5)).toThrow(RangeError);
    expect(toScreen(beerColour(1e6, 100)).hex).toBe('#000000');
  });
});

describe('the difference between two colours', () => {
  const lab = fc.tuple(
    fc.double({ min: 0, max: 100, noNaN: true }),
    fc.double({ min: -100, max: 100, noNaN: true }),
    fc.double({ min: -100, max: 100, noNaN: true }),
  );
  it('is the same both ways, and nothing for a colour and itself', () => {
    fc.assert(
      fc.property(lab, lab, (one, other) => {
        expect(ciede2000(one, other)).toBeCloseTo(ciede2000(other, one), 6);
        expect(ciede2000(one, one)).toBeCloseTo(0, 9);
      }),
    );
  });
});
