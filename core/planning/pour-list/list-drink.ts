import { type Drink, drinks } from '../../drinks/drink-kinds.ts';
import type { FactName } from '../order/axes/axis.ts';
import { onlyDrinkOfStrength, onlyDrinkWith } from '../order/fact-clashes.ts';
import type { Fact } from './cell-reading.ts';
import { fold, type Meaning } from './meanings.ts';
import { drinkCell } from './worded-cells.ts';

/** Words of a heading that only one drink has; folded as `fold` folds. */
const headingWords: Readonly<Record<Drink, string>> = {
  spirit:
    'whisky whiskey whiskys whiskies distillery distiller brennerei destillerie distillerie spirit spirits spirituose spirituosen rum gin bourbon',
  wine: 'wine wines wein weine vin vins vino vini winery weingut winzer domaine chateau cantina rebsorte rebsorten grape grapes cepage cepages appellation weinart weinfarbe',
  beer: 'beer beers bier biere bieres birra cerveza brewery brewer brauerei brasserie birrificio bierstil bierfarbe',
};

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

function drinkOfHeading(heading: string): Drink | undefined {
  const words = fold(heading).split(' ');
  return drinks.find((drink) => headingWords[drink].split(' ').some((word) => words.includes(word)));
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
function drinkOfWords({ facts }: ToldRow): Drink | undefined {
  for (const meaning of ['style', 'name'] as const) {
    const read = drinkCell(String(facts.get(meaning) ?? ''));
    const drink = read.is === 'fact' ? drinks.find((each) => each === read.fact) : undefined;
    if (drink !== undefined) return drink;
  }
  return undefined;
}

/**
 * The drink that a list is of, by the surest that it has: its headings, facts that only one drink has, words in names and
 * styles, strengths that only one drink reaches. Undefined where it does not tell.
 */
export function drinkOfList(headings: readonly string[], rows: readonly ToldRow[]): Drink | undefined {
  const strengths = rows.map(({ facts }) => {
    const abv = facts.get('strength');
    return typeof abv === 'number' ? onlyDrinkOfStrength(abv) : undefined;
  });
  return (
    mostSaid(headings.map(drinkOfHeading)) ??
    mostSaid(rows.map(drinkOfFacts)) ??
    mostSaid(rows.map(drinkOfWords)) ??
    mostSaid(strengths)
  );
}
