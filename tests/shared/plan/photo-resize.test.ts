import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitWithin, longestSide } from '../../../host/pre-tasting/photo-resize.ts';

const size = fc.record({
  width: fc.integer({ min: 1, max: 20_000 }),
  height: fc.integer({ min: 1, max: 20_000 }),
});

describe('a label photo before it is sent', () => {
  it('is no longer than the server keeps it, never enlarged, and in the same shape', () => {
    fc.assert(
      fc.property(size, (photo) => {
        const fitted = fitWithin(photo, longestSide);
        expect(Math.max(fitted.width, fitted.height)).toBe(
          Math.min(longestSide, Math.max(photo.width, photo.height)),
        );
        // Within half a pixel of the same shape, and never without any width or height.
        const share = Math.min(1, longestSide / Math.max(photo.width, photo.height));
        for (const side of ['width', 'height'] as const) {
          expect(Math.abs(fitted[side] - Math.max(1, photo[side] * share))).toBeLessThanOrEqual(0.5);
        }
      }),
    );
  });

  it('of 12 megapixels becomes 1600 by 1200', () => {
    expect(fitWithin({ width: 4032, height: 3024 }, longestSide)).toEqual({ width: 1600, height: 1200 });
  });
});
