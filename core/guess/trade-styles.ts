import type { Drink } from '../drinks/drink-kinds.ts';

/**
 * What a glass may be made of, by drink: codes with the words by which a host may have written them, folded, in English and
 * German. A list of our own from common grapes, kinds of spirit and styles of beer (common practice, no source); no brands.
 * What screens call them stands with the languages.
 */
export type Synonyms = Readonly<Record<string, readonly string[]>>;

const wine: Synonyms = {
  riesling: ['riesling'],
  chardonnay: ['chardonnay', 'morillon'],
  'sauvignon-blanc': ['sauvignon blanc', 'sauvignon'],
  'pinot-gris': ['pinot gris', 'pinot grigio', 'grauburgunder', 'rulander'],
  'pinot-blanc': ['pinot blanc', 'pinot bianco', 'weissburgunder'],
  gewuerztraminer: ['gewurztraminer', 'gewuerztraminer', 'traminer'],
  'gruener-veltliner': ['gruner veltliner', 'gruener veltliner', 'veltliner'],
  silvaner: ['silvaner', 'sylvaner'],
  'chenin-blanc': ['chenin blanc', 'chenin'],
  semillon: ['semillon'],
  viognier: ['viognier'],
  albarino: ['albarino', 'alvarinho'],
  muscat: ['muscat', 'muskateller', 'moscato', 'moscatel'],
  'pinot-noir': ['pinot noir', 'spatburgunder', 'spaetburgunder', 'blauburgunder', 'pinot nero'],
  'cabernet-sauvignon': ['cabernet sauvignon', 'cabernet'],
  'cabernet-franc': ['cabernet franc'],
  merlot: ['merlot'],
  syrah: ['syrah', 'shiraz'],
  grenache: ['grenache', 'garnacha', 'cannonau'],
  mourvedre: ['mourvedre', 'monastrell'],
  tempranillo: ['tempranillo', 'tinta roriz'],
  sangiovese: ['sangiovese'],
  nebbiolo: ['nebbiolo'],
  barbera: ['barbera'],
  malbec: ['malbec'],
  zinfandel: ['zinfandel', 'primitivo'],
  carmenere: ['carmenere'],
  gamay: ['gamay'],
  blaufraenkisch: ['blaufrankisch', 'blaufraenkisch', 'lemberger', 'kekfrankos'],
  zweigelt: ['zweigelt'],
  'touriga-nacional': ['touriga nacional', 'touriga'],
  cuvee: ['cuvee', 'blend', 'field blend', 'gemischter satz'],
};

const spirit: Synonyms = {
  'single-malt': ['single malt', 'malt'],
  'blended-malt': ['blended malt', 'vatted malt'],
  'single-grain': ['single grain', 'grain'],
  'blended-whisky': ['blended whisky', 'blended whiskey', 'blended scotch', 'blended'],
  'pot-still-whiskey': ['pot still', 'pure pot still', 'single pot still'],
  bourbon: ['bourbon'],
  'rye-whiskey': ['rye', 'roggen', 'roggenwhisky'],
  'corn-whiskey': ['corn whiskey', 'maiswhiskey'],
  'wheat-whiskey': ['wheat whiskey', 'weizenwhisky'],
  'wine-brandy': ['brandy', 'weinbrand', 'cognac', 'armagnac'],
  'apple-brandy': ['apple brandy', 'calvados', 'apfelbrand'],
  'fruit-spirit': ['fruit brandy', 'fruit spirit', 'eau de vie', 'obstbrand', 'obstler', 'kirsch'],
  'pomace-spirit': ['pomace', 'marc', 'grappa', 'trester', 'tresterbrand'],
  'molasses-rum': ['rum', 'ron', 'molasses rum'],
  'cane-juice-rum': ['rhum agricole', 'agricole', 'cane juice rum', 'cachaca'],
  gin: ['gin', 'dry gin'],
  genever: ['genever', 'jenever'],
  agave: ['agave', 'tequila', 'mezcal'],
  aquavit: ['aquavit', 'akvavit', 'akevitt'],
  vodka: ['vodka', 'wodka'],
};

const beer: Synonyms = {
  pilsner: ['pilsner', 'pilsener', 'pils'],
  helles: ['helles', 'hell', 'pale lager'],
  'vienna-lager': ['vienna lager', 'wiener lager'],
  maerzen: ['marzen', 'maerzen', 'festbier'],
  dunkel: ['dunkel', 'dunkles', 'dark lager'],
  schwarzbier: ['schwarzbier', 'black lager'],
  bock: ['bock', 'maibock'],
  doppelbock: ['doppelbock', 'double bock'],
  'top-rhine': ['kolsch', 'koelsch'],
  altbier: ['altbier', 'alt'],
  'wheat-beer': ['wheat beer', 'weissbier', 'weizen', 'hefeweizen', 'weizenbier'],
  witbier: ['witbier', 'wit'],
  'pale-ale': ['pale ale', 'apa'],
  ipa: ['ipa', 'india pale ale'],
  'double-ipa': ['double ipa', 'imperial ipa', 'dipa'],
  bitter: ['bitter', 'best bitter', 'esb'],
  'brown-ale': ['brown ale', 'mild'],
  porter: ['porter'],
  stout: ['stout', 'dry stout', 'oatmeal stout', 'milk stout'],
  'imperial-stout': ['imperial stout', 'russian imperial stout'],
  saison: ['saison', 'farmhouse ale'],
  dubbel: ['dubbel'],
  tripel: ['tripel'],
  'barley-wine': ['barley wine', 'barleywine'],
  'smoked-beer': ['smoked beer', 'rauchbier'],
  gose: ['gose'],
  'sour-wheat': ['berliner weisse', 'sour wheat'],
  'spontaneous-beer': ['lambic', 'lambik', 'gueuze', 'geuze', 'kriek', 'spontaneous'],
};

export const tradeStyles: Readonly<Record<Drink, Synonyms>> = { wine, spirit, beer };

/** What several grapes in one bottle are, whichever they are. */
export const blendOf: Readonly<Partial<Record<Drink, string>>> = { wine: 'cuvee' };
