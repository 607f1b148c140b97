import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  layOutMat,
  type MatCircle,
  type MatLayout,
  type MatSheet,
  type MatWish,
  matSheets,
  mostGlasses,
  printMarginMm,
} from '../../../../core/planning/table/mat-layout.ts';

const sheet = fc.constantFrom<MatSheet>('A4', 'A3', 'Letter');
const foot = fc.integer({ min: 20, max: 150 });
const wish: fc.Arbitrary<MatWish> = fc.record({
  sheet,
  glasses: fc.integer({ min: 1, max: 16 }),
  footMm: fc.integer({ min: 30, max: 95 }),
  bowlMm: fc.integer({ min: 30, max: 110 }),
  hand: fc.constantFrom('right' as const, 'left' as const),
});

function laid(asked: MatWish): MatLayout {
  const mat = layOutMat(asked);
  if (!mat.fits) throw new Error(`${asked.glasses} glasses of ${asked.footMm} mm do not fit ${asked.sheet}`);
  return mat;
}
const fitting = wish.filter((asked) => layOutMat(asked).fits);
const pairs = (circles: readonly MatCircle[]) =>
  circles.flatMap((one, index) => circles.slice(index + 1).map((other) => [one, other] as const));
const apart = (one: { xMm: number; yMm: number }, other: { xMm: number; yMm: number }) =>
  Math.hypot(one.xMm - other.xMm, one.yMm - other.yMm);

describe('a mat', () => {
  it('keeps feet and bowls apart', () => {
    fc.assert(
      fc.property(fitting, (asked) => {
        for (const [one, other] of pairs(laid(asked).circles)) {
          expect(apart(one, other)).toBeGreaterThanOrEqual(Math.max(asked.footMm, asked.bowlMm ?? 0) + 5.999);
        }
      }),
    );
  });

  it('keeps every circle and label within what a printer prints', () => {
    fc.assert(
      fc.property(fitting, (asked) => {
        const mat = laid(asked);
        for (const { xMm, yMm, diameterMm, labelAt } of mat.circles) {
          const radius = diameterMm / 2;
          expect(Math.min(xMm, mat.widthMm - xMm) - radius).toBeGreaterThanOrEqual(printMarginMm - 1e-3);
          expect(yMm - radius).toBeGreaterThanOrEqual(printMarginMm - 1e-3);
          expect(mat.heightMm - labelAt.yMm - mat.labelHeightMm / 2).toBeGreaterThanOrEqual(
            printMarginMm - 1e-3,
          );
        }
      }),
    );
  });

  it('leaves every label free of every foot', () => {
    fc.assert(
      fc.property(fitting, (asked) => {
        const { circles, labelHeightMm } = laid(asked);
        for (const { labelAt } of circles) {
          for (const other of circles) {
            expect(apart(labelAt, other)).toBeGreaterThanOrEqual(
              (other.diameterMm + labelHeightMm) / 2 - 1e-3,
            );
          }
        }
      }),
    );
  });

  it('is mirrored for the other hand, glass by glass', () => {
    fc.assert(
      fc.property(fitting, (asked) => {
        const right = laid({ ...asked, hand: 'right' });
        const left = laid({ ...asked, hand: 'left' });
        right.circles.forEach((circle, index) => {
          const mirror = left.circles[index];
          expect(mirror?.glass).toBe(circle.glass);
          expect(mirror?.xMm).toBeCloseTo(right.widthMm - circle.xMm, 9);
          expect(mirror?.yMm).toBe(circle.yMm);
        });
      }),
    );
  });

  it('is symmetrical itself: a left and a right half', () => {
    fc.assert(
      fc.property(fitting, (asked) => {
        const { circles, widthMm } = laid(asked);
        for (const { xMm, yMm } of circles) {
          const twin = { xMm: widthMm - xMm, yMm };
          expect(Math.min(...circles.map((other) => apart(twin, other)))).toBeLessThan(1e-6);
        }
      }),
    );
  });

  it('goes from left to right along each row of a right-hander, and from the back row to the front', () => {
    const { circles } = laid({ sheet: 'A3', glasses: 5, footMm: 60, hand: 'right' });
    expect(circles.map(({ xMm }) => xMm)).toEqual(circles.map(({ xMm }) => xMm).sort((a, b) => a - b));
    expect(circles.map(({ glass }) => glass)).toEqual([1, 2, 3, 4, 5]);
    const rows = laid({ sheet: 'A4', glasses: 6, footMm: 65, hand: 'right' }).circles.map(({ yMm }) => yMm);
    expect(Math.max(...rows.slice(0, 3))).toBeLessThan(Math.max(...rows.slice(3)));
  });

  it('has a circle for each glass, and the longer rows at the back', () => {
    fc.assert(
      fc.property(fitting, (asked) => {
        expect(laid(asked).circles.map(({ glass }) => glass)).toEqual(
          Array.from({ length: asked.glasses }, (_, index) => index + 1),
        );
      }),
    );
    const ys = laid({ sheet: 'A4', glasses: 5, footMm: 60, hand: 'right' }).circles.map(({ yMm }) => yMm);
    expect(Math.max(...ys.slice(0, 3))).toBeLessThan(Math.min(...ys.slice(3)));
  });

  it('bows away from the guest where there is one arc', () => {
    const [first, middle, last] = laid({ sheet: 'A4', glasses: 3, footMm: 60, hand: 'right' }).circles;
    expect(middle?.yMm).toBeLessThan((first?.yMm ?? 0) - 5);
    expect(last?.yMm).toBeCloseTo(first?.yMm ?? 0, 9);
  });

  it('takes the usual evenings: three on A4 or Letter, six and nine on A3 at least', () => {
    for (const footMm of [50, 60, 65]) {
      expect(mostGlasses('A4', footMm)).toBeGreaterThanOrEqual(6);
      expect(mostGlasses('Letter', footMm)).toBeGreaterThanOrEqual(6);
      expect(mostGlasses('A3', footMm)).toBeGreaterThanOrEqual(12);
    }
    expect(mostGlasses('A3', 75, 90)).toBeGreaterThanOrEqual(6);
  });

  it('takes fewer glasses wherever it takes more', () => {
    for (const each of ['A4', 'A3', 'Letter'] as const) {
      for (let footMm = 30; footMm <= 120; footMm += 3) {
        const most = mostGlasses(each, footMm);
        for (let glasses = 1; glasses <= most; glasses += 1) {
          expect(
            layOutMat({ sheet: each, glasses, footMm, hand: 'right' }).fits,
            `${glasses} of ${most}, ${footMm} mm`,
          ).toBe(true);
        }
      }
    }
  });

  it('says how many fit and which sheet would do where they do not', () => {
    const asked = { glasses: 9, footMm: 65, hand: 'right' } as const;
    const small = layOutMat({ ...asked, sheet: 'A4' });
    expect(small).toMatchObject({ fits: false, tryInstead: 'A3' });
    if (!small.fits)
      expect(laid({ ...asked, sheet: 'A4', glasses: small.most }).circles).toHaveLength(small.most);
    const none = layOutMat({ ...asked, sheet: 'A3', glasses: 16, footMm: 140 });
    expect(none).toMatchObject({ fits: false });
    expect(none).not.toHaveProperty('tryInstead');
  });

  it('prints codes in the order of tasting, numbers where there are none', () => {
    const asked = { sheet: 'A4', glasses: 3, footMm: 60, hand: 'left' } as const;
    expect(laid(asked).circles.map(({ label }) => label)).toEqual(['1', '2', '3']);
    const coded = laid({ ...asked, labels: ['482', '917', '356'] });
    expect(coded.circles.map(({ label }) => label)).toEqual(['482', '917', '356']);
    expect(coded.circles[0]?.xMm).toBeGreaterThan(coded.circles[2]?.xMm ?? 0);
  });

  it('never fails within its limits and refuses what lies outside', () => {
    fc.assert(
      fc.property(sheet, foot, fc.integer({ min: 1, max: 16 }), (each, footMm, glasses) => {
        expect(() => layOutMat({ sheet: each, glasses, footMm, hand: 'right' })).not.toThrow();
      }),
    );
    const good = { sheet: 'A4', glasses: 3, footMm: 60, hand: 'right' } as const;
    for (const bad of [
      { glasses: 0 },
      { glasses: 17 },
      { glasses: 2.5 },
      { footMm: Number.NaN },
      { footMm: 5 },
    ]) {
      expect(() => layOutMat({ ...good, ...bad })).toThrow(RangeError);
    }
    expect(() => layOutMat({ ...good, labels: ['1'] })).toThrow(/label/);
  });
});

describe('the sheets', () => {
  it('have the sizes of their standards, landscape', () => {
    // ISO 216: A3 297 x 420 mm, A4 210 x 297 mm; Letter 8.5 x 11 in of 25.4 mm (ANSI/ASME Y14.1). From memory.
    expect(matSheets.A3).toEqual({ widthMm: 420, heightMm: 297 });
    expect(matSheets.A4).toEqual({ widthMm: 297, heightMm: 210 });
    expect(matSheets.Letter.widthMm).toBeCloseTo(11 * 25.4, 9);
    expect(matSheets.Letter.heightMm).toBeCloseTo(8.5 * 25.4, 9);
  });
});
