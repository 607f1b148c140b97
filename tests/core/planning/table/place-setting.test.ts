import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  layOutPlace,
  type PlaceSetting,
  type PlaceThing,
  type PlaceWish,
  placeWidths,
} from '../../../../core/planning/table/place-setting.ts';

const wish: fc.Arbitrary<PlaceWish> = fc.boolean().chain((computer) =>
  fc.record({
    placeWidthMm: fc.oneof(
      fc.constant(computer ? 1524 : 914),
      fc.double({ min: computer ? 1524 : 914, max: 2500, noNaN: true }),
    ),
    computer: fc.constant(computer),
    sheet: fc.constantFrom('A4' as const, 'A3' as const, 'Letter' as const),
    glasses: fc.integer({ min: 1, max: 5 }),
    footMm: fc.integer({ min: 40, max: 65 }),
    hand: fc.constantFrom('right' as const, 'left' as const),
  }),
);

function laid(asked: PlaceWish): PlaceSetting {
  const place = layOutPlace(asked);
  if (!place.fits) throw new Error(place.reason);
  return place;
}

/** The upright rectangle around a thing. */
function boxOf(thing: PlaceThing) {
  const { xMm, yMm } = thing;
  return thing.shape === 'rectangle'
    ? { left: xMm, top: yMm, right: xMm + thing.widthMm, bottom: yMm + thing.heightMm }
    : {
        left: xMm - thing.diameterMm / 2,
        top: yMm - thing.diameterMm / 2,
        right: xMm + thing.diameterMm / 2,
        bottom: yMm + thing.diameterMm / 2,
      };
}
const boxes = (place: PlaceSetting) => new Map(place.things.map((thing) => [thing.what, boxOf(thing)]));

describe('a place', () => {
  it('has nothing that lies on something else', () => {
    fc.assert(
      fc.property(wish, (asked) => {
        const all = [...boxes(laid(asked)).values()];
        all.forEach((one, index) => {
          for (const other of all.slice(index + 1)) {
            const beside = one.right <= other.left + 1e-6 || other.right <= one.left + 1e-6;
            const behind = one.bottom <= other.top + 1e-6 || other.bottom <= one.top + 1e-6;
            expect(beside || behind).toBe(true);
          }
        });
      }),
    );
  });

  it('keeps to itself: all within its width and its half of the table', () => {
    fc.assert(
      fc.property(wish, (asked) => {
        const place = laid(asked);
        for (const { left, top, right, bottom } of boxes(place).values()) {
          expect(left).toBeGreaterThanOrEqual(0);
          expect(top).toBeGreaterThanOrEqual(0);
          expect(right).toBeLessThanOrEqual(place.widthMm + 1e-6);
          expect(bottom).toBeLessThanOrEqual(place.depthMm);
        }
      }),
    );
  });

  it('has the spit cup farthest left and water and writing to the right of a right-hander', () => {
    fc.assert(
      fc.property(wish, (asked) => {
        const found = boxes(laid({ ...asked, hand: 'right' }));
        const mat = found.get('mat');
        const others = [...found].filter(([what]) => what !== 'spit-cup').map(([, { left }]) => left);
        expect(found.get('spit-cup')?.right).toBeLessThan(Math.min(...others));
        expect(found.get('water')?.left).toBeGreaterThan(mat?.right ?? Number.POSITIVE_INFINITY);
        expect(found.get('writing')?.left).toBeGreaterThan(mat?.right ?? Number.POSITIVE_INFINITY);
        expect(found.has('computer')).toBe(asked.computer);
      }),
    );
  });

  it('is mirrored for a left-hander', () => {
    fc.assert(
      fc.property(wish, (asked) => {
        const right = boxes(laid({ ...asked, hand: 'right' }));
        const left = boxes(laid({ ...asked, hand: 'left' }));
        for (const [what, box] of right) {
          expect(left.get(what)?.left).toBeCloseTo(asked.placeWidthMm - box.right, 6);
          expect(left.get(what)?.top).toBe(box.top);
        }
      }),
    );
  });

  it('has the mat straight before the guest', () => {
    fc.assert(
      fc.property(wish, (asked) => {
        const mat = boxes(laid(asked)).get('mat');
        expect(((mat?.left ?? 0) + (mat?.right ?? 0)) / 2).toBeCloseTo(asked.placeWidthMm / 2, 6);
      }),
    );
  });

  it('asks for 36 in, 60 in with a computer; 36 to 48 in are comfortable', () => {
    // Common practice, no source.
    const asked = { sheet: 'A4', glasses: 3, footMm: 60, hand: 'right', computer: false } as const;
    expect(placeWidths.leastMm).toBe(Math.round(36 * 25.4));
    expect(placeWidths.comfortableToMm).toBe(Math.round(48 * 25.4));
    expect(placeWidths.withComputerMm).toBe(Math.round(60 * 25.4));
    expect(layOutPlace({ ...asked, placeWidthMm: 900 })).toEqual({
      fits: false,
      reason: 'place-too-narrow',
      needsMm: 914,
    });
    expect(layOutPlace({ ...asked, placeWidthMm: 1000, computer: true })).toMatchObject({ needsMm: 1524 });
    expect(laid({ ...asked, placeWidthMm: 1000 }).room).toBe('comfortable');
    expect(laid({ ...asked, placeWidthMm: 1300 }).room).toBe('roomy');
  });

  it('passes on that a mat is too small, and refuses a width that is none', () => {
    const asked = { placeWidthMm: 1000, computer: false, sheet: 'A4', footMm: 65, hand: 'right' } as const;
    expect(layOutPlace({ ...asked, glasses: 12 })).toMatchObject({ fits: false, reason: 'mat-too-small' });
    expect(() => layOutPlace({ ...asked, glasses: 3, placeWidthMm: Number.NaN })).toThrow(RangeError);
  });
});
