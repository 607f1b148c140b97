import { type Grams, grams } from '../../units.ts';
import type { SourceId } from '../figures/sources.ts';
import { type DrinkStandard, gramsPerDrink } from './standard-drinks.ts';

/**
 * Amounts of ethanol in one evening that a public body has drawn a line at. None is a safe amount, none is a
 * target, and none says anything about driving: see who-no-safe-level and the cautions.
 */
type GuidanceMarkId =
  | 'ca-occasion'
  | 'au-day'
  | 'us-binge-women'
  | 'who-heavy-episode'
  | 'us-binge-men'
  | 'gb-week';

export interface GuidanceMark<Id extends GuidanceMarkId = GuidanceMarkId> {
  readonly id: Id;
  readonly ethanol: Grams;
  /** The same line as its body draws it: so many drinks of its own size. */
  readonly drinks: { readonly count: number; readonly standard: DrinkStandard };
  /** 'above': the line itself is still within; 'from': the line itself is already over it. */
  readonly crossed: 'above' | 'from';
  readonly source: SourceId;
}

const mark = <Id extends GuidanceMarkId>(
  id: Id,
  count: number,
  standard: DrinkStandard,
  crossed: 'above' | 'from',
  source: SourceId,
): GuidanceMark<Id> => ({
  id,
  ethanol: grams(count * gramsPerDrink(standard)),
  drinks: { count, standard },
  crossed,
  source,
});

/** The lowest published line for one occasion known to us: no more than 2 Canadian drinks. */
export const canadianOccasion = mark('ca-occasion', 2, 'CA', 'above', 'ca-guidance');
/** No more than 4 Australian drinks on any one day. */
export const australianDay = mark('au-day', 4, 'AU', 'above', 'au-guideline');

/** A line for one day, which an evening is held against. */
export type DayMark = GuidanceMark<'ca-occasion' | 'au-day'>;

/** All marks, rising. */
export const guidanceMarks: readonly GuidanceMark[] = [
  canadianOccasion,
  australianDay,
  mark('us-binge-women', 4, 'US', 'from', 'us-binge'),
  mark('who-heavy-episode', 6, 'WHO', 'from', 'who-heavy-episode'),
  mark('us-binge-men', 5, 'US', 'from', 'us-binge'),
  // A week's guideline for the United Kingdom, drunk in one evening.
  mark('gb-week', 14, 'GB', 'above', 'uk-guideline'),
];

/**
 * The line above which an evening is called too much, aloud. Canada has a lower one of its own; the current US
 * guidelines (2025-2030) give no number and the British one counts by the week, so elsewhere the Australian
 * day stands in.
 */
export const loudMark = (standard: DrinkStandard): DayMark =>
  standard === 'CA' ? canadianOccasion : australianDay;
