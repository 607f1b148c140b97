/** A point on a place: origin at its far left corner, x to the right, y towards the guest, in mm. */
export interface Spot {
  readonly xMm: number;
  readonly yMm: number;
}

interface Lying extends Spot {
  readonly widthMm: number;
  readonly heightMm: number;
}

interface Standing extends Spot {
  readonly diameterMm: number;
}

interface Within {
  readonly widthMm: number;
  readonly depthMm: number;
  /** Kept free along the edges, and between two things. */
  readonly edgeMm: number;
  readonly gapMm: number;
}

/** Fine enough for a hand that sets down a cup. */
const stepMm = 5;

const between = (value: number, from: number, to: number): number => Math.min(Math.max(value, from), to);

/** From the middle of something round to the nearest point of something that lies. */
const toLying = ({ xMm, yMm }: Spot, thing: Lying): number =>
  Math.hypot(
    xMm - between(xMm, thing.xMm, thing.xMm + thing.widthMm),
    yMm - between(yMm, thing.yMm, thing.yMm + thing.heightMm),
  );

/**
 * Where something round stands closest to a hand: off the edges, and a gap away from all that lies or stands there
 * already. Looked for on a grid of 5 mm, so that it does not hang on the order in which things are given; undefined where
 * there is no room.
 */
export function reachedBest(
  hand: Spot,
  diameterMm: number,
  lying: readonly Lying[],
  standing: readonly Standing[],
  { widthMm, depthMm, edgeMm, gapMm }: Within,
): Spot | undefined {
  const radius = diameterMm / 2;
  const free = (spot: Spot): boolean =>
    lying.every((thing) => toLying(spot, thing) >= radius + gapMm) &&
    standing.every(
      (thing) =>
        Math.hypot(spot.xMm - thing.xMm, spot.yMm - thing.yMm) >= radius + thing.diameterMm / 2 + gapMm,
    );
  const way = ({ xMm, yMm }: Spot): number => Math.hypot(xMm - hand.xMm, yMm - hand.yMm);
  let best: Spot | undefined;
  for (let xMm = edgeMm + radius; xMm <= widthMm - edgeMm - radius; xMm += stepMm) {
    for (let yMm = radius; yMm <= depthMm - edgeMm - radius; yMm += stepMm) {
      const spot = { xMm, yMm };
      if ((best === undefined || way(spot) < way(best)) && free(spot)) best = spot;
    }
  }
  return best;
}
