import type { PourFacts } from '../order/axes/pour-facts.ts';
import { wineCategory } from '../order/axes/wine.ts';

type TemperatureGroup =
  | 'white and rose wine'
  | 'red wine'
  | 'sparkling wine'
  | 'spirits of vine origin'
  | 'cask ale'
  | 'pale lager'
  | 'stout, strong ale, barley wine'
  | 'whisky';

/** A range in degrees Celsius at which a drink is served for tasting, and who says so. */
export interface ServiceTemperature {
  readonly group: TemperatureGroup;
  readonly minC: number;
  readonly maxC: number;
  readonly authority: 'OIV' | 'trade';
  readonly source: string;
}

const oiv = 'OIV/CONCOURS 332A/2009, article 10 (OIV-OENO 671A-2025 has replaced it)';
const trade = 'trade guidance, from memory';

export const serviceTemperatures: readonly ServiceTemperature[] = [
  { group: 'white and rose wine', minC: 10, maxC: 12, authority: 'OIV', source: oiv },
  { group: 'red wine', minC: 15, maxC: 18, authority: 'OIV', source: oiv },
  { group: 'sparkling wine', minC: 8, maxC: 10, authority: 'OIV', source: oiv },
  { group: 'spirits of vine origin', minC: 12, maxC: 16, authority: 'OIV', source: oiv },
  { group: 'cask ale', minC: 11, maxC: 13, authority: 'trade', source: trade },
  { group: 'pale lager', minC: 4, maxC: 7, authority: 'trade', source: trade },
  { group: 'stout, strong ale, barley wine', minC: 10, maxC: 14, authority: 'trade', source: trade },
  { group: 'whisky', minC: 18, maxC: 22, authority: 'trade', source: `room temperature, ${trade}` },
];

const serviceTemperature = (group: TemperatureGroup): ServiceTemperature | undefined =>
  serviceTemperatures.find((entry) => entry.group === group);

const style = (facts: PourFacts): string => facts.style?.toLowerCase() ?? '';

function groupOf(facts: PourFacts): TemperatureGroup | undefined {
  switch (facts.drink) {
    case 'wine': {
      if (facts.sparkling === true) return 'sparkling wine';
      const category = wineCategory(facts);
      if (category === 'still red') return 'red wine';
      return category === 'still white' || category === 'still rose' ? 'white and rose wine' : undefined;
    }
    case 'spirit': {
      if (/brandy|cognac|armagnac|grappa|pisco|marc\b/.test(style(facts))) return 'spirits of vine origin';
      return /whisk|malt|bourbon|rye|scotch/.test(style(facts)) ? 'whisky' : undefined;
    }
    case 'beer': {
      if (/\bcask\b/.test(style(facts))) return 'cask ale';
      if (/stout|strong ale|barley ?wine/.test(style(facts))) return 'stout, strong ale, barley wine';
      return /pale lager|pils|helles/.test(style(facts)) ? 'pale lager' : undefined;
    }
    default:
      return facts.drink satisfies never;
  }
}

/** The range for a pour where its facts put it in a group with a stated one; undefined rather than a guess. */
export function temperatureFor(facts: PourFacts): ServiceTemperature | undefined {
  const group = groupOf(facts);
  return group && serviceTemperature(group);
}
