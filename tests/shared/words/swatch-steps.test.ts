import { describe, expect, it } from 'vitest';
import { ciede2000, toLab } from '../../support/colour/colour-difference.ts';
import { correlatedColourTemperature } from '../../support/colour/colour-temperature.ts';
import { contrastRatio } from '../../support/colour/contrast.ts';
import { fromHex, srgbToLinear, toHex } from '../../support/colour/srgb.ts';
import {
  beerSwatches,
  nearestBeerSwatch,
  type Swatch,
  spiritSwatches,
  wineSwatches,
} from '../../support/colour/swatches.ts';
import { chromaticity } from '../../support/colour/tristimulus.ts';

const ranges = {
  spirit: spiritSwatches,
  beer: beerSwatches,
  white: wineSwatches.filter(({ range }) => range === 'white'),
  rose: wineSwatches.filter(({ range }) => range === 'rose'),
  red: wineSwatches.filter(({ range }) => range === 'red'),
};

/** As a screen shows it: back from the hex code, sRGB primaries to XYZ (IEC 61966-2-1, from memory). */
function labOf({ hex }: Swatch) {
  const [r = 0, g = 0, b = 0] = fromHex(hex).map(srgbToLinear);
  return toLab({
    X: 0.4124564 * r + 0.3575761 * g + 0.1804375 * b,
    Y: 0.2126729 * r + 0.7151522 * g + 0.072175 * b,
    Z: 0.0193339 * r + 0.119192 * g + 0.9503041 * b,
  });
}

describe('swatches', () => {
  it('have ten to sixteen steps for each drink, each with a word of its own', () => {
    for (const list of [spiritSwatches, beerSwatches, wineSwatches]) {
      expect(list.length).toBeGreaterThanOrEqual(10);
      expect(list.length).toBeLessThanOrEqual(16);
      expect(new Set(list.map(({ word }) => word)).size).toBe(list.length);
    }
  });

  it.each(Object.entries(ranges))(
    'of %s can be told from each other, neighbours most of all alike',
    (_, list) => {
      list.forEach((one, index) => {
        list.slice(index + 1).forEach((other) => {
          expect(ciede2000(labOf(one), labOf(other)), `${one.word} and ${other.word}`).toBeGreaterThan(2.5);
        });
      });
    },
  );

  it.each(['spirit', 'beer'] as const)('of %s go from pale to dark', (range) => {
    const lightness = ranges[range].map((each) => labOf(each)[0]);
    expect(lightness).toEqual([...lightness].sort((a, b) => b - a));
  });

  it('give a word that two drinks share the same colour', () => {
    const all = [...spiritSwatches, ...beerSwatches, ...wineSwatches];
    for (const one of all) {
      for (const other of all.filter(({ word }) => word === one.word)) {
        expect(ciede2000(labOf(one), labOf(other)), one.word).toBeLessThan(5);
      }
    }
  });

  it('carry text that reads: contrast of 4.5 or more (WCAG 2.2, 1.4.3)', () => {
    for (const { hex, text } of [...spiritSwatches, ...beerSwatches, ...wineSwatches]) {
      expect(contrastRatio(hex, text === 'white' ? '#ffffff' : '#000000')).toBeGreaterThanOrEqual(4.5);
    }
  });

  it('find the step of a beer whose colour is printed on the label', () => {
    expect(nearestBeerSwatch(0)?.word).toBe('light-honey');
    expect(nearestBeerSwatch(4.9)?.word).toBe('marmalade');
    expect(nearestBeerSwatch(300)?.word).toBe('black');
    expect(() => nearestBeerSwatch(-3)).toThrow(RangeError);
  });
});

describe('hex colours', () => {
  it('are read long, short and in capitals, and nothing else is', () => {
    expect(fromHex('#1D6B62')).toEqual([29, 107, 98]);
    expect(fromHex('#fa0')).toEqual([255, 170, 0]);
    expect(toHex([0, 10, 255])).toBe('#000aff');
    for (const wrong of ['1D6B62', '#12345', '#gggggg', '', 'red'])
      expect(() => fromHex(wrong)).toThrow(RangeError);
  });
});

describe('numbers at the edge', () => {
  it('give black the chromaticity of white, and no colour temperature where there is none', () => {
    expect(chromaticity({ X: 0, Y: 0, Z: 0 }).x).toBeCloseTo(0.3127, 4);
    expect(() => correlatedColourTemperature(0.4, 0.1858)).toThrow(RangeError);
  });
});
