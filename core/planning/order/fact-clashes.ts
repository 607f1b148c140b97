import { type Drink, drinks } from '../../drinks/drink-kinds.ts';
import type { FactName } from './axes/axis.ts';
import type { PlannedPour, PourFacts } from './axes/pour-facts.ts';

/** Two facts of a pour that do not go together, or a fact that its drink does not have. */
export type FactClash =
  /** The order of this drink does not read that fact: the drink or the fact is wrong. */
  | { readonly code: 'not-of-this-drink'; readonly pour: string; readonly fact: FactName }
  /** Stronger or weaker than such a drink usually is; both limits in % vol. */
  | {
      readonly code: 'unusual-strength';
      readonly pour: string;
      readonly abv: number;
      readonly from: number;
      readonly to: number;
    }
  /** As strong as a fortified wine, yet not marked as one. */
  | { readonly code: 'strong-as-fortified'; readonly pour: string; readonly abv: number }
  /** Marked dry while tasting, but the sugar is that of a sweet wine; or the other way round. */
  | {
      readonly code: 'sugar-against-mark';
      readonly pour: string;
      readonly sugarGPerL: number;
      readonly dryness: number;
    };

const foreignFacts: Readonly<Record<Drink, readonly FactName[]>> = {
  spirit: ['colour', 'sparkling', 'fortified', 'wineKind', 'tannin', 'srm', 'ibu', 'sour'],
  wine: ['peat', 'srm', 'ibu', 'sour', 'smoked'],
  beer: ['colour', 'fortified', 'wineKind', 'tannin'],
};

/** The one drink that has this fact; undefined where several do. */
export function onlyDrinkWith(fact: FactName): Drink | undefined {
  const having = drinks.filter((drink) => !foreignFacts[drink].includes(fact));
  return having.length === 1 ? having[0] : undefined;
}

/**
 * Usual strengths in % vol. Spirits from 15 (Regulation (EU) 2019/787, article 2, from memory) to the azeotrope
 * of ethanol and water; wine to 22, the most of a liqueur wine (Regulation (EU) 1308/2013, annex VII, from
 * memory); beer and the lower end of wine: common practice, no source.
 */
const usualStrength: Readonly<Record<Drink, readonly [number, number]>> = {
  spirit: [15, 96],
  wine: [4.5, 22],
  beer: [0, 20],
};

/** The one drink that is usually of this strength, in % vol; undefined where several are. */
export function onlyDrinkOfStrength(abv: number): Drink | undefined {
  const having = drinks.filter((drink) => abv >= usualStrength[drink][0] && abv <= usualStrength[drink][1]);
  return having.length === 1 ? having[0] : undefined;
}

/** From here on a wine is rarely without added spirit (common practice, no source). */
const FORTIFIED_FROM = 17;
/** EU labels call a still wine sweet from 45 g/L (Delegated Regulation (EU) 2019/33, from memory). */
const SWEET_FROM_G_PER_L = 45;
const DRY_TO_G_PER_L = 4;

const isSet = (value: PourFacts[FactName]): boolean => value !== undefined && value !== false;

function sugarAgainstMark({ drink, sugarGPerL, marks }: PourFacts): boolean {
  if (drink !== 'wine' || sugarGPerL === undefined || marks?.dryness === undefined) return false;
  return (
    (sugarGPerL >= SWEET_FROM_G_PER_L && marks.dryness >= 8) ||
    (sugarGPerL <= DRY_TO_G_PER_L && marks.dryness <= 2)
  );
}

/** What a host should look at again before trusting the order. Warnings only: odd drinks do exist. */
export function clashesOf(pour: PlannedPour): readonly FactClash[] {
  const { id, drink, abv, sugarGPerL = 0, marks } = pour;
  const [from, to] = usualStrength[drink];
  const clashes: FactClash[] = foreignFacts[drink]
    .filter((fact) => isSet(pour[fact]))
    .map((fact) => ({ code: 'not-of-this-drink', pour: id, fact }));
  if (abv !== undefined && !(abv >= from && abv <= to)) {
    clashes.push({ code: 'unusual-strength', pour: id, abv, from, to });
  }
  if (
    drink === 'wine' &&
    pour.fortified !== true &&
    pour.wineKind === undefined &&
    (abv ?? 0) >= FORTIFIED_FROM
  ) {
    clashes.push({ code: 'strong-as-fortified', pour: id, abv: abv ?? 0 });
  }
  if (sugarAgainstMark(pour)) {
    clashes.push({ code: 'sugar-against-mark', pour: id, sugarGPerL, dryness: marks?.dryness ?? 0 });
  }
  return clashes;
}
