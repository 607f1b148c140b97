/** What a column of a list of pours can tell. `age-or-vintage` is read by its size: a year or a number of years. */
export const meanings = [
  'name',
  'drink',
  'producer',
  'region',
  'country',
  'style',
  'age',
  'vintage',
  'age-or-vintage',
  'strength',
  'cask',
  'peat',
  'colour',
  'sparkling',
  'fortified',
  'wine-kind',
  'body',
  'tannin',
  'sugar',
  'srm',
  'ebc',
  'ibu',
  'sour',
  'smoked',
  'pungency',
  'dryness',
  'allergens',
  'bottle',
  'pour',
  'price',
  'link',
  'story',
  'note',
  'front-photo',
  'back-photo',
  'id',
  'flight',
] as const;
export type Meaning = (typeof meanings)[number];

/** Units that a heading may name for the bare numbers below it. */
export type HeadingUnit = 'proof' | 'ml' | 'cl' | 'l' | 'oz';

/** Headings in English and German, and a few that both borrow; folded as `fold` folds. */
const headings: Readonly<Record<Meaning, string>> = {
  name: 'vin|vins|vino|biere|bieres|birra|name|names|pour|pour name|bottle name|bottling|expression|label|product|whisky|whiskey|wine|beer|spirit|drink name|title|bezeichnung|abfullung|produkt|wein|bier|probe|titel|was',
  drink: 'drink|kind of drink|beverage|getrank|getrankeart',
  producer:
    'producer|maker|made by|distillery|winery|brewery|brewer|distiller|estate|chateau|domaine|house|hersteller|brennerei|destillerie|brauerei|weingut|erzeuger|produzent|winzer|marke|brand|brasserie|distillerie|cantina',
  region: 'region|area|appellation|origin|district|gebiet|anbaugebiet|herkunft|gegend|lage',
  country: 'country|land|nation|country of origin|herkunftsland',
  style:
    'style|type|category|kind|variety|grape|grapes|varietal|stil|typ|sorte|rebsorte|rebsorten|kategorie|art|bierstil',
  age: 'age|years|age years|age statement|yo|alter|jahre|reifezeit|lagerzeit',
  vintage: 'vintage|year|harvest|distilled|year distilled|jahrgang|jahr|erntejahr|destilliert',
  'age-or-vintage':
    'age vintage|age or vintage|vintage age|vintage or age|alter jahrgang|alter oder jahrgang|jahrgang alter',
  strength:
    'abv|strength|alcohol|alc|alc vol|alc by vol|alcohol by volume|vol|proof|us proof|percent|abv vol|alkohol|alkoholgehalt|alk|alk vol|starke|prozent|volumenprozent|volumprozent|vol prozent|trinkstarke|gradation',
  cask: 'cask|cask type|barrel|wood|maturation|finish|fass|fasstyp|fassart|reifung|ausbau|holz',
  peat: 'peat|peated|smoke level|peat level|ppm|torf|torfig|getorft|rauch',
  colour:
    'colour|color|wine colour|wine color|farbe|weinfarbe|colour of the wine|color of the wine|farbe des weins',
  sparkling: 'sparkling|bubbles|fizzy|schaumwein|schaumend|perlend|kohlensaure',
  fortified: 'fortified|aufgespritet|verstarkt',
  'wine-kind': 'wine kind|kind of wine|special wine|special kind of wine|weinart|besondere weinart|sonderart',
  body: 'body|weight|korper|fulle',
  tannin: 'tannin|tannins|gerbstoff|gerbstoffe|tannine|grip',
  sugar: 'sugar|residual sugar|rs|sweetness|zucker|restzucker|restsusse|rz',
  srm: 'srm|lovibond',
  ebc: 'ebc|bierfarbe',
  ibu: 'ibu|ebu|bitterness|bittereinheiten|bittere|bitterkeit',
  sour: 'sour|sauer',
  smoked: 'smoked|smoky|geraucht|rauchbier|rauchmalz|mit rauchmalz',
  pungency:
    'pungency|power|light to pungent|quiet to powerful|intensity|intensitat|wucht|scharfe|mild bis scharf|zart bis kraftig',
  dryness: 'dryness|sweet to dry|trockenheit|suss bis trocken',
  allergens: 'allergens|allergen|contains|allergene|enthalt',
  bottle:
    'bottle|bottle size|size|bottle volume|volume|content|contents|flasche|flaschengrosse|inhalt|fullmenge|volumen|grosse|gebinde',
  pour: 'pour size|pour volume|serving|serving size|measure|ausschank|menge pro glas|glasmenge|portion|portionsgrosse|probenmenge',
  price: 'price|bottle price|cost|price per bottle|preis|flaschenpreis|kosten|preis pro flasche',
  link: 'link|url|web|website|web page|webseite|internet|adresse',
  story: 'story|description|about|background|text|geschichte|beschreibung|hintergrund',
  note: 'note|notes|my note|host note|remark|remarks|comment|comments|own note|notiz|notizen|eigene notiz|bemerkung|bemerkungen|anmerkung|kommentar',
  'front-photo': 'front photo|photo front|foto vorn|foto vorne',
  'back-photo': 'back photo|photo back|foto hinten',
  id: 'id|key|kennung',
  flight: 'flight|round|runde',
};

/** Lower case without accents; what stands between words becomes one space. */
export const fold = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/ß/g, 'ss')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

const byHeading = new Map<string, Meaning>(
  meanings.flatMap((meaning) => headings[meaning].split('|').map((heading) => [heading, meaning] as const)),
);

const unitWords: Readonly<Record<string, HeadingUnit>> = {
  proof: 'proof',
  ml: 'ml',
  milliliter: 'ml',
  millilitres: 'ml',
  cl: 'cl',
  zentiliter: 'cl',
  centilitres: 'cl',
  l: 'l',
  liter: 'l',
  litre: 'l',
  litres: 'l',
  oz: 'oz',
};

/** Words that say in what a column is measured and not what it tells. */
const measures = new Set([
  ...Object.keys(unitWords),
  ...'in fl us vol ppm g gl per pro eur euro usd gbp chf jpy dkk sek nok czk pln aud cad nzd years jahre 0 3 5 10'.split(
    ' ',
  ),
]);

export interface Heading {
  readonly meaning: Meaning;
  readonly unit?: HeadingUnit;
  /** ISO 4217, where the heading names a currency. */
  readonly currency?: string;
}

/** By all its words; else without its units; else without every word of measure. */
function meaningOf(words: readonly string[]): Meaning | undefined {
  const shorter = [
    words.filter((word) => !Object.hasOwn(unitWords, word)),
    words.filter((word) => !measures.has(word)),
  ];
  return [words, ...shorter].flatMap((some) => byHeading.get(some.join(' ')) ?? [])[0];
}

/** What a heading means, in whichever of its languages; undefined where it says nothing that a pour has. */
export function headingOf(text: string): Heading | undefined {
  // A percentage sign tells strength as surely as a word; "vol." beside a volume's unit tells a size.
  const words = fold(text.replace(/%/g, ' prozent ')).split(' ').filter(Boolean);
  if (words.length === 0 || words.length > 6) return undefined;
  const unitWord = words.find((word) => Object.hasOwn(unitWords, word));
  const unit = unitWord === undefined ? undefined : unitWords[unitWord];
  const volume = unit !== undefined && unit !== 'proof';
  const priced = /\b[A-Z]{3}\b/.exec(text)?.[0];
  const found =
    meaningOf(words) ??
    (words.includes('prozent') ? percentHeading(words) : undefined) ??
    (priced && meaningOf(words.filter((word) => word !== fold(priced))) === 'price' ? 'price' : undefined);
  if (found === undefined) return undefined;
  const meaning = found === 'strength' && volume && !words.includes('prozent') ? 'bottle' : found;
  const currency = meaning === 'price' ? (currencyIn(text) ?? priced) : undefined;
  return { meaning, ...(unit && { unit }), ...(currency && { currency }) };
}

const percentHeading = (words: readonly string[]): Meaning | undefined =>
  words.every((word) =>
    ['prozent', 'vol', 'by', 'alc', 'abv', 'alk', 'alcohol', 'alkohol', 'alkoholgehalt', 'strength'].includes(
      word,
    ),
  )
    ? 'strength'
    : undefined;

const symbols: Readonly<Record<string, string>> = { '€': 'EUR', '£': 'GBP', '¥': 'JPY' };
const codes = /\b(EUR|USD|GBP|CHF|JPY|DKK|SEK|NOK|CZK|PLN|AUD|CAD|NZD|HUF|INR|CNY|KRW|ZAR|BRL|MXN|ISK)\b/i;

/** The currency that a text names; a dollar sign alone names none of the many dollars. */
export function currencyIn(text: string): string | undefined {
  const code = codes.exec(text)?.[1]?.toUpperCase();
  if (code !== undefined) return code;
  for (const symbol of text) if (Object.hasOwn(symbols, symbol)) return symbols[symbol];
  return undefined;
}
