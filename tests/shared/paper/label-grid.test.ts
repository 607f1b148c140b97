import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { labelGrid } from '../../../host/print/label-grid.ts';
import { type PaperSize, paperSizes, usualPaper } from '../../../host/print/paper-size.ts';

const sizes = fc.record({
  widthMm: fc.double({ min: 20, max: 150, noNaN: true }),
  heightMm: fc.double({ min: 12, max: 150, noNaN: true }),
});

describe('a sheet of labels', () => {
  it('keeps every label whole within margins of 10 mm, and asks no more of a label than half a millimetre of a row', () => {
    fc.assert(
      fc.property(sizes, fc.constantFrom<PaperSize>('A4', 'Letter'), (size, paper) => {
        const grid = labelGrid(paper, size);
        if (grid === undefined) throw new Error('Every size in range has room for one label.');
        const short = paperSizes[paper].widthMm - 20;
        const long = paperSizes[paper].heightMm - 20;
        expect(grid.perSheet).toBe(grid.columns * grid.rows);
        expect(grid.columns * grid.widthMm).toBeLessThan(short + 1e-5);
        expect(grid.columnsLying * grid.widthMm).toBeLessThan(long + 1e-5);
        expect(grid.columns * (size.widthMm - grid.widthMm)).toBeLessThan(0.5 + 1e-5);
        expect(grid.aboveMm).toBeGreaterThanOrEqual(0);
        expect(2 * grid.aboveMm + grid.rows * size.heightMm).toBeLessThan(long);
      }),
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
