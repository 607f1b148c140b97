export interface Trend {
  /** Pairs of evenings of which the later was better, less those of which it was not; Kendall's S. */
  readonly score: number;
  /** How often evenings in an order of chance would have gone as well or better. */
  readonly chance: number;
  readonly evenings: number;
}

/**
 * Whether a row of evenings gets better, each told by one number of which less is better: Mann's test against trend
 * (Econometrica 13, 1945), which is Kendall's tau against time. Its distribution is counted out exactly by the numbers of
 * orders with so many inversions (Kendall, Rank Correlation Methods, 1970, appendix table 1). Evenings that are equal count
 * as no better, so that a tie never makes anything surer.
 *
 * @param evenings the oldest first
 * @returns undefined of fewer than two
 */
export function trendOf(evenings: readonly number[]): Trend | undefined {
  const n = evenings.length;
  if (n < 2) return undefined;
  let better = 0;
  for (let later = 1; later < n; later += 1) {
    for (let earlier = 0; earlier < later; earlier += 1) {
      if ((evenings[later] ?? 0) < (evenings[earlier] ?? 0)) better += 1;
    }
  }
  const pairs = (n * (n - 1)) / 2;
  return { score: 2 * better - pairs, chance: chanceOfSoMany(n, pairs - better), evenings: n };
}

/** The share of all orders of n that have at most so many inversions. */
function chanceOfSoMany(n: number, inversions: number): number {
  let shares: readonly number[] = [1];
  for (let size = 2; size <= n; size += 1) {
    const before = shares;
    const next = Array.from({ length: before.length + size - 1 }, () => 0);
    before.forEach((share, at) => {
      for (let more = 0; more < size; more += 1) next[at + more] = (next[at + more] ?? 0) + share / size;
    });
    shares = next;
  }
  return Math.min(
    1,
    shares.slice(0, inversions + 1).reduce((all, share) => all + share, 0),
  );
}
