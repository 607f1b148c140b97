import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  alike,
  drawBlindCodes,
  meaningOf,
  neutralCodes,
} from '../../../../core/planning/serving/blind-codes.ts';
import { seededRandom } from '../../../support/seeded-random.ts';

describe('codes without meaning', () => {
  it.each([
    ['012', 'not-three-digits'],
    ['12', 'not-three-digits'],
    ['1234', 'not-three-digits'],
    ['12a', 'not-three-digits'],
    ['555', 'repeated-digit'],
    ['353', 'repeated-digit'],
    ['567', 'run'],
    ['876', 'run'],
    ['357', 'run'],
    ['530', 'figure-of-speech'],
    ['340', 'round'],
    ['600', 'round'],
    ['961', 'upside-down'],
    ['204', 'year-like'],
    ['112', 'emergency-number'],
    ['911', 'emergency-number'],
    ['999', 'emergency-number'],
    ['750', 'bottle-size'],
    ['700', 'bottle-size'],
    ['666', 'figure-of-speech'],
    ['420', 'figure-of-speech'],
    ['000', 'not-three-digits'],
    ['111', 'emergency-number'],
    ['123', 'emergency-number'],
  ])('%s is %s', (code, meaning) => {
    expect(meaningOf(code)).toBe(meaning);
  });

  it('are alike where two places agree or the digits are the same', () => {
    expect(alike('274', '279')).toBe(true);
    expect(alike('274', '284')).toBe(true);
    expect(alike('274', '742')).toBe(true);
    expect(alike('274', '735')).toBe(false);
    expect(alike('274', '213')).toBe(false);
  });

  it('leave more than enough to choose from, all with three different digits', () => {
    expect(neutralCodes.length).toBeGreaterThan(400);
    expect(neutralCodes.every((code) => new Set(code).size === 3)).toBe(true);
  });

  it('have too few look-alikes to run out within a full lineup', () => {
    const most = Math.max(
      ...neutralCodes.map(
        (code) => neutralCodes.filter((other) => other !== code && alike(code, other)).length,
      ),
    );
    expect(neutralCodes.length).toBeGreaterThan(15 * (most + 1));
  });

  it('are unique, neutral and unlike each other in a lineup of 16', () => {
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        const codes = drawBlindCodes(16, seededRandom(seed));
        expect(new Set(codes).size).toBe(16);
        expect(codes.every((code) => meaningOf(code) === undefined)).toBe(true);
        expect(codes.every((one, at) => !codes.slice(0, at).some((other) => alike(one, other)))).toBe(true);
      }),
    );
  });

  it('come out alike from the same seed and unlike from another', () => {
    expect(drawBlindCodes(6, seededRandom(5))).toEqual(drawBlindCodes(6, seededRandom(5)));
    expect(drawBlindCodes(6, seededRandom(5))).not.toEqual(drawBlindCodes(6, seededRandom(6)));
  });

  it('avoid what is taken, and stay unique even when all are used', () => {
    const taken = drawBlindCodes(10, seededRandom(1));
    const all = drawBlindCodes(neutralCodes.length - 10, seededRandom(2), taken);
    expect(new Set([...taken, ...all]).size).toBe(neutralCodes.length);
    expect(() => drawBlindCodes(neutralCodes.length + 1, seededRandom(2))).toThrow(/ask for no more/);
    expect(() => drawBlindCodes(1.5, seededRandom(2))).toThrow(RangeError);
  });
});
