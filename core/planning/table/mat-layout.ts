import { arcOfGlasses, labelBelow, type Point } from './glass-arc.ts';

/** Sheets that a mat is printed on, landscape, in mm. Sources: ISO 216 (A4, A3); Letter is 11 x 8.5 in. */
export const matSheets = {
  A4: { widthMm: 297, heightMm: 210 },
  A3: { widthMm: 420, heightMm: 297 },
  Letter: { widthMm: 279.4, heightMm: 215.9 },
} as const;
export type MatSheet = keyof typeof matSheets;

export type Hand = 'right' | 'left';

export interface MatWish {
  readonly sheet: MatSheet;
  readonly glasses: number;
  /** Diameter of a glass's foot: the circle is printed at this size. */
  readonly footMm: number;
  /** Widest part of a glass, where it is wider than the foot: neighbours must not touch. */
  readonly bowlMm?: number;
  readonly hand: Hand;
  /** What stands at each glass in the order of tasting, such as blind codes; numbers from 1 where there are none. */
  readonly labels?: readonly string[];
}

/** A circle at true size. Origin at the sheet's far left corner, x to the right, y towards the guest, in mm. */
export interface MatCircle extends Point {
  /** Place in the order of tasting, from 1. */
  readonly glass: number;
  readonly label: string;
  readonly diameterMm: number;
  /** Middle of the label, which no glass covers. */
  readonly labelAt: Point;
}

export interface MatLayout {
  readonly fits: true;
  readonly sheet: MatSheet;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly labelHeightMm: number;
  readonly circles: readonly MatCircle[];
}

/** The glasses do not fit: how many do on this sheet, and the smallest sheet that takes them all, if any. */
export interface MatTooSmall {
  readonly fits: false;
  readonly reason: 'mat-too-small';
  readonly most: number;
  readonly tryInstead?: MatSheet;
}

/** What home printers leave white at each edge (common practice, no source). */
export const printMarginMm = 10;
/** Room for a finger between two glasses (common practice, no source). */
const fingerMm = 6;
const labelHeightMm = 8;
const mostGlassesOnMat = 16;
const sheetsBySize: readonly MatSheet[] = ['Letter', 'A4', 'A3'];

function centres(sheet: MatSheet, count: number, footMm: number, bowlMm: number) {
  return arcOfGlasses(count, {
    widthMm: matSheets[sheet].widthMm - 2 * printMarginMm,
    heightMm: matSheets[sheet].heightMm - 2 * printMarginMm,
    footMm,
    apartMm: Math.max(footMm, bowlMm) + fingerMm,
    labelMm: labelHeightMm,
  });
}

function refuse({ glasses, footMm, bowlMm, labels }: MatWish): void {
  if (!Number.isInteger(glasses) || glasses < 1 || glasses > mostGlassesOnMat) {
    throw new RangeError(`A mat takes from 1 to ${mostGlassesOnMat} glasses.`);
  }
  if (![footMm, bowlMm ?? footMm].every((size) => size >= 20 && size <= 150)) {
    throw new RangeError('Measure the glass across in millimetres: from 20 to 150.');
  }
  if (labels !== undefined && labels.length !== glasses) {
    throw new RangeError('Give each glass on the mat one label, or none at all.');
  }
}

/** The most glasses of a size that a sheet takes, up to 16. Sizes in mm. */
export function mostGlasses(sheet: MatSheet, footMm: number, bowlMm: number = footMm): number {
  for (let count = mostGlassesOnMat; count > 0; count -= 1) {
    if (centres(sheet, count, footMm, bowlMm) !== undefined) return count;
  }
  return 0;
}

/**
 * A mat to print at true size: circles in an arc in the order of tasting, from left to right for a right-hander and
 * from right to left for a left-hander. Throws a RangeError on a count, a size or labels that no mat has.
 */
export function layOutMat(wish: MatWish): MatLayout | MatTooSmall {
  refuse(wish);
  const { sheet, glasses, footMm, hand } = wish;
  const bowlMm = wish.bowlMm ?? footMm;
  const found = centres(sheet, glasses, footMm, bowlMm);
  if (found === undefined) {
    const larger = sheetsBySize.find((each) => centres(each, glasses, footMm, bowlMm) !== undefined);
    const most = mostGlasses(sheet, footMm, bowlMm);
    return { fits: false, reason: 'mat-too-small', most, ...(larger && { tryInstead: larger }) };
  }
  const { widthMm, heightMm } = matSheets[sheet];
  const circles = found.map(({ xMm, yMm }, index) => {
    const fromLeft = xMm + printMarginMm;
    const centre = { xMm: hand === 'right' ? fromLeft : widthMm - fromLeft, yMm: yMm + printMarginMm };
    return {
      ...centre,
      glass: index + 1,
      label: wish.labels?.[index] ?? String(index + 1),
      diameterMm: footMm,
      labelAt: labelBelow(centre, footMm, labelHeightMm),
    };
  });
  return { fits: true, sheet, widthMm, heightMm, labelHeightMm, circles };
}
