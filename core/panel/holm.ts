/**
 * Holm's adjustment for several tests at once (Holm 1979): compare the results with alpha as they are, and the
 * chance of even one false finding among all stays below alpha. In the order given; never above 1.
 */
export function holmAdjusted(ps: readonly number[]): number[] {
  const byRank = ps.map((p, index) => ({ p, index })).sort((one, other) => one.p - other.p);
  const adjusted = ps.map(() => 1);
  let largest = 0;
  byRank.forEach(({ p, index }, rank) => {
    largest = Math.max(largest, Math.min(1, p * (ps.length - rank)));
    adjusted[index] = largest;
  });
  return adjusted;
}
