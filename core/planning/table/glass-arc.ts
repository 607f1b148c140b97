/** A point in mm: x to the right, y towards the person who sits there. */
export interface Point {
  readonly xMm: number;
  readonly yMm: number;
}

/** The rectangle that circles must stay in, and what they are. */
export interface ArcSpace {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Diameter of the circle that stays inside the space: the glass's foot. */
  readonly footMm: number;
  /** Least distance between two centres: the widest part of a glass and a finger's room. */
  readonly apartMm: number;
  /** Height of the label below each circle, which no other circle may cover. */
  readonly labelMm: number;
}

/** Radius of an arc as a share of the width, a gentle bow first; rounder and flatter ones follow where it must be. */
const bows = [0.75, 0.6, 1, 0.5, 1.5, 0.45, 3, Number.POSITIVE_INFINITY];
/** Distance of neighbours as a multiple of the least, airy ones first. */
const airs = [1.5, 1.35, 1.2, 1.1, 1.04, 1];
const mostRows = 4;
/** Rounding in the last digits must not decide whether a glass fits. */
const hair = 1e-6;

const distance = (one: Point, other: Point) =>
  Math.sqrt((one.xMm - other.xMm) ** 2 + (one.yMm - other.yMm) ** 2);

/** Centres of an arc that bows away from the guest, around x = 0 with its middle at y = 0; none if it will not bend. */
function arc(count: number, radius: number, pitch: number): Point[] {
  const places = Array.from({ length: count }, (_, index) => index - (count - 1) / 2);
  if (radius === Number.POSITIVE_INFINITY) return places.map((place) => ({ xMm: place * pitch, yMm: 0 }));
  const turn = 2 * Math.asin(Math.min(1, pitch / 2 / radius));
  if ((turn * (count - 1)) / 2 > Math.PI / 2) return [];
  return places.map((place) => ({
    xMm: radius * Math.sin(place * turn),
    yMm: radius * (1 - Math.cos(place * turn)),
  }));
}

/** Where a label's middle stands for a circle: just below it. */
export const labelBelow = (centre: Point, footMm: number, labelMm: number): Point => ({
  xMm: centre.xMm,
  yMm: centre.yMm + footMm / 2 + labelMm / 2,
});

/** Whether no two glasses, and no glass and a label, come too close. */
function stands(centres: readonly Point[], { footMm, apartMm, labelMm }: ArcSpace): boolean {
  const labelFree = (footMm + labelMm) / 2 - hair;
  return centres.every((one, index) => {
    const label = labelBelow(one, footMm, labelMm);
    return centres.every(
      (other, place) =>
        place === index || (distance(one, other) >= apartMm - hair && distance(label, other) >= labelFree),
    );
  });
}

/** The centres moved to the middle of the space, if they fit in it. */
function centred(centres: readonly Point[], space: ArcSpace): Point[] | undefined {
  const xs = centres.map(({ xMm }) => xMm);
  const ys = centres.map(({ yMm }) => yMm);
  const wide = Math.max(...xs) - Math.min(...xs) + space.footMm;
  const high = Math.max(...ys) - Math.min(...ys) + space.footMm + space.labelMm;
  if (wide > space.widthMm + hair || high > space.heightMm + hair) return undefined;
  const down = (space.heightMm - high) / 2 + space.footMm / 2 - Math.min(...ys);
  return centres.map(({ xMm, yMm }) => ({ xMm: xMm + space.widthMm / 2, yMm: yMm + down }));
}

/** Rows as even as can be, the longer ones at the back. */
function rowSizes(count: number, rows: number): number[] {
  return Array.from({ length: rows }, (_, row) => Math.floor(count / rows) + (row < count % rows ? 1 : 0));
}

/** Circles of diameter `apartMm` cannot be packed more densely than in a honeycomb. */
function tooMany(count: number, { widthMm, heightMm, footMm, apartMm, labelMm }: ArcSpace): boolean {
  const area = (widthMm - footMm + apartMm) * (heightMm - footMm - labelMm + apartMm);
  return count * apartMm ** 2 * Math.sqrt(0.75) > area;
}

/** From one row to the next, airy distances first, as many as `rows` rows of the space have room for. */
function rowDistances(rows: number, { heightMm, footMm, apartMm, labelMm }: ArcSpace): number[] {
  if (rows === 1) return [0];
  return airs
    .map((air) => air * Math.max(apartMm, footMm + labelMm))
    .filter((each) => (rows - 1) * each + footMm + labelMm <= heightMm + hair);
}

const span = (row: readonly Point[]) => (row.at(-1)?.xMm ?? 0) - (row.at(0)?.xMm ?? 0);

/**
 * Centres of `count` glasses (1 or more) in the order of tasting for a right-hander, from left to right and from the
 * back row to the front, as a page is read: one arc if that fits, else up to four behind each other. They never
 * overlap, stay in the space and mirror onto themselves. Undefined where they do not fit.
 */
export function arcOfGlasses(count: number, space: ArcSpace): readonly Point[] | undefined {
  if (tooMany(count, space)) return undefined;
  for (let rows = 1; rows <= Math.min(mostRows, count); rows += 1) {
    const sizes = rowSizes(count, rows);
    const distances = rowDistances(rows, space);
    for (const bow of bows) {
      for (const air of airs) {
        const arcs = sizes.map((size) => arc(size, bow * space.widthMm, air * space.apartMm));
        const bends = arcs.every((each, row) => each.length === sizes[row]);
        if (!bends || span(arcs[0] ?? []) + space.footMm > space.widthMm + hair) continue;
        for (const behind of distances) {
          const rowsBehind = arcs.flatMap((each, row) =>
            each.map(({ xMm, yMm }) => ({ xMm, yMm: yMm + row * behind })),
          );
          const placed = centred(rowsBehind, space);
          if (placed !== undefined && stands(placed, space)) return placed;
        }
      }
    }
  }
  return undefined;
}
