import { type Drink, drinks } from '../../drinks/drink-kinds.ts';
import type { FactName } from '../order/axes/axis.ts';
import { onlyDrinkOfStrength, onlyDrinkWith } from '../order/fact-clashes.ts';
import type { Fact } from './cell-reading.ts';
import { fold, type ListVocabulary } from './list-words.ts';
import type { Meaning } from './meanings.ts';
import { drinkSaid } from './worded-cells.ts';

/** Facts of a pour by what a column means, where the two have different names. */
const factOf: Partial<Record<Meaning, FactName>> = {
  'wine-kind': 'wineKind',
  fortified: 'fortified',
  tannin: 'tannin',
  colour: 'colour',
  srm: 'srm',
  ibu: 'ibu',
  sour: 'sour',
};

interface ToldRow {
  readonly facts: ReadonlyMap<Meaning, Fact>;
}

/** The drink that more say than any other. */
function mostSaid(votes: readonly (Drink | undefined)[]): Drink | undefined {
  const [first, second] = drinks
    .map((drink) => ({ drink, count: votes.filter((vote) => vote === drink).length }))
    .sort((a, b) => b.count - a.count);
  return first !== undefined && first.count > (second?.count ?? 0) ? first.drink : undefined;
}

function drinkOfHeading(heading: string, { drinkHeadings }: ListVocabulary): Drink | undefined {
  const said = fold(heading)
    .split(' ')
    .map((word) => drinkHeadings.get(word));
  return drinks.find((drink) => said.includes(drink));
}

function drinkOfFacts({ facts }: ToldRow): Drink | undefined {
  for (const meaning of facts.keys()) {
    const fact = factOf[meaning];
    const drink = fact === undefined || facts.get(meaning) === false ? undefined : onlyDrinkWith(fact);
    if (drink !== undefined) return drink;
  }
  return undefined;
}

/** As its name or style says: a stout is a beer. */
function drinkOfWords({ facts }: ToldRow, words: ListVocabulary): Drink | undefined {
  for (const meaning of ['style', 'name'] as const) {
    const drink = drinkSaid(String(facts.get(meaning) ?? ''), words);
    if (drink !== undefined) return drink;
  }
  return undefined;
}

/**
 * The drink that a list is of, by the surest that it has: its headings, facts that only one drink has, words in names and
 * styles, strengths that only one drink reaches. Undefined where it does not tell.
 */
export function drinkOfList(
  headings: readonly string[],
  rows: readonly ToldRow[],
  words: ListVocabulary,
): Drink | undefined {
  const strengths = rows.map(({ facts }) => {
    const abv = facts.get('strength');
    return typeof abv === 'number' ? onlyDrinkOfStrength(abv) : undefined;
  });
  return (
    mostSaid(headings.map((heading) => drinkOfHeading(heading, words))) ??
    mostSaid(rows.map(drinkOfFacts)) ??
    mostSaid(rows.map((row) => drinkOfWords(row, words))) ??
    mostSaid(strengths)
  );
}
