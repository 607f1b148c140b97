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
  // Two hundred guests are twenty thousand pairs for each pour: words become numbers once, and nothing is made for a pair.
  const numbers = new Map<string, number>();
  const numberOf = (word: string): number => {
    const known = numbers.get(word) ?? numbers.size;
    numbers.set(word, known);
    return known;
  };
  const sets = wordSets.map((words) => [...new Set(words)].map(numberOf));
  const ofOne = new Array<boolean>(numbers.size).fill(false);
  let [total, pairs] = [0, 0];
  for (const [index, one] of sets.entries()) {
    for (const word of one) ofOne[word] = true;
    for (const other of sets.slice(index + 1)) {
      let common = 0;
      for (const word of other) if (ofOne[word]) common += 1;
      const either = one.length + other.length - common;
      if (either === 0) continue;
      total += common / either;
      pairs += 1;
    }
    for (const word of one) ofOne[word] = false;
  }
  return pairs === 0
    ? { status: 'nothing-to-compare' }
    : { status: 'overlap', meanJaccard: total / pairs, pairs };
}
