import { layOutMat, type MatLayout, type MatTooSmall, type MatWish } from './mat-layout.ts';

/**
 * Widths of a place along the table's edge, in mm: at least 36 in, comfortable to 48 in, 60 in with a computer
 * beside it (common practice, no source). Depth is half of a usual table of 30 in.
 */
export const placeWidths = { leastMm: 914, comfortableToMm: 1219, withComputerMm: 1524 } as const;
export const placeDepthMm = 380;

/** Usual sizes in mm (common practice, no source): spit cup, tumbler of water, A5 sheet, laptop. */
const cupMm = 90;
const tumblerMm = 70;
const sheetMm = { width: 148, height: 210 };
const computerMm = { width: 330, height: 230 };
const gapMm = 25;
/** From a neighbour's place, and from the table's edge. */
const edgeMm = 20;

/** Something on the table. Origin at the place's far left corner, x to the right, y towards the guest, in mm. */
export type PlaceThing =
  | {
      readonly shape: 'circle';
      readonly what: 'spit-cup' | 'water';
      readonly xMm: number;
      readonly yMm: number;
      readonly diameterMm: number;
    }
  | {
      readonly shape: 'rectangle';
      readonly what: 'mat' | 'writing' | 'computer';
      /** The far left corner. */
      readonly xMm: number;
      readonly yMm: number;
      readonly widthMm: number;
      readonly heightMm: number;
    };

export interface PlaceWish extends MatWish {
  readonly placeWidthMm: number;
  readonly computer: boolean;
}

export interface PlaceSetting {
  readonly fits: true;
  readonly widthMm: number;
  readonly depthMm: number;
  readonly room: 'comfortable' | 'roomy';
  /** Its circles are on the mat's own coordinates; the thing called `mat` says where the mat lies. */
  readonly mat: MatLayout;
  readonly things: readonly PlaceThing[];
}

export interface PlaceTooNarrow {
  readonly fits: false;
  readonly reason: 'place-too-narrow';
  readonly needsMm: number;
}

/** The least width of a place, in mm. */
export const leastPlaceWidth = (computer: boolean): number =>
  computer ? placeWidths.withComputerMm : placeWidths.leastMm;

function mirrored(thing: PlaceThing, widthMm: number): PlaceThing {
  switch (thing.shape) {
    case 'circle':
      return { ...thing, xMm: widthMm - thing.xMm };
    case 'rectangle':
      return { ...thing, xMm: widthMm - thing.xMm - thing.widthMm };
  }
}

/**
 * The things of a right-hander, the mat straight before the guest: at the least widths, what stands beside the
 * largest mat still has its room.
 */
function thingsFor(width: number, mat: MatLayout, computer: boolean): PlaceThing[] {
  const matX = (width - mat.widthMm) / 2;
  const near = (height: number) => placeDepthMm - edgeMm - height;
  const writingX = matX + mat.widthMm + gapMm;
  const things: PlaceThing[] = [
    {
      shape: 'circle',
      what: 'spit-cup',
      xMm: edgeMm + cupMm / 2,
      yMm: near(mat.heightMm) + cupMm / 2,
      diameterMm: cupMm,
    },
    {
      shape: 'rectangle',
      what: 'mat',
      xMm: matX,
      yMm: near(mat.heightMm),
      widthMm: mat.widthMm,
      heightMm: mat.heightMm,
    },
    {
      shape: 'rectangle',
      what: 'writing',
      xMm: writingX,
      yMm: near(sheetMm.height),
      widthMm: sheetMm.width,
      heightMm: sheetMm.height,
    },
    {
      shape: 'circle',
      what: 'water',
      xMm: writingX + sheetMm.width / 2,
      yMm: near(sheetMm.height) - gapMm - tumblerMm / 2,
      diameterMm: tumblerMm,
    },
  ];
  if (!computer) return things;
  return [
    ...things,
    {
      shape: 'rectangle',
      what: 'computer',
      xMm: width - edgeMm - computerMm.width,
      yMm: near(computerMm.height),
      widthMm: computerMm.width,
      heightMm: computerMm.height,
    },
  ];
}

/**
 * A place drawn to scale: for a right-hander the spit cup on the far left, the mat before the guest, water and
 * writing to the right, a computer beyond; mirrored for a left-hander. Throws as `layOutMat` does, and a RangeError
 * where the width is no number.
 */
export function layOutPlace(wish: PlaceWish): PlaceSetting | PlaceTooNarrow | MatTooSmall {
  const { placeWidthMm, computer, hand } = wish;
  if (!Number.isFinite(placeWidthMm)) throw new RangeError('Give the width of a place in millimetres.');
  const needsMm = leastPlaceWidth(computer);
  if (placeWidthMm < needsMm) return { fits: false, reason: 'place-too-narrow', needsMm };
  const mat = layOutMat(wish);
  if (!mat.fits) return mat;
  const things = thingsFor(placeWidthMm, mat, computer);
  return {
    fits: true,
    widthMm: placeWidthMm,
    depthMm: placeDepthMm,
    room: computer || placeWidthMm <= placeWidths.comfortableToMm ? 'comfortable' : 'roomy',
    mat,
    things: hand === 'right' ? things : things.map((thing) => mirrored(thing, placeWidthMm)),
  };
}
