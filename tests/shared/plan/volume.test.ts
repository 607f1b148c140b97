import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { millilitres } from '../../../core/units.ts';
import { inMl, inUnit, volume } from '../../../host/plan/volume.ts';
import { volumeText } from '../../../host/print/volume.ts';

describe('volumes in the measures that the host chose', () => {
  it('are exact: 1 US fl oz is 29.5735295625 mL, 1 imperial one 28.4130625 mL', () => {
    // A US gallon of 231 cubic inches (27 CFR 30.11) in 128 parts, an inch of 2.54 cm; NIST Handbook 44, Appendix C, prints
    // it as 29.573 53 mL (from memory). An imperial gallon of 4.546 09 L (Weights and Measures Act 1985, from memory) in 160.
    expect(inMl(8, 'fl-oz-us')).toBeCloseTo(236.5882365, 6);
    expect(inMl(1, 'fl-oz-us')).toBeCloseTo(29.5735295625, 6);
    expect(inMl(1, 'fl-oz-imperial')).toBeCloseTo(28.4130625, 5);
    expect(inMl(20, 'ml')).toBe(20);
  });

  it('are read as people pour them', () => {
    expect(volume(44.36029434375, 'fl-oz-us')).toBe('1.5\u00a0fl\u00a0oz');
    expect(volume(20, 'fl-oz-us')).toBe('0.68\u00a0fl\u00a0oz');
    expect(volume(20, 'ml')).toBe('20\u00a0mL');
    expect(volume(44.36029434375, 'ml', 3)).toBe('44.36\u00a0mL');
    expect(volumeText(millilitres(2500), 'ml')).toBe('2.5 L');
    expect(volumeText(millilitres(2500), 'fl-oz-us')).toBe('84.54\u00a0fl\u00a0oz');
  });

  it('come back from a field as they went in, to a hundredth of an ounce', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 50_000 }),
        fc.constantFrom('fl-oz-us', 'fl-oz-imperial'),
        (hundredths, unit) => {
          expect(inUnit(inMl(hundredths / 100, unit), unit)).toBe(hundredths / 100);
        },
      ),
    );
  });
});
