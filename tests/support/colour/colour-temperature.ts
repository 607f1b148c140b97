/**
 * Correlated colour temperature in kelvin of a light of CIE 1931 chromaticity (x, y), by McCamy's cubic.
 * Good to a few kelvin between about 2000 K and 12 500 K; undefined where y = 0.1858, then a RangeError.
 * Source: C. S. McCamy, Color Research & Application 17 (1992), pp. 142-144.
 */
export function correlatedColourTemperature(x: number, y: number): number {
  const n = (x - 0.332) / (0.1858 - y);
  if (!Number.isFinite(n)) throw new RangeError('This chromaticity has no colour temperature.');
  return 449 * n ** 3 + 3525 * n ** 2 + 6823.3 * n + 5520.33;
}
