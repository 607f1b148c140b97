import { type MatLayout, printMarginMm } from './mat-layout.ts';

/** A rectangle on the mat, from its far left corner, in mm. */
export interface MatBox {
  readonly leftMm: number;
  readonly topMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** White around what is lettered, and how closely a place for it is looked for. */
const clearMm = 1;
const stepMm = 2;

/**
 * A place for what is said on a mat beside its glasses, within the margins of the printer and clear of circles, labels and
 * `taken`; the one nearest the far or the near edge, and there the nearest to the left. Where glasses leave no such place, it
 * lies across them at that edge: better under a foot than cut by the printer. Sizes in mm.
 */
export function placeOnMat(
  layout: MatLayout,
  size: { readonly widthMm: number; readonly heightMm: number },
  edge: 'far' | 'near',
  taken: readonly MatBox[] = [],
): MatBox {
  const spareX = layout.widthMm - 2 * printMarginMm - size.widthMm;
  const spareY = layout.heightMm - 2 * printMarginMm - size.heightMm;
  const at = (x: number, y: number): MatBox => ({
    ...size,
    leftMm: printMarginMm + x,
    topMm: printMarginMm + (edge === 'far' ? y : spareY - y),
  });
  for (let y = 0; y <= spareY; y += stepMm)
    for (let x = 0; x <= spareX; x += stepMm) {
      const box = at(x, y);
      if (isClear(layout, box) && taken.every((other) => !overlap(box, other))) return box;
    }
  return at(0, 0);
}

function isClear({ circles, labelHeightMm }: MatLayout, box: MatBox): boolean {
  return circles.every(({ xMm, yMm, diameterMm, labelAt, label }) => {
    const dx = xMm - Math.min(Math.max(xMm, box.leftMm), box.leftMm + box.widthMm);
    const dy = yMm - Math.min(Math.max(yMm, box.topMm), box.topMm + box.heightMm);
    const widthMm = label.length * labelHeightMm * 0.6;
    const lettered = {
      leftMm: labelAt.xMm - widthMm / 2,
      topMm: labelAt.yMm - labelHeightMm / 2,
      widthMm,
      heightMm: labelHeightMm,
    };
    return Math.hypot(dx, dy) >= diameterMm / 2 + clearMm && !overlap(box, lettered);
  });
}

const overlap = (one: MatBox, other: MatBox): boolean =>
  one.leftMm < other.leftMm + other.widthMm + clearMm &&
  other.leftMm < one.leftMm + one.widthMm + clearMm &&
  one.topMm < other.topMm + other.heightMm + clearMm &&
  other.topMm < one.topMm + one.heightMm + clearMm;
