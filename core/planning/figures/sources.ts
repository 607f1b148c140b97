/**
 * Where the figures come from. `checked` says how far the figure itself was verified when it was written in:
 * 'text seen' in the source or in a public page that quotes it, 'from memory' (confirm before relying on it),
 * 'definition' follows from the meaning of the words, 'common practice' is the trade's habit without a source.
 */
export interface Source {
  readonly title: string;
  readonly year: number | null;
  readonly checked: 'text seen' | 'from memory' | 'definition' | 'common practice';
}

const seen = (title: string, year: number | null) => ({ title, year, checked: 'text seen' }) as const;
const memory = (title: string, year: number | null) => ({ title, year, checked: 'from memory' }) as const;

export const sources = {
  definition: { title: 'Definition', year: null, checked: 'definition' },
  'common-practice': { title: 'Common practice, no source', year: null, checked: 'common practice' },
  'oiml-r22': seen('OIML R 22, International alcoholometric tables', 1975),
  'medicine-dropper': memory(
    'United States Pharmacopeia <1101>, medicine dropper: 20 drops of water, 1 g',
    null,
  ),
  'us-drink': seen('NIAAA, What is a standard drink; Dietary Guidelines for Americans 2020-2025', 2020),
  'uk-guideline': seen("UK Chief Medical Officers' low risk drinking guidelines", 2016),
  'au-guideline': seen('NHMRC, Australian guidelines to reduce health risks from drinking alcohol', 2020),
  'anz-food-standard': memory('Australia New Zealand Food Standards Code, Standard 2.7.1', 2016),
  'ca-guidance': seen("CCSA, Canada's Guidance on Alcohol and Health", 2023),
  'drinks-of-37-countries': memory('Kalinowski & Humphreys, Addiction 111:1293-1298', 2016),
  audit: memory('WHO, AUDIT: guidelines for use in primary care, 2nd edition', 2001),
  'us-guideline': seen('Dietary Guidelines for Americans 2025-2030', 2026),
  'de-guidance': seen('Deutsche Hauptstelle für Suchtfragen, as quoted by newspapers and clinics', 2014),
  'ch-drink': seen('Swiss practice guide on addiction, page on the standard drink', null),
  'ch-guidance': seen('Swiss Federal Commission on Alcohol, orientation on drinking, as quoted', 2018),
  'nl-guideline': seen('Health Council of the Netherlands, 2015 guidelines, as told by Trimbos', 2015),
  'it-guideline': seen('Italian guidance on one and two units of 12 g, as quoted by several pages', null),
  'es-guideline': seen(
    'Ministerio de Sanidad, Límites de consumo de bajo riesgo de alcohol, as quoted',
    2020,
  ),
  'no-drink': seen('Norwegian pages on alcohol (rop.no, avogtil.no, nhi.no)', null),
  'se-guideline': memory('Socialstyrelsen, advice on risky drinking', 2023),
  'fr-guideline': memory('Santé publique France, alcohol guidance', 2017),
  'dk-guideline': memory('Sundhedsstyrelsen, advice on alcohol', 2022),
  'ie-guideline': memory('Health Service Executive, weekly low-risk guidelines', null),
  'nz-guideline': memory('New Zealand low-risk drinking advice', null),
  'at-guideline': memory('Austrian handbook of alcohol, threshold of harmlessness', null),
  'jp-guideline': memory('Health Japan 21', 2000),
  'who-no-safe-level': seen('WHO statement, Lancet Public Health 8:e6-e7', 2023),
  'who-heavy-episode': memory('WHO, Global status report on alcohol and health', 2018),
  'us-binge': seen('NIAAA, Drinking levels defined (4 drinks for women, 5 for men, in about 2 hours)', 2004),
  'uk-no-calculation': seen('UK government advice on drink driving', null),
  'spitting-study': seen('Study of spitting at a wine tasting, Wine Studies (summary)', 2012),
  'alcohol-panels': seen('ASTM E1879, Guide for sensory evaluation of beverages containing alcohol', 2017),
  'us-age': seen('Dietary Guidelines for Americans 2020-2025 (adults 21 and older)', 2020),
  'gb-age': memory('Licensing Act 2003; Licensing (Scotland) Act 2005', 2003),
  'ie-age': memory('Intoxicating Liquor Act 1988', 1988),
  'au-age': memory('State and territory liquor laws', null),
  'nz-age': memory('Sale and Supply of Alcohol Act 2012', 2012),
  'ca-age': memory('Provincial and territorial liquor laws', null),
  'ca-nunavut-age': seen('Government of Nunavut, health page on alcohol', null),
  'fr-age': memory('Code de la santé publique, L3342-1', 2009),
  'de-age': memory('Jugendschutzgesetz, section 9', 2002),
  'at-age': memory('Youth protection laws of the Länder, as aligned', 2019),
  'dk-age': memory(
    'Danish laws on sale and on serving of alcohol; the rules for shops changed in 2025',
    2025,
  ),
  'se-age': memory('Alkohollag (2010:1622), chapter 3', 2010),
  'ch-age': memory('Food Act, article 14, and Alcohol Act, article 41; Ticino asks for 18 for all', null),
  'nl-age': memory('Alcoholwet, article 20', 2014),
  'it-age': memory('Law 189 of 2012', 2012),
  'es-age': memory('Laws of the autonomous communities', null),
  'no-age': memory('Alkoholloven, section 1-5', 1989),
  'alcohol-poisoning': seen('NHS and St John Ambulance, first aid for alcohol poisoning', 2019),
  'eu-112': seen('European emergency number 112, in force in every country of the European Union', null),
  'us-911': seen('Public lists of emergency telephone numbers (911 in the Americas)', null),
  'gb-999': seen('NHS and St John Ambulance, call 999 or 112', null),
  'nz-111': seen('New Zealand health pages, call 111', null),
  'ch-144': seen('Guide to Swiss emergency numbers (144 for an ambulance, 112 as well)', null),
  'local-numbers': memory('National emergency numbers', null),
  'jp-age': memory('Act on prohibition of drinking under the age of 20', 1922),
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;
