import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { labelGrid, labelPlaces } from '../../../host/print/label-grid.ts';
import { type PaperSize, paperSizes, usualPaper } from '../../../host/print/paper-size.ts';

const sizes = fc.record({
  widthMm: fc.double({ min: 20, max: 150, noNaN: true }),
  heightMm: fc.double({ min: 12, max: 150, noNaN: true }),
});

describe('a sheet of labels', () => {
  it('keeps every label whole on its sheet, clear of the edges, and none on another', () => {
    fc.assert(
      fc.property(
        sizes,
        fc.constantFrom<PaperSize>('A4', 'Letter'),
        fc.integer({ min: 1, max: 60 }),
        (size, paper, count) => {
          const grid = labelGrid(paper, size);
          if (grid === undefined) throw new Error('Every size in range has room for one label.');
          const places = labelPlaces(grid, size, count);
          expect(places).toHaveLength(count);
          expect(new Set(places.map((each) => JSON.stringify(each))).size).toBe(count);
          for (const { xMm, yMm } of places) {
            expect(xMm).toBeGreaterThan(8 - 1e-5);
            expect(yMm).toBeGreaterThan(8 - 1e-5);
            expect(xMm + size.widthMm).toBeLessThan(paperSizes[paper].widthMm - 8 + 1e-5);
            expect(yMm + size.heightMm).toBeLessThan(paperSizes[paper].heightMm - 8 + 1e-5);
          }
        },
      ),
    );
  });

  it('takes as many as there is room for', () => {
    expect(labelGrid('A4', { widthMm: 63.5, heightMm: 38.1 })).toMatchObject({ columns: 3, rows: 7 });
    expect(labelGrid('A4', { widthMm: 38, heightMm: 21 })).toMatchObject({ columns: 5, rows: 13 });
  });

  it('refuses what is no label', () => {
    for (const widthMm of [0, -1, 19, 151, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(labelGrid('A4', { widthMm, heightMm: 30 })).toBeUndefined();
    }
  });
});

describe('the paper in the printer', () => {
  it('is Letter where Letter is sold, else A4', () => {
    expect(usualPaper('US', 'de-DE')).toBe('Letter');
    expect(usualPaper('DE', 'en-US')).toBe('A4');
    expect(usualPaper(undefined, 'en-CA')).toBe('Letter');
    expect(usualPaper(undefined, 'en')).toBe('A4');
  });
});
