/**
 * One glass, drawn everywhere: a stemmed bowl that narrows to its rim, in a box of 60 by 100 units, y downwards.
 * The bowl is two half-ellipses joined at its widest point, so that both its outline and the area below any level
 * have a closed form.
 */
export const glassBox = { width: 60, height: 100 } as const;

const axis = 30;
const halfWidth = 25;
const widestY = 36;
const below = 24;
const above = 46;
const rimY = 4;
const bottomY = widestY + below;

/** Where liquid stands when the glass is as full as it gets: a finger below the rim. */
export const fullY = 12;
/** Where a tasting pour stands: at the widest point, where the surface is largest. */
export const pourY = widestY;

const lean = (y: number): number => (widestY - y) / (y > widestY ? below : above);

/** Half the width of the bowl at height y, in units; 0 outside the bowl. */
export function bowlHalfWidth(y: number): number {
  if (y < rimY || y > bottomY) return 0;
  return halfWidth * Math.sqrt(Math.max(0, 1 - lean(y) ** 2));
}

/** Integral of sqrt(1 - t^2) from 0 to t, the area under a quarter of the unit circle. */
const quarterArea = (t: number): number => (t * Math.sqrt(Math.max(0, 1 - t * t)) + Math.asin(t)) / 2;

/** Area of the bowl below height y, in square units. */
export function areaBelow(y: number): number {
  const held = Math.min(Math.max(y, rimY), bottomY);
  const lower = quarterArea(Math.min(lean(held), 0)) - quarterArea(-1);
  const upper = held < widestY ? quarterArea(lean(held)) : 0;
  return 2 * halfWidth * (below * lower + above * upper);
}

/**
 * The level at which a share of the full glass is left. The eye reads the area of the picture, so that area is what
 * falls evenly with time: at half time half of the painted liquid is gone.
 * @param share 0 (empty) to 1 (full); anything outside is brought to the nearer end
 * @returns y of the surface, between fullY and the bottom of the bowl
 */
export function levelAt(share: number): number {
  const area = Math.min(Math.max(share, 0), 1) * areaBelow(fullY);
  let high = fullY;
  let low = bottomY;
  // Forty halvings of 48 units end far below anything a screen can show.
  for (let step = 0; step < 40; step += 1) {
    const middle = (high + low) / 2;
    if (areaBelow(middle) > area) high = middle;
    else low = middle;
  }
  return (high + low) / 2;
}

const short = (value: number): number => Math.round(value * 100) / 100;

/** Path of the part of the bowl that lies below level y; empty when nothing is left. */
export function liquidPath(y: number): string {
  if (y >= bottomY - 0.05) return '';
  const half = bowlHalfWidth(y);
  const left = `M${short(axis - half)} ${short(y)}`;
  const end = `${short(axis + half)} ${short(y)}Z`;
  const bowl = `A${halfWidth} ${below} 0 0 0 `;
  if (y >= widestY) return `${left}${bowl}${axis} ${bottomY}${bowl}${end}`;
  const flank = `A${halfWidth} ${above} 0 0 0 `;
  return `${left}${flank}${axis - halfWidth} ${widestY}${bowl}${axis + halfWidth} ${widestY}${flank}${end}`;
}

/** Outline of the bowl, open at the rim's level only by the thin line that closes it. */
export const bowlPath = liquidPath(rimY);
export const stemPath = `M${axis} ${bottomY}V93M14 96.5C23 96 29 95.5 ${axis} 92C31 95.5 37 96 46 96.5Z`;
