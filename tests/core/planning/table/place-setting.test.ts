import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  comfortablePlaceWidth,
  layOutPlace,
  leastPlaceWidth,
  type PlaceSetting,
  type PlaceThing,
  type PlaceWish,
} from '../../../../core/planning/table/place-setting.ts';

const wish: fc.Arbitrary<PlaceWish> = fc
  .tuple(fc.boolean(), fc.constantFrom('A4' as const, 'A3' as const, 'Letter' as const))
  .chain(([computer, sheet]) =>
    fc.record({
      placeWidthMm: fc.oneof(
        fc.constant(leastPlaceWidth(computer, sheet)),
        fc.double({ min: leastPlaceWidth(computer, sheet), max: 2500, noNaN: true }),
      ),
      computer: fc.constant(computer),
      sheet: fc.constant(sheet),
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

/** Two round things by their middles, all others by the rectangles around them. */
function apart(one: PlaceThing, other: PlaceThing): boolean {
  if (one.shape === 'circle' && other.shape === 'circle') {
    const between = Math.hypot(one.xMm - other.xMm, one.yMm - other.yMm);
    return between >= (one.diameterMm + other.diameterMm) / 2;
  }
  const [a, b] = [boxOf(one), boxOf(other)];
  const beside = a.right <= b.left + 1e-6 || b.right <= a.left + 1e-6;
  const behind = a.bottom <= b.top + 1e-6 || b.bottom <= a.top + 1e-6;
  return beside || behind;
}

describe('a place', () => {
  it('has nothing that lies on something else', () => {
    fc.assert(
      fc.property(wish, (asked) => {
        const { things } = laid(asked);
        things.forEach((one, index) => {
          for (const other of things.slice(index + 1)) expect(apart(one, other)).toBe(true);
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

  it('has everything on it, the paper under the hand that writes and the cup on the side of the other', () => {
    fc.assert(
      fc.property(wish, (asked) => {
        const found = boxes(laid({ ...asked, hand: 'right' }));
        const mat = found.get('mat');
        expect([...found.keys()].toSorted()).toEqual(
          ['mat', 'spit-cup', 'water', 'writing', ...(asked.computer ? ['computer'] : [])].toSorted(),
        );
        expect(found.get('writing')?.left).toBeGreaterThan(mat?.right ?? Number.POSITIVE_INFINITY);
        const middle = ({ left = 0, right = 0 } = {}) => (left + right) / 2;
        expect(middle(found.get('spit-cup'))).toBeLessThan(middle(mat));
      }),
      { numRuns: 60 },
    );
  });

  it('has the cup, used after every sip, closer to the free hand than the water, where elbows are free', () => {
    for (const sheet of ['A4', 'A3', 'Letter'] as const) {
      const placeWidthMm = comfortablePlaceWidth(false, sheet);
      const found = boxes(
        laid({ placeWidthMm, computer: false, sheet, glasses: 3, footMm: 60, hand: 'right' }),
      );
      const mat = found.get('mat') ?? { left: 0, right: 0 };
      // The left hand of a right-hander comes from 20 cm beside the middle of the mat.
      const hand = { x: (mat.left + mat.right) / 2 - 200, y: 380 };
      const way = (what: 'spit-cup' | 'water') => {
        const { left, right, top, bottom } = found.get(what) ?? { left: 0, right: 0, top: 0, bottom: 0 };
        return Math.hypot((left + right) / 2 - hand.x, (top + bottom) / 2 - hand.y);
      };
      expect(way('spit-cup')).toBeLessThanOrEqual(way('water'));
    }
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

  it('is within the sweep of a forearm, 15 in from the edge', () => {
    // Normal reach: Sanders & McCormick, Human Factors in Engineering and Design (1987), as quoted; seen.
    expect(
      laid({ placeWidthMm: 762, sheet: 'A4', glasses: 3, footMm: 60, hand: 'right', computer: false })
        .depthMm,
    ).toBeLessThanOrEqual(15 * 25.4);
  });

  it('asks for a cover of 60 cm, more for what is wider, and is comfortable from 30 in on', () => {
    // Individual dining settings: 24 in (60 cm) at least, 30 in (76 cm) at best; Dimensions.com, seen.
    const asked = { sheet: 'A4', glasses: 3, footMm: 60, hand: 'right', computer: false } as const;
    expect(layOutPlace({ ...asked, placeWidthMm: 590 })).toEqual({
      fits: false,
      reason: 'place-too-narrow',
      needsMm: 600,
    });
    expect(laid({ ...asked, placeWidthMm: 600 }).room).toBe('close');
    expect(laid({ ...asked, placeWidthMm: 762 }).room).toBe('comfortable');
    // Two edges of 20 mm, cup, A3 mat, A5 paper, and a gap of 25 mm between any two.
    expect(leastPlaceWidth(false, 'A3')).toBe(2 * 20 + 90 + 25 + 420 + 25 + 148);
    expect(leastPlaceWidth(true)).toBe(2 * 20 + 297 + 25 + 148 + 25 + 330);
  });

  it('passes on that a mat is too small, and refuses a width that is none', () => {
    const asked = { placeWidthMm: 1000, computer: false, sheet: 'A4', footMm: 65, hand: 'right' } as const;
    expect(layOutPlace({ ...asked, glasses: 12 })).toMatchObject({ fits: false, reason: 'mat-too-small' });
    expect(() => layOutPlace({ ...asked, glasses: 3, placeWidthMm: Number.NaN })).toThrow(RangeError);
  });
});
