import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutMat, type MatSheet, printMarginMm } from '../../../../core/planning/table/mat-layout.ts';
import { placeOnMat } from '../../../../core/planning/table/mat-lettering.ts';

const ruler = { widthMm: 100, heightMm: 6 };

describe('what is lettered on a mat', () => {
  it('stands within the margins of a printer, whatever the glasses', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<MatSheet>('A4', 'A3', 'Letter'),
        fc.integer({ min: 1, max: 16 }),
        fc.integer({ min: 30, max: 95 }),
        (sheet, glasses, footMm) => {
          const mat = layOutMat({ sheet, glasses, footMm, hand: 'right' });
          if (!mat.fits) return;
          for (const edge of ['far', 'near'] as const) {
            const box = placeOnMat(mat, ruler, edge);
            expect(box.leftMm).toBeGreaterThanOrEqual(printMarginMm);
            expect(box.topMm).toBeGreaterThanOrEqual(printMarginMm);
            expect(box.leftMm + box.widthMm).toBeLessThanOrEqual(mat.widthMm - printMarginMm + 1e-9);
            expect(box.topMm + box.heightMm).toBeLessThanOrEqual(mat.heightMm - printMarginMm + 1e-9);
          }
        },
      ),
    );
  });

  it('is clear of every circle on the mats of most evenings, and of what stands there already', () => {
    for (const sheet of ['A4', 'Letter', 'A3'] as const)
      for (let glasses = 1; glasses <= 6; glasses += 1)
        for (const footMm of [55, 60, 65, 70]) {
          const mat = layOutMat({ sheet, glasses, footMm, hand: 'right' });
          if (!mat.fits) continue;
          const caption = placeOnMat(mat, { widthMm: 120, heightMm: 5 }, 'far');
          const box = placeOnMat(mat, ruler, 'near', [caption]);
          for (const { xMm, yMm, diameterMm } of mat.circles)
            for (const { leftMm, topMm, widthMm, heightMm } of [caption, box]) {
              const dx = Math.max(leftMm - xMm, 0, xMm - leftMm - widthMm);
              const dy = Math.max(topMm - yMm, 0, yMm - topMm - heightMm);
              expect(Math.hypot(dx, dy), `${glasses} of ${footMm} on ${sheet}`).toBeGreaterThan(
                diameterMm / 2,
              );
            }
          expect(
            caption.topMm + caption.heightMm <= box.topMm || box.topMm + box.heightMm <= caption.topMm,
          ).toBe(true);
        }
  });
});
