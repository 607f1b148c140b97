import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
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
  // By the widths of common practice (no source): 36 in each, 60 in with a computer.
  it.each([
    ['6 ft by 30 in, both sides', rectangle(72, 30, 'both-sides'), 4],
    ['8 ft by 30 in, both sides', rectangle(96, 30, 'both-sides'), 4],
    ['9 ft by 30 in, both sides', rectangle(108, 30, 'both-sides'), 6],
    ['6 ft by 18 in, too shallow to face each other', rectangle(72, 18, 'both-sides'), 2],
    ['6 ft by 30 in, one side', rectangle(72, 30, 'one-side'), 2],
    ['8 ft by 42 in, with its ends', rectangle(96, 42, 'all-round'), 5],
    ['9 ft by 42 in, where an end would cost two at the sides', rectangle(108, 42, 'all-round'), 6],
    ['9 ft by 30 in, too narrow for an end', rectangle(108, 30, 'all-round'), 6],
    ['round, 5 ft', { shape: 'round', diameterMm: inches(60) }, 5],
    ['round, 6 ft', { shape: 'round', diameterMm: inches(72) }, 6],
    ['a bistro table of 60 cm', { shape: 'round', diameterMm: 600 }, 2],
    ['a stool', { shape: 'round', diameterMm: 300 }, 0],
    ['a shelf', rectangle(72, 10, 'one-side'), 0],
    [
      'horseshoe of 12 ft',
      { shape: 'horseshoe', acrossMm: inches(144), legMm: inches(144), depthMm: inches(30) },
      10,
    ],
  ] as const)('%s', (_, asked, expected) => {
    expect(places(asked)).toBe(expected);
  });

  it('does not turn a guest away for a fraction of a millimetre', () => {
    expect(places({ shape: 'rectangle', lengthMm: 1827.7, widthMm: 760, seated: 'both-sides' })).toBe(4);
    expect(places({ shape: 'rectangle', lengthMm: 1826, widthMm: 760, seated: 'both-sides' })).toBe(2);
  });

  it('are fewer with computers', () => {
    expect(places(rectangle(120, 30, 'both-sides'))).toBe(6);
    expect(places(rectangle(120, 30, 'both-sides'), true)).toBe(4);
  });

  it('each have at least their width, and add up', () => {
    fc.assert(
      fc.property(table, fc.boolean(), (asked, computer) => {
        const found = placesAtTable(asked, computer);
        expect(found.sides.reduce((sum, side) => sum + side, 0)).toBe(found.places);
        if (found.places > 0) expect(found.widthEachMm).toBeGreaterThanOrEqual((computer ? 1524 : 914) - 1);
        else expect(found.widthEachMm).toBe(0);
      }),
    );
  });

  it('round a table leave each mat its own slice, 20 mm from the edge', () => {
    fc.assert(
      fc.property(fc.double({ min: 582, max: 6000, noNaN: true }), (diameterMm) => {
        const count = places({ shape: 'round', diameterMm });
        const [width, depth] = [297, 210];
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
    expect(() => placesAtTable({ shape: 'round', diameterMm: 1500 }, false, 600)).toThrow(/914 mm/);
  });
});

describe('tables for everybody', () => {
  it('are enough, and none too many', () => {
    const six = placesAtTable(rectangle(108, 30, 'both-sides'), false);
    expect(tablesFor(0, six)).toBe(0);
    expect(tablesFor(6, six)).toBe(1);
    expect(tablesFor(7, six)).toBe(2);
    expect(tablesFor(3, { places: 0, sides: [], widthEachMm: 0 })).toBeUndefined();
  });
});
