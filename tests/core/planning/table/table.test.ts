import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { comfortablePlaceWidth, leastPlaceWidth } from '../../../../core/planning/table/place-setting.ts';
import { placesAtTable, type Table, tablesFor } from '../../../../core/planning/table/table.ts';

const inches = (value: number) => value * 25.4;
const rectangle = (
  length: number,
  width: number,
  seated: 'one-side' | 'both-sides' | 'all-round',
): Table => ({
  shape: 'rectangle',
  lengthMm: inches(length),
  widthMm: inches(width),
  seated,
});
const places = (table: Table, computer = false) => placesAtTable(table, computer).places;
const size = fc.double({ min: 100, max: 6000, noNaN: true });
const table: fc.Arbitrary<Table> = fc.oneof(
  fc.record({
    shape: fc.constant('rectangle' as const),
    lengthMm: size,
    widthMm: size,
    seated: fc.constantFrom('one-side' as const, 'both-sides' as const, 'all-round' as const),
  }),
  fc.record({ shape: fc.constant('round' as const), diameterMm: size }),
  fc.record({ shape: fc.constant('horseshoe' as const), acrossMm: size, legMm: size, depthMm: size }),
);

describe('places at a table', () => {
  it('have room at the widths of common practice (no source): 36 and 48 in, and 60 in with a computer', () => {
    // A place that had one of those widths still has room for all that lies on it.
    for (const width of [36, 48]) expect(leastPlaceWidth(false)).toBeLessThan(inches(width));
    expect(leastPlaceWidth(true)).toBeLessThan(inches(60));
  });

  it('seats six with free elbows and eight closer together at 240 by 90 cm, as furniture guides have it', () => {
    const dining: Table = { shape: 'rectangle', lengthMm: 2400, widthMm: 900, seated: 'both-sides' };
    expect(places(dining)).toBe(8);
    expect(placesAtTable(dining, false, comfortablePlaceWidth(false)).places).toBe(6);
  });

  // 60 cm each, 86.5 cm with a computer beside mat and paper.
  it.each([
    ['6 ft by 30 in, both sides', rectangle(72, 30, 'both-sides'), 6],
    ['8 ft by 30 in, both sides', rectangle(96, 30, 'both-sides'), 8],
    ['9 ft by 30 in, both sides', rectangle(108, 30, 'both-sides'), 8],
    ['6 ft by 18 in, too shallow to face each other', rectangle(72, 18, 'both-sides'), 3],
    ['6 ft by 30 in, one side', rectangle(72, 30, 'one-side'), 3],
    ['8 ft by 42 in, with its ends', rectangle(96, 42, 'all-round'), 8],
    ['9 ft by 42 in, where an end would cost two at the sides', rectangle(108, 42, 'all-round'), 8],
    ['9 ft by 30 in, too narrow for an end', rectangle(108, 30, 'all-round'), 8],
    ['round, 5 ft', { shape: 'round', diameterMm: inches(60) }, 6],
    ['round, 6 ft', { shape: 'round', diameterMm: inches(72) }, 8],
    ['a bistro table of 60 cm', { shape: 'round', diameterMm: 600 }, 1],
    ['a stool', { shape: 'round', diameterMm: 300 }, 0],
    ['a shelf', rectangle(72, 10, 'one-side'), 0],
    [
      'horseshoe of 12 ft',
      { shape: 'horseshoe', acrossMm: inches(144), legMm: inches(144), depthMm: inches(30) },
      16,
    ],
  ] as const)('%s', (_, asked, expected) => {
    expect(places(asked)).toBe(expected);
  });

  it('does not turn a guest away for a fraction of a millimetre', () => {
    expect(places({ shape: 'rectangle', lengthMm: 1799.7, widthMm: 760, seated: 'both-sides' })).toBe(6);
    expect(places({ shape: 'rectangle', lengthMm: 1798, widthMm: 760, seated: 'both-sides' })).toBe(4);
  });

  it('are fewer with computers', () => {
    expect(places(rectangle(120, 30, 'both-sides'))).toBe(10);
    expect(places(rectangle(120, 30, 'both-sides'), true)).toBe(6);
  });

  it('each have at least their width, and add up', () => {
    fc.assert(
      fc.property(table, fc.boolean(), (asked, computer) => {
        const found = placesAtTable(asked, computer);
        expect(found.sides.reduce((sum, side) => sum + side, 0)).toBe(found.places);
        if (found.places > 0) expect(found.widthEachMm).toBeGreaterThanOrEqual((computer ? 865 : 600) - 1);
        else expect(found.widthEachMm).toBe(0);
      }),
    );
  });

  it('round a table leave mat and paper their own slice, 20 mm from the edge', () => {
    fc.assert(
      fc.property(fc.double({ min: 700, max: 6000, noNaN: true }), (diameterMm) => {
        const count = places({ shape: 'round', diameterMm });
        // A4 across beside A5 upright, 25 mm apart.
        const [width, depth] = [297 + 25 + 148, 210];
        const far = Math.sqrt((diameterMm / 2 - 20) ** 2 - (width / 2) ** 2) - depth;
        expect(far).toBeGreaterThan(0);
        // Half of a mat's far edge as seen from the middle of the table, within half of a slice.
        if (count > 2) expect(Math.atan(width / 2 / far)).toBeLessThanOrEqual(Math.PI / count);
      }),
    );
  });

  it('never become fewer on a larger round or longer rectangular table', () => {
    fc.assert(
      fc.property(size, fc.double({ min: 0, max: 3000, noNaN: true }), size, (side, more, widthMm) => {
        expect(places({ shape: 'round', diameterMm: side + more })).toBeGreaterThanOrEqual(
          places({ shape: 'round', diameterMm: side }),
        );
        const long = (lengthMm: number) =>
          places({ shape: 'rectangle', lengthMm, widthMm, seated: 'all-round' });
        expect(long(side + more)).toBeGreaterThanOrEqual(long(side));
      }),
    );
  });

  it('have the ends only where they seat more', () => {
    fc.assert(
      fc.property(size, size, (lengthMm, widthMm) => {
        const both = places({ shape: 'rectangle', lengthMm, widthMm, seated: 'both-sides' });
        expect(places({ shape: 'rectangle', lengthMm, widthMm, seated: 'all-round' })).toBeGreaterThanOrEqual(
          both,
        );
      }),
    );
  });

  it('refuse sizes that are none and a width that nobody can sit in', () => {
    for (const diameterMm of [0, -5, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => places({ shape: 'round', diameterMm })).toThrow(RangeError);
    }
    expect(() => placesAtTable({ shape: 'round', diameterMm: 1500 }, false, 500)).toThrow(/600 mm/);
  });
});

describe('tables for everybody', () => {
  it('are enough, and none too many', () => {
    const six = placesAtTable(rectangle(72, 30, 'both-sides'), false);
    expect(tablesFor(0, six)).toBe(0);
    expect(tablesFor(6, six)).toBe(1);
    expect(tablesFor(7, six)).toBe(2);
    expect(tablesFor(3, { places: 0, sides: [], widthEachMm: 0 })).toBeUndefined();
  });
});
