import type { Drink } from '../../../tasting.ts';

export type WineColour = 'white' | 'rose' | 'orange' | 'red';

/** Kinds of wine that stand apart from still and sparkling in the order of categories of a competition. */
export type WineKind = 'film-yeast' | 'naturally-sweet' | 'ice' | 'liqueur' | 'mistelle';

/** What the host marked when tasting ahead, each from 0 to 10. */
interface HostMarks {
  /** 0 quiet, 10 powerful. */
  readonly pungency?: number | undefined;
  /** 0 sweet, 10 dry. */
  readonly dryness?: number | undefined;
}

/**
 * The facts of a pour that planning reads. Everything but the drink may be unknown: a fact that is not there
 * counts as not known and is named wherever it mattered. Flags (sparkling, fortified, sour, smoked) are the
 * exception: a form says "no" by leaving them out, so a missing flag counts as no.
 */
export interface PourFacts {
  readonly drink: Drink;
  /** Strength in % vol. */
  readonly abv?: number | undefined;
  readonly ageYears?: number | undefined;
  /** Calendar year of harvest or distillation. */
  readonly vintage?: number | undefined;
  /** Smoke from peat: 0 none, 1 a trace, 2 plain, 3 heavy. */
  readonly peat?: number | undefined;
  /** What the drink lay in, in a word: bourbon, sherry, refill, steel. */
  readonly cask?: string | undefined;
  readonly colour?: WineColour | undefined;
  readonly sparkling?: boolean | undefined;
  readonly fortified?: boolean | undefined;
  readonly wineKind?: WineKind | undefined;
  /** 1 light to 5 full. */
  readonly body?: number | undefined;
  /** Of a wine: 1 hardly any, 5 gripping. */
  readonly tannin?: number | undefined;
  readonly sugarGPerL?: number | undefined;
  /** Beer colour, degrees SRM. */
  readonly srm?: number | undefined;
  /** Beer bitterness, international bitterness units (mg/L). */
  readonly ibu?: number | undefined;
  readonly sour?: boolean | undefined;
  readonly smoked?: boolean | undefined;
  readonly marks?: HostMarks | undefined;
  readonly producer?: string | undefined;
  readonly region?: string | undefined;
  readonly country?: string | undefined;
  readonly style?: string | undefined;
  /** Price of a bottle in minor units of the plan's currency; only compared here, never added. */
  readonly priceMinor?: number | undefined;
}

/** A pour as planning knows it: an id that is unique in the tasting, and its facts. A plan's `Pour` is one. */
export interface PlannedPour extends PourFacts {
  readonly id: string;
}
