import { type Figure, figure } from '../figures/reckoning.ts';
import type { SourceId } from '../figures/sources.ts';
import { type AgeCountry, ageToAsk } from './legal-ages.ts';

/**
 * The usual cautions as codes; the words live with the screens. There is none about how much or how long after
 * which anybody might drive, because no sum answers that, and none may be added.
 */
export type CautionCode =
  | 'spit-every-sip'
  | 'spitting-still-leaves-some'
  | 'water-between-pours'
  | 'eat-first'
  | 'anyone-may-skip-a-pour'
  | 'nobody-drives-after-tasting'
  | 'no-sum-tells-when-to-drive'
  | 'arrange-the-way-home'
  | 'no-alcohol-below-age'
  | 'ask-local-law-for-age'
  | 'no-alcohol-in-pregnancy'
  | 'no-alcohol-when-breastfeeding'
  | 'no-alcohol-with-medicines'
  | 'no-alcohol-with-dangerous-work'
  | 'no-alcohol-when-others-depend-on-you'
  | 'no-alcohol-before-important-decisions'
  | 'no-safe-amount-known'
  | 'law-on-serving'
  | 'law-on-shipping'
  | 'follow-published-guide'
  | 'licensed-practice-decides';

export interface Caution {
  readonly code: CautionCode;
  readonly figures: Readonly<Record<string, Figure>>;
  readonly source: SourceId;
}

export interface CautionSetting {
  /** Undefined where the country is not in the table: then local law is named instead of a number. */
  readonly country: AgeCountry | undefined;
  /** Kits travel by post or courier to guests at home. */
  readonly shipsKits: boolean;
  /** Nothing that is poured holds ethanol. */
  readonly withoutAlcohol: boolean;
}

const caution = (code: CautionCode, source: SourceId): Caution => ({ code, figures: {}, source });

function ageCaution(country: AgeCountry | undefined): Caution[] {
  const localLaw = caution('ask-local-law-for-age', 'definition');
  if (country === undefined) return [localLaw];
  const rule = ageToAsk(country);
  const age: Caution = {
    code: 'no-alcohol-below-age',
    figures: { age: figure(rule.age, 'years') },
    source: rule.source,
  };
  return [age, localLaw];
}

/** The cautions of every tasting with alcohol, in the order in which a host would say them; none without. */
export function standingCautions(setting: CautionSetting): readonly Caution[] {
  if (setting.withoutAlcohol) return [];
  return [
    caution('spit-every-sip', 'common-practice'),
    caution('spitting-still-leaves-some', 'spitting-study'),
    caution('water-between-pours', 'common-practice'),
    caution('eat-first', 'common-practice'),
    caution('anyone-may-skip-a-pour', 'common-practice'),
    caution('nobody-drives-after-tasting', 'alcohol-panels'),
    caution('no-sum-tells-when-to-drive', 'uk-no-calculation'),
    caution('arrange-the-way-home', 'alcohol-panels'),
    ...ageCaution(setting.country),
    caution('no-alcohol-in-pregnancy', 'ca-guidance'),
    caution('no-alcohol-when-breastfeeding', 'ca-guidance'),
    caution('no-alcohol-with-medicines', 'ca-guidance'),
    caution('no-alcohol-with-dangerous-work', 'ca-guidance'),
    caution('no-alcohol-when-others-depend-on-you', 'ca-guidance'),
    caution('no-alcohol-before-important-decisions', 'ca-guidance'),
    caution('no-safe-amount-known', 'who-no-safe-level'),
    caution('law-on-serving', 'definition'),
    ...(setting.shipsKits ? [caution('law-on-shipping', 'definition')] : []),
    caution('follow-published-guide', 'alcohol-panels'),
    caution('licensed-practice-decides', 'definition'),
  ];
}
