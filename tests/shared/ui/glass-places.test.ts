import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  arcBox,
  arcPlaces,
  arcTop,
  glassHeight,
  mostGlasses,
  raised,
} from '../../../shared/ui/glass-places.ts';

const counts = fc.integer({ min: 1, max: mostGlasses });

describe('the arc', () => {
  it('keeps every glass inside the picture, also when it is raised', () => {
    fc.assert(
      fc.property(counts, fc.boolean(), (count, mirrored) => {
        const places = arcPlaces(count, mirrored);
        expect(places).toHaveLength(count);
        for (const place of places) {
          const held = raised(place);
          expect(held.x - held.width / 2).toBeGreaterThanOrEqual(0);
          expect(held.x + held.width / 2).toBeLessThanOrEqual(arcBox.width);
          expect(held.y - glassHeight(held.width)).toBeGreaterThan(arcTop(places));
          expect(place.y).toBeLessThan(arcBox.bottom);
        }
      }),
    );
  });

  it('lets no glass stand in another, nor the raised one hide its neighbours', () => {
    fc.assert(
      fc.property(counts, fc.nat({ max: mostGlasses - 1 }), (count, current) => {
        const row = arcPlaces(count, false).map((place, index) =>
          index === current ? raised(place) : place,
        );
        row.slice(1).forEach((place, index) => {
          const before = row[index];
          if (before) expect(place.x - before.x).toBeGreaterThan((place.width + before.width) / 2);
        });
      }),
    );
  });

  it('is laid from the left, and from the right for a left-hander', () => {
    const right = arcPlaces(7, false);
    const left = arcPlaces(7, true);
    right.forEach((place, index) => {
      expect(left[index]?.x).toBeCloseTo(arcBox.width - place.x, 9);
      expect(left[index]?.y).toBeCloseTo(place.y, 9);
    });
    expect(right[0]?.x).toBeLessThan(right[6]?.x ?? 0);
  });

  it('is farthest from the guest in the middle, and even on both sides', () => {
    const row = arcPlaces(9, false);
    expect(Math.min(...row.map(({ y }) => y))).toBe(row[4]?.y);
    expect(row[0]?.y).toBeCloseTo(row[8]?.y ?? 0, 9);
    expect(row[0]?.x).toBeCloseTo(arcBox.width - (row[8]?.x ?? 0), 9);
  });

  it('sets one glass in the middle and few glasses near each other', () => {
    expect(arcPlaces(1, true)).toEqual([{ x: arcBox.width / 2, y: 74, width: 26 }]);
    const [one, two] = arcPlaces(2, false);
    expect((two?.x ?? 0) - (one?.x ?? 0)).toBeLessThan(arcBox.width / 6);
    expect(arcPlaces(0, false)).toEqual([]);
  });
});
