/** How alike the word sets of several guests are, without any model of chance. */
export type WordOverlap =
  | { readonly status: 'overlap'; readonly meanJaccard: number; readonly pairs: number }
  /** Fewer than two guests, or no pair of whom at least one used a word. */
  | { readonly status: 'nothing-to-compare' };

/**
 * The mean over pairs of guests of |A and B| / |A or B| (Jaccard 1901). A pair without any word has no overlap to
 * speak of and is left out.
 */
export function meanJaccard(wordSets: readonly (readonly string[])[]): WordOverlap {
  const sets = wordSets.map((words) => new Set(words));
  const overlaps = sets.flatMap((one, index) =>
    sets.slice(index + 1).flatMap((other) => {
      const common = [...one].filter((word) => other.has(word)).length;
      const either = one.size + other.size - common;
      return either === 0 ? [] : [common / either];
    }),
  );
  if (overlaps.length === 0) return { status: 'nothing-to-compare' };
  const total = overlaps.reduce((sum, overlap) => sum + overlap, 0);
  return { status: 'overlap', meanJaccard: total / overlaps.length, pairs: overlaps.length };
}
