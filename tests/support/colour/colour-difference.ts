import { d65White, type Tristimulus } from './tristimulus.ts';

/** CIE 1976 L*a*b*, lightness 0 to 100. */
export type Lab = readonly [lightness: number, a: number, b: number];

/** Against the D65 white. Source: ISO/CIE 11664-4. */
export function toLab({ X, Y, Z }: Tristimulus): Lab {
  const f = (ratio: number) =>
    ratio > (6 / 29) ** 3 ? Math.cbrt(ratio) : ratio / (3 * (6 / 29) ** 2) + 4 / 29;
  const [fx, fy, fz] = [f(X / d65White.X), f(Y / d65White.Y), f(Z / d65White.Z)];
  return [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)];
}

const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** Hue angle in degrees, 0 to 360; 0 where there is no chroma. */
function hueAngle(a: number, b: number): number {
  const angle = (Math.atan2(b, a) * 180) / Math.PI;
  return angle < 0 ? angle + 360 : angle;
}

/** A difference of two hue angles (-360 to 360) as the turn of at most half a circle that makes it. */
function shorterWayRound(degrees: number): number {
  if (degrees > 180) return degrees - 360;
  return degrees < -180 ? degrees + 360 : degrees;
}

/**
 * The difference that an average eye sees between two colours, CIEDE2000 with all weights 1: about 1 is just
 * visible side by side. Source: ISO/CIE 11664-6; formula as Sharma, Wu & Dalal, Color Research &
 * Application 30 (2005), pp. 21-30.
 */
export function ciede2000([l1, a1, b1]: Lab, [l2, a2, b2]: Lab): number {
  const seventh = (chroma: number) => Math.sqrt(chroma ** 7 / (chroma ** 7 + 25 ** 7));
  const stretch = 1 + 0.5 * (1 - seventh((Math.hypot(a1, b1) + Math.hypot(a2, b2)) / 2));
  const [c1, c2] = [Math.hypot(a1 * stretch, b1), Math.hypot(a2 * stretch, b2)];
  const [h1, h2] = [hueAngle(a1 * stretch, b1), hueAngle(a2 * stretch, b2)];
  const grey = c1 * c2 === 0;

  const turn = grey ? 0 : shorterWayRound(h2 - h1);
  const hueDifference = 2 * Math.sqrt(c1 * c2) * Math.sin(radians(turn / 2));
  const meanLightness = (l1 + l2) / 2;
  const meanChroma = (c1 + c2) / 2;
  const half = Math.abs(h1 - h2) <= 180 ? 0 : h1 + h2 < 360 ? 180 : -180;
  const meanHue = grey ? h1 + h2 : (h1 + h2) / 2 + half;

  const t =
    1 -
    0.17 * Math.cos(radians(meanHue - 30)) +
    0.24 * Math.cos(radians(2 * meanHue)) +
    0.32 * Math.cos(radians(3 * meanHue + 6)) -
    0.2 * Math.cos(radians(4 * meanHue - 63));
  const fromFifty = (meanLightness - 50) ** 2;
  const lightnessTerm = (l2 - l1) / (1 + (0.015 * fromFifty) / Math.sqrt(20 + fromFifty));
  const chromaTerm = (c2 - c1) / (1 + 0.045 * meanChroma);
  const hueTerm = hueDifference / (1 + 0.015 * meanChroma * t);
  const rotation =
    -2 * seventh(meanChroma) * Math.sin(radians(60 * Math.exp(-(((meanHue - 275) / 25) ** 2))));
  return Math.sqrt(lightnessTerm ** 2 + chromaTerm ** 2 + hueTerm ** 2 + rotation * chromaTerm * hueTerm);
}
