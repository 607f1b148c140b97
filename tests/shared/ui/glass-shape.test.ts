import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  areaBelow,
  bowlHalfWidth,
  bowlPath,
  fullY,
  glassBox,
  levelAt,
  liquidPath,
  pourY,
} from '../../../shared/ui/glass-shape.ts';

const bottom = 60;

/** Area by the midpoint rule from the widths alone, a second way to the same number. */
function summedArea(y: number): number {
  const slices = 20_000;
  const height = (bottom - y) / slices;
  let area = 0;
  for (let slice = 0; slice < slices; slice += 1) {
    area += 2 * bowlHalfWidth(bottom - (slice + 0.5) * height) * height;
  }
  return area;
}

describe('the bowl', () => {
  it('is widest where a pour stands and narrower at the rim', () => {
    expect(bowlHalfWidth(pourY)).toBe(25);
    expect(bowlHalfWidth(pourY - 1)).toBeLessThan(25);
    expect(bowlHalfWidth(pourY + 1)).toBeLessThan(25);
    expect(bowlHalfWidth(4)).toBeGreaterThan(15);
    expect(bowlHalfWidth(4)).toBeLessThan(20);
    expect(bowlHalfWidth(bottom)).toBe(0);
    expect(bowlHalfWidth(3)).toBe(0);
  });

  it.each([fullY, 20, pourY, 44, 59])('holds below %s what its widths add up to', (y) => {
    expect(areaBelow(y)).toBeCloseTo(summedArea(y), 1);
  });

  it('holds below its widest point the half of an ellipse', () => {
    expect(areaBelow(pourY)).toBeCloseTo((Math.PI * 25 * 24) / 2, 6);
  });

  it('fits its box', () => {
    const numbers = [...bowlPath.matchAll(/\d+(\.\d+)?/g)].map((match) => Number(match[0]));
    expect(Math.max(...numbers)).toBeLessThanOrEqual(glassBox.height);
  });
});

describe('the drain', () => {
  it('starts a finger below the rim and ends at the bottom', () => {
    expect(levelAt(1)).toBeCloseTo(fullY, 6);
    expect(levelAt(0)).toBeCloseTo(bottom, 4);
    expect(levelAt(7)).toBeCloseTo(fullY, 6);
    expect(levelAt(-1)).toBeCloseTo(bottom, 4);
  });

  it('loses painted area evenly with time', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
        expect(areaBelow(levelAt(share)) / areaBelow(fullY)).toBeCloseTo(share, 6);
      }),
    );
  });

  it('paints nothing when nothing is left', () => {
    expect(liquidPath(levelAt(0))).toBe('');
    expect(liquidPath(levelAt(0.01))).not.toBe('');
  });

  it('paints a surface as wide as the bowl at its level', () => {
    const y = levelAt(0.9);
    const start = /^M([\d.]+) ([\d.]+)/.exec(liquidPath(y));
    expect(30 - Number(start?.[1])).toBeCloseTo(bowlHalfWidth(y), 1);
    expect(Number(start?.[2])).toBeCloseTo(y, 1);
  });
});
