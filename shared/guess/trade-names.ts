import { type TradeWords, tradeWords } from '../words/en/trade.ts';

/** Names that are spelled otherwise than their code, in every language. */
const spelled: Readonly<Record<string, string>> = {
  gewuerztraminer: 'Gewürztraminer',
  'gruener-veltliner': 'Grüner Veltliner',
  semillon: 'Sémillon',
  albarino: 'Albariño',
  mourvedre: 'Mourvèdre',
  carmenere: 'Carménère',
  blaufraenkisch: 'Blaufränkisch',
  maerzen: 'Märzen',
  'top-rhine': 'Kölsch',
  rhone: 'Rhône',
  'ribera-del-duero': 'Ribera del Duero',
  'rias-baixas': 'Rías Baixas',
  penedes: 'Penedès',
  dao: 'Dão',
  villany: 'Villány',
  duesseldorf: 'Düsseldorf',
  wuerttemberg: 'Württemberg',
  'hawkes-bay': 'Hawke’s Bay',
};

const ownPrefix = 'own:';

/** What people read for a code of the list; the host's own words as they are. */
function nameOf(code: string, kind: keyof TradeWords): string {
  if (code.startsWith(ownPrefix)) return code.slice(ownPrefix.length);
  const words: Readonly<Record<string, string>> = tradeWords[kind];
  if (Object.hasOwn(words, code)) return words[code] ?? code;
  if (Object.hasOwn(spelled, code)) return spelled[code] ?? code;
  return code.replace(
    /(^|-)(\p{L})/gu,
    (_, dash: string, letter: string) => (dash && ' ') + letter.toUpperCase(),
  );
}

export const styleName = (code: string): string => nameOf(code, 'styles');
export const countryName = (code: string): string => nameOf(code, 'countries');
export const regionName = (code: string): string => nameOf(code, 'regions');

/** "Mosel, Germany": from the region up. */
export const originName = (path: string): string => {
  const [country = '', ...below] = path.split('/');
  return [...below.map(regionName).toReversed(), countryName(country)].join(', ');
};
