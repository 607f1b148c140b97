import type { Tristimulus } from './tristimulus.ts';

/** Three channels of 8 bits each, 0 to 255. */
export type Srgb8 = readonly [red: number, green: number, blue: number];

/** A colour as screens take it; `outOfGamut` says that a channel had to be clipped to what a screen can show. */
export interface ScreenColour {
  readonly rgb: Srgb8;
  readonly hex: string;
  readonly outOfGamut: boolean;
}

/** XYZ (Y = 1 for white) to linear sRGB. Source: IEC 61966-2-1 primaries and D65, to 7 digits. */
const rows = [
  [3.2404542, -1.5371385, -0.4985314],
  [-0.969266, 1.8760108, 0.041556],
  [0.0556434, -0.2040259, 1.0572252],
] as const;

/** Clipping by less than half an 8-bit step near black cannot be seen, so it does not count as leaving the gamut. */
const unseen = 0.00015;

const clip = (value: number) => Math.min(1, Math.max(0, value));

/** The sRGB transfer function, linear 0..1 to coded 0..1. Source: IEC 61966-2-1. */
const encode = (linear: number) =>
  linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;

/** An 8-bit channel (0 to 255) to linear light (0 to 1). Source: IEC 61966-2-1, threshold 0.04045. */
export function srgbToLinear(channel: number): number {
  const coded = channel / 255;
  return coded <= 0.04045 ? coded / 12.92 : ((coded + 0.055) / 1.055) ** 2.4;
}

/** The nearest colour that an sRGB screen shows, channel by channel. */
export function toScreen({ X, Y, Z }: Tristimulus): ScreenColour {
  const linear = rows.map(([fromX, fromY, fromZ]) => fromX * X + fromY * Y + fromZ * Z);
  const channel = (index: number) => Math.round(encode(clip(linear[index] ?? 0)) * 255);
  const rgb: Srgb8 = [channel(0), channel(1), channel(2)];
  const outOfGamut = linear.some((value) => value < -unseen || value > 1 + unseen);
  return { rgb, hex: toHex(rgb), outOfGamut };
}

export function toHex(rgb: Srgb8): string {
  return `#${rgb.map((channel) => channel.toString(16).padStart(2, '0')).join('')}`;
}

/** Reads `#rrggbb` or `#rgb`; throws a RangeError on anything else. */
export function fromHex(hex: string): Srgb8 {
  const digits = /^#([0-9a-f]{6}|[0-9a-f]{3})$/i.exec(hex)?.[1];
  if (digits === undefined) throw new RangeError(`Write a colour as #rrggbb; this is not one: ${hex}`);
  const wide = digits.length === 3 ? [...digits].map((digit) => digit + digit).join('') : digits;
  const channel = (index: number) => Number.parseInt(wide.slice(index * 2, index * 2 + 2), 16);
  return [channel(0), channel(1), channel(2)];
}
