import type { Drink } from './drink-kinds.ts';

/** A range in degrees Celsius at which a drink is served for tasting, and who says so. */
export interface ServiceTemperature {
  readonly group: string;
  readonly minC: number;
  readonly maxC: number;
  /** OIV/CONCOURS 332A/2009, article 10 (replaced by OIV-OENO 671A-2025); or the habit of the trade, from memory. */
  readonly authority: 'OIV' | 'trade';
}

export const serviceTemperatures = {
  white: { group: 'white and rose wine', minC: 10, maxC: 12, authority: 'OIV' },
  red: { group: 'red wine', minC: 15, maxC: 18, authority: 'OIV' },
  sparkling: { group: 'sparkling wine', minC: 8, maxC: 10, authority: 'OIV' },
  // This line of the article from memory.
  sweet: {
    group: 'naturally sweet, ice and liqueur wine, mistelle',
    minC: 10,
    maxC: 14,
    authority: 'OIV',
  },
  vineSpirit: { group: 'spirits of vine origin', minC: 12, maxC: 16, authority: 'OIV' },
  caskAle: { group: 'cask ale', minC: 11, maxC: 13, authority: 'trade' },
  paleLager: { group: 'pale lager', minC: 4, maxC: 7, authority: 'trade' },
  darkBeer: { group: 'stout, strong ale, barley wine', minC: 10, maxC: 14, authority: 'trade' },
  whisky: { group: 'whisky', minC: 18, maxC: 22, authority: 'trade' },
} as const satisfies Record<string, ServiceTemperature>;

/** What of a pour's facts the group depends on; a pour of a plan has them all. */
interface Facts {
  readonly drink: Drink;
  readonly style?: string | undefined;
  readonly colour?: 'white' | 'rose' | 'orange' | 'red' | undefined;
  readonly sparkling?: boolean | undefined;
  readonly fortified?: boolean | undefined;
  readonly wineKind?: 'film-yeast' | 'naturally-sweet' | 'ice' | 'liqueur' | 'mistelle' | undefined;
}

function groupOf(facts: Facts): keyof typeof serviceTemperatures | undefined {
  const style = facts.style?.toLowerCase() ?? '';
  switch (facts.drink) {
    case 'wine':
      if (facts.wineKind === 'film-yeast') return undefined;
      if (facts.wineKind !== undefined || facts.fortified === true) return 'sweet';
      if (facts.sparkling === true) return 'sparkling';
      // Orange wine is served as white.
      return facts.colour === 'red' ? 'red' : facts.colour && 'white';
    case 'spirit':
      if (/brandy|cognac|armagnac|grappa|pisco|marc\b/.test(style)) return 'vineSpirit';
      return /whisk|malt|bourbon|rye|scotch/.test(style) ? 'whisky' : undefined;
    case 'beer':
      if (/\bcask\b/.test(style)) return 'caskAle';
      if (/stout|strong ale|barley ?wine/.test(style)) return 'darkBeer';
      return /pale lager|pils|helles/.test(style) ? 'paleLager' : undefined;
    default:
      return facts.drink satisfies never;
  }
}

/** The range for a pour where its facts put it in a group with a stated one; null rather than a guess. */
export function serviceTemperatureOf(facts: Facts): ServiceTemperature | null {
  const group = groupOf(facts);
  return group === undefined ? null : serviceTemperatures[group];
}
