import { fold, foldings } from './fold.ts';

/** Something that can be found: a word of a board, one of the host's additions, an own word. */
export interface Findable {
  readonly code: string;
  readonly text: string;
  /** Name of the family; finding the family finds its words, after all others. */
  readonly family?: string;
}

/**
 * From the best: the whole text, its beginning, a word within it, its family, a part of a compound ("Rauch" in
 * "Torfrauch"), a slip of the finger.
 */
const ranks = { whole: 0, beginning: 1, within: 2, family: 3, compound: 4, slip: 5 } as const;

/** Shorter parts stand in too many words by chance. */
const shortestPart = 4;

/** How many slips are forgiven: none in a short query, where every other word would be near. */
const slipsIn = (query: string) => (query.length < 4 ? 0 : query.length < 7 ? 1 : 2);

/**
 * The fewest insertions, deletions, changes and swaps of neighbours that make the query a beginning of the text
 * (optimal string alignment; the least value of its last row, as what follows the beginning costs nothing).
 */
export function slipsToBeginning(query: string, text: string): number {
  const [from, to] = [[...query], [...text]];
  let beforeLast: number[] = [];
  let last = to.map((_, index) => index + 1);
  last.unshift(0);
  from.forEach((letter, i) => {
    const row = [i + 1];
    to.forEach((other, j) => {
      const change = (last[j] ?? 0) + (letter === other ? 0 : 1);
      const gap = Math.min(last[j + 1] ?? 0, row[j] ?? 0) + 1;
      const swapped = i > 0 && j > 0 && letter === to[j - 1] && from[i - 1] === other;
      row.push(Math.min(change, gap, swapped ? (beforeLast[j - 1] ?? 0) + 1 : Number.POSITIVE_INFINITY));
    });
    beforeLast = last;
    last = row;
  });
  return Math.min(...last);
}

/** The best rank that any way of typing the entry gives it. */
function rankOf(query: string, entry: Findable): number | undefined {
  const found = foldings(entry.text).flatMap((text) => rankOfText(query, text, entry.family) ?? []);
  return found.length === 0 ? undefined : Math.min(...found);
}

function rankOfText(query: string, text: string, family: string | undefined): number | undefined {
  if (text === query) return ranks.whole;
  if (text.startsWith(query)) return ranks.beginning;
  if (` ${text}`.includes(` ${query}`)) return ranks.within;
  if (family !== undefined && foldings(family).some((name) => name.startsWith(query))) return ranks.family;
  if (query.length >= shortestPart && text.includes(query)) return ranks.compound;
  const forgiven = slipsIn(query);
  if (forgiven === 0) return undefined;
  // The first letter is rarely wrong; asking for it among the first two keeps far-fetched words away.
  const near = [text, ...text.split(' ').slice(1)]
    .filter((each) => each.slice(0, 2).includes(query.charAt(0)))
    .map((each) => slipsToBeginning(query, each));
  const fewest = Math.min(...near);
  return fewest <= forgiven ? ranks.slip + fewest : undefined;
}

/** The entries that a query may mean, best first, in the board's order where alike; none for an empty query. */
export function searchWords<Entry extends Findable>(
  entries: readonly Entry[],
  query: string,
  limit = 12,
): readonly Entry[] {
  const asked = fold(query);
  if (asked === '') return [];
  return entries
    .flatMap((entry) => {
      const rank = rankOf(asked, entry);
      return rank === undefined ? [] : [{ entry, rank }];
    })
    .sort((one, other) => one.rank - other.rank)
    .slice(0, limit)
    .map(({ entry }) => entry);
}
