import { midRanks } from './mid-ranks.ts';

export type RankCorrelation =
  /** Fewer than two pairs without a gap. */
  | { readonly status: 'too-few'; readonly n: number }
  /** One side does not vary, so it has no order to compare. */
  | { readonly status: 'no-variation'; readonly n: number }
  | {
      readonly status: 'correlated';
      readonly n: number;
      /** Spearman's rho: the product-moment correlation of mid-ranks. */
      readonly spearman: number;
      /** Kendall's tau-b (Kendall 1945), which allows for ties on both sides. */
      readonly kendallTauB: number;
      /** Pairs that the two sides put in opposite order. */
      readonly discordantPairs: number;
    };

function correlation(x: readonly number[], y: readonly number[]): number {
  const mean = (x.length + 1) / 2;
  let xy = 0;
  let xx = 0;
  let yy = 0;
  x.forEach((value, index) => {
    const dx = value - mean;
    const dy = (y[index] ?? 0) - mean;
    xy += dx * dy;
    xx += dx * dx;
    yy += dy * dy;
  });
  return xy / Math.sqrt(xx * yy);
}

/** How well two orders of the same things agree, from -1 (reversed) to 1; a pair with a gap is left out. */
export function rankCorrelation(
  x: readonly (number | null)[],
  y: readonly (number | null)[],
): RankCorrelation {
  const pairs = x.flatMap((one, index) => {
    const other = y[index] ?? null;
    const complete = one !== null && other !== null && Number.isFinite(one) && Number.isFinite(other);
    return complete ? [[one, other] as const] : [];
  });
  const n = pairs.length;
  if (n < 2) return { status: 'too-few', n };
  if ([0, 1].some((side) => new Set(pairs.map((pair) => pair[side])).size === 1)) {
    return { status: 'no-variation', n };
  }
  let concordant = 0;
  let discordant = 0;
  let untiedX = 0;
  let untiedY = 0;
  pairs.forEach(([x1, y1], index) => {
    for (const [x2, y2] of pairs.slice(index + 1)) {
      const product = Math.sign(x1 - x2) * Math.sign(y1 - y2);
      if (product > 0) concordant += 1;
      if (product < 0) discordant += 1;
      if (x1 !== x2) untiedX += 1;
      if (y1 !== y2) untiedY += 1;
    }
  });
  return {
    status: 'correlated',
    n,
    spearman: correlation(midRanks(pairs.map(([one]) => one)), midRanks(pairs.map(([, other]) => other))),
    kendallTauB: (concordant - discordant) / Math.sqrt(untiedX * untiedY),
    discordantPairs: discordant,
  };
}
