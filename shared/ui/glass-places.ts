import { glassBox } from './glass-shape.ts';

/** The mat in front of a guest: glasses stand on an arc whose middle is farthest from the guest. */
export const arcBox = { width: 320, bottom: 118 } as const;

/** A longer row than this no longer reads as glasses on a phone. */
export const mostGlasses = 16;

const middleX = arcBox.width / 2;
const middleY = 74;
const halfChord = 142;
const drop = 40;
const radius = (halfChord ** 2 + drop ** 2) / (2 * drop);
const halfAngle = Math.asin(halfChord / radius);
/** Few glasses stand close together, as a host would lay them, not at the ends of the mat. */
const widestStep = 42 / radius;
const widestGlass = 26;
const raisedBy = 10;
const raisedScale = 1.24;

export interface ArcPlace {
  /** Middle of the foot, in units of arcBox. */
  readonly x: number;
  readonly y: number;
  /** Width of the glass that stands here. */
  readonly width: number;
}

/**
 * Where glasses stand, in the order in which they are tasted: from the guest's left, or from the right when
 * mirrored for a left-hander. The mat is a thing on a table, so the direction of the script does not turn it.
 */
export function arcPlaces(count: number, mirrored: boolean): ArcPlace[] {
  const step = count > 1 ? Math.min(widestStep, (2 * halfAngle) / (count - 1)) : 0;
  // At the ends of the arc neighbours are nearest to each other, seen from the front.
  const nearest =
    count > 1 ? radius * (Math.sin(step * (count - 1) * 0.5) - Math.sin(step * (count - 3) * 0.5)) : 99;
  const width = Math.min(widestGlass, nearest * 0.84);
  return Array.from({ length: count }, (_, index) => {
    const angle = step * (index - (count - 1) / 2) * (mirrored ? -1 : 1);
    return {
      x: middleX + radius * Math.sin(angle),
      y: middleY + radius * (1 - Math.cos(angle)),
      width,
    };
  });
}

/** The same place with its glass in the hand: higher and a little nearer to the eye. */
export function raised(place: ArcPlace): ArcPlace {
  return { x: place.x, y: place.y - raisedBy, width: place.width * raisedScale };
}

/** Height of a glass of this width. */
export const glassHeight = (width: number): number => (width * glassBox.height) / glassBox.width;

/** Top of the picture: room for any one of these glasses to be raised, the same whichever it is. */
export function arcTop(places: readonly ArcPlace[]): number {
  const width = (places[0]?.width ?? widestGlass) * raisedScale;
  return middleY - raisedBy - glassHeight(width) - 2;
}
