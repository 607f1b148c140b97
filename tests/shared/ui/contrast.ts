/**
 * Contrast as WCAG 2.2 defines it: "relative luminance" and "contrast ratio" in its glossary, for colours of sRGB.
 * https://www.w3.org/TR/WCAG22/#dfn-relative-luminance, https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio
 */
function luminance(colour: string): number {
  const channels = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(colour);
  if (!channels) throw new Error(`${colour} is not a colour of six hexadecimal figures`);
  const [red = 0, green = 0, blue = 0] = channels.slice(1).map((pair) => {
    const value = Number.parseInt(pair, 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** From 1 (the same) to 21 (black on white). */
export function contrast(one: string, other: string): number {
  const [high, low] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return ((high ?? 0) + 0.05) / ((low ?? 0) + 0.05);
}
