import {
  layOutMat,
  type MatLayout,
  type MatSheet,
  type MatTooSmall,
  type MatWish,
  matSheets,
} from './mat-layout.ts';
import { reachedBest, type Spot } from './reach.ts';

/**
 * What one person gets of the table's edge when covers are laid, in mm: 60 cm or 24 in at least, 30 in at best, as guides
 * to dining tables and drawings of individual settings have it (Dimensions.com and others, as read in 2026). A tasting
 * needs more where what lies on a place is wider.
 */
const coverWidths = { leastMm: 600, comfortableMm: 762 } as const;

/** How far a forearm sweeps from the table's edge: 15 in (Sanders & McCormick 1987, as quoted). Nothing lies beyond. */
export const placeDepthMm = 380;

/** Usual sizes in mm (common practice, no source): spit cup, tumbler of water, A5 sheet, laptop. */
const cupMm = 90;
const tumblerMm = 70;
const sheetMm = { width: 148, height: 210 };
const computerMm = { width: 330, height: 230 };
const gapMm = 25;
/** From a neighbour's place, and from the table's edge. */
const edgeMm = 20;
/** Half of the breadth across two shoulders: from there each hand comes (common practice, no source). */
const shoulderMm = 200;

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
  readonly room: 'close' | 'comfortable';
  /** Its circles are on the mat's own coordinates; the thing called `mat` says where the mat lies. */
  readonly mat: MatLayout;
  readonly things: readonly PlaceThing[];
}

export interface PlaceTooNarrow {
  readonly fits: false;
  readonly reason: 'place-too-narrow';
  readonly needsMm: number;
}

/** Beside a mat so deep that nothing stands behind it, a column for cup and water. */
const columnBeside = (sheet: MatSheet): number =>
  placeDepthMm - edgeMm - matSheets[sheet].heightMm < gapMm + cupMm ? cupMm + gapMm : 0;

/** What lies side by side along the edge: the mat, the paper of whoever writes, and a computer. */
const sideBySide = (computer: boolean, sheet: MatSheet): number =>
  columnBeside(sheet) +
  matSheets[sheet].widthMm +
  gapMm +
  sheetMm.width +
  (computer ? gapMm + computerMm.width : 0);

/** How much of the table's edge what lies on a place takes, in mm. */
export const laidWidth = (computer: boolean, sheet: MatSheet = 'A4'): number =>
  Math.ceil(2 * edgeMm + sideBySide(computer, sheet));

/** The depth that the deepest of it takes from the edge, in mm. */
export const laidDepth = (sheet: MatSheet = 'A4'): number => edgeMm + matSheets[sheet].heightMm;

/** The least width of a place, in mm: a cover's, or what lies on it. */
export const leastPlaceWidth = (computer: boolean, sheet: MatSheet = 'A4'): number =>
  Math.max(coverWidths.leastMm, laidWidth(computer, sheet));

/** A width at which elbows are free as well, in mm. */
export const comfortablePlaceWidth = (computer: boolean, sheet: MatSheet = 'A4'): number =>
  Math.max(coverWidths.comfortableMm, laidWidth(computer, sheet));

function mirrored(thing: PlaceThing, widthMm: number): PlaceThing {
  switch (thing.shape) {
    case 'circle':
      return { ...thing, xMm: widthMm - thing.xMm };
    case 'rectangle':
      return { ...thing, xMm: widthMm - thing.xMm - thing.widthMm };
  }
}

/**
 * The things of a right-hander. Mat and paper lie before the guest, the paper under the hand that writes. The other hand
 * is free to take cup and water without laying down the pen: each stands where that hand has the shortest way, the cup
 * first, for it is used after every sip.
 */
function thingsFor(width: number, mat: MatLayout, computer: boolean): PlaceThing[] {
  const { widthMm, heightMm } = mat;
  const from = (width - sideBySide(computer, mat.sheet)) / 2 + columnBeside(mat.sheet);
  const near = (height: number) => placeDepthMm - edgeMm - height;
  const flat = (what: 'mat' | 'writing' | 'computer', xMm: number, size: { width: number; height: number }) =>
    ({
      shape: 'rectangle',
      what,
      xMm,
      yMm: near(size.height),
      widthMm: size.width,
      heightMm: size.height,
    }) as const;
  const writingX = from + widthMm + gapMm;
  const lying = [
    flat('mat', from, { width: widthMm, height: heightMm }),
    flat('writing', writingX, sheetMm),
    ...(computer ? [flat('computer', writingX + sheetMm.width + gapMm, computerMm)] : []),
  ];
  const hand: Spot = { xMm: from + widthMm / 2 - shoulderMm, yMm: placeDepthMm };
  const within = { widthMm: width, depthMm: placeDepthMm, edgeMm, gapMm };
  const cup = reachedBest(hand, cupMm, lying, [], within);
  const water = reachedBest(
    hand,
    tumblerMm,
    lying,
    cup === undefined ? [] : [{ ...cup, diameterMm: cupMm }],
    within,
  );
  const standing = (what: 'spit-cup' | 'water', spot: Spot | undefined, diameterMm: number): PlaceThing[] =>
    spot === undefined ? [] : [{ shape: 'circle', what, ...spot, diameterMm }];
  return [...lying, ...standing('spit-cup', cup, cupMm), ...standing('water', water, tumblerMm)];
}

/**
 * A place drawn to scale, its parts where hand and reach put them; mirrored for a left-hander. Throws as `layOutMat` does,
 * and a RangeError where the width is no number.
 */
export function layOutPlace(wish: PlaceWish): PlaceSetting | PlaceTooNarrow | MatTooSmall {
  const { placeWidthMm, computer, hand, sheet } = wish;
  if (!Number.isFinite(placeWidthMm)) throw new RangeError('Give the width of a place in millimetres.');
  const needsMm = leastPlaceWidth(computer, sheet);
  if (placeWidthMm < needsMm) return { fits: false, reason: 'place-too-narrow', needsMm };
  const mat = layOutMat(wish);
  if (!mat.fits) return mat;
  const things = thingsFor(placeWidthMm, mat, computer);
  return {
    fits: true,
    widthMm: placeWidthMm,
    depthMm: placeDepthMm,
    room: placeWidthMm >= comfortablePlaceWidth(computer, sheet) ? 'comfortable' : 'close',
    mat,
    things: hand === 'right' ? things : things.map((thing) => mirrored(thing, placeWidthMm)),
  };
}
