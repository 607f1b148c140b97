import { fromHex, type Srgb8, srgbToLinear } from './srgb.ts';

/** Relative luminance, 0 for black to 1 for white. Source: WCAG 2.2, definition of relative luminance. */
function relativeLuminance([red, green, blue]: Srgb8): number {
  return 0.2126 * srgbToLinear(red) + 0.7152 * srgbToLinear(green) + 0.0722 * srgbToLinear(blue);
}

/** Contrast of two hex colours, 1 to 21, whichever way round. Source: WCAG 2.2, definition of contrast ratio. */
export function contrastRatio(one: string, other: string): number {
  const [a, b] = [relativeLuminance(fromHex(one)), relativeLuminance(fromHex(other))];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

export interface TextOnSwatch {
  readonly onWhiteText: number;
  readonly onBlackText: number;
  readonly better: 'white' | 'black';
}

/** Whether black or white text reads better on a swatch (hex); the better one always reaches 4.5. */
export function textOnSwatch(swatch: string): TextOnSwatch {
  const onWhiteText = contrastRatio(swatch, '#ffffff');
  const onBlackText = contrastRatio(swatch, '#000000');
  return { onWhiteText, onBlackText, better: onWhiteText > onBlackText ? 'white' : 'black' };
}
