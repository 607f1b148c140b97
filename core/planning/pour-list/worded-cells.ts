import { type Allergen, allergens } from '../../drinks/allergens.ts';
import type { Drink } from '../../tasting.ts';
import { cleanLine, cleanText } from '../../text.ts';
import type { WineColour, WineKind } from '../order/axes/pour-facts.ts';
import { type CellReading, empty, fact, problem, saysNothing } from './cell-reading.ts';
import { fold } from './meanings.ts';
import { ranged } from './measured-cells.ts';
import { numberAtStart } from './numbers.ts';

export function textCell(cell: string, most: number, lines: 'one' | 'many'): CellReading {
  const text = lines === 'one' ? cleanLine(cell) : cleanText(cell);
  if (text.trim() === '') return empty;
  return text.length > most ? problem({ code: 'too-long', letters: text.length, most }) : fact(text);
}

const drinkWords: Readonly<Record<Drink, string>> = {
  spirit:
    'spirit spirits whisky whiskey malt bourbon rye rum gin brandy spirituose spirituosen schnaps likor liqueur',
  wine: 'wine wines wein weine vin vino sekt champagner',
  beer: 'beer beers bier biere ale lager stout',
};

export function drinkCell(cell: string): CellReading {
  if (saysNothing(cell)) return empty;
  const words = fold(cell).split(' ');
  for (const drink of ['spirit', 'wine', 'beer'] as const) {
    const known = drinkWords[drink].split(' ');
    if (words.some((word) => known.includes(word))) return fact(drink);
  }
  return problem({ code: 'not-one-of', meaning: 'drink' });
}

const colourWords: Readonly<Record<WineColour, string>> = {
  white: 'white weiss weisswein blanc bianco blanco branco',
  rose: 'rose rosewein rosato rosado pink',
  orange: 'orange orangewein',
  red: 'red rot rotwein rouge rosso tinto',
};

/** A wine's colour; what colours a spirit or a beer has no list, and stays aside as words. */
export function colourCell(cell: string, drink: Drink): CellReading {
  if (saysNothing(cell)) return empty;
  const words = fold(cell).split(' ');
  for (const colour of ['white', 'rose', 'orange', 'red'] as const) {
    const known = colourWords[colour].split(' ');
    if (words.length === 1 && words.some((word) => known.includes(word))) return fact(colour);
  }
  return drink === 'wine' ? problem({ code: 'not-one-of', meaning: 'colour' }) : { is: 'aside' };
}

const wineKindWords: Readonly<Record<WineKind, string>> = {
  'film-yeast': 'film yeast|under film yeast|flor|florhefe',
  'naturally-sweet': 'naturally sweet|natursuss',
  ice: 'ice|ice wine|icewine|eiswein',
  liqueur:
    'liqueur|liqueur wine|fortified|fortified liqueur wine|likorwein|aufgespritet|likorwein aufgespritet',
  mistelle: 'mistelle|mistela',
};

const allergenWords: Readonly<Record<Allergen, string>> = {
  gluten: 'gluten|cereals|wheat|barley|rye|oats|spelt|getreide|weizen|gerste|roggen|hafer|dinkel',
  crustaceans: 'crustaceans|crustacean|shellfish|krebstiere|krustentiere',
  eggs: 'egg|eggs|ei|eier',
  fish: 'fish|fisch',
  peanuts: 'peanut|peanuts|erdnuss|erdnusse',
  soybeans: 'soya|soy|soybean|soybeans|soja|sojabohnen',
  milk: 'milk|lactose|casein|milch|laktose|kasein',
  nuts: 'nut|nuts|tree nuts|almonds|hazelnuts|walnuts|nuss|nusse|schalenfruchte|mandeln|haselnusse|walnusse',
  celery: 'celery|sellerie',
  mustard: 'mustard|senf',
  sesame: 'sesame|sesam',
  sulphites: 'sulphites|sulfites|sulphite|sulfite|so2|sulphur dioxide|sulfur dioxide|schwefel|schwefeldioxid',
  lupin: 'lupin|lupins|lupine|lupinen',
  molluscs: 'molluscs|mollusks|weichtiere',
};

/** Their codes with commas, in the order of the law. A word that nobody knows is asked about, never dropped. */
export function allergensCell(cell: string): CellReading {
  if (saysNothing(cell)) return empty;
  const named = cell
    .split(/[,;/+&]| and | und /)
    .map(fold)
    .filter((word) => word !== '');
  const known = named.map((word) => allergens.find((each) => allergenWords[each].split('|').includes(word)));
  if (known.includes(undefined)) return problem({ code: 'not-one-of', meaning: 'allergens' });
  return fact(allergens.filter((each) => known.includes(each)).join(','));
}

export function wineKindCell(cell: string): CellReading {
  if (saysNothing(cell)) return empty;
  const said = fold(cell);
  for (const kind of ['film-yeast', 'naturally-sweet', 'ice', 'liqueur', 'mistelle'] as const) {
    if (wineKindWords[kind].split('|').includes(said)) return fact(kind);
  }
  return problem({ code: 'not-one-of', meaning: 'wine-kind' });
}

/** From 1 to 5, in figures or in the words that are used of body. */
export function bodyCell(cell: string, meaning: 'body' | 'tannin' = 'body'): CellReading {
  if (saysNothing(cell)) return empty;
  const read = numberAtStart(cell);
  if (read === undefined) {
    const levels = [
      'light|leicht',
      'light to medium',
      'medium|mittel',
      'medium to full',
      'full|voll|kraftig',
    ];
    const level = levels.findIndex((names) => names.split('|').includes(fold(cell).replace(/ bodied$/, '')));
    return level < 0 ? problem({ code: 'not-one-of', meaning }) : fact(level + 1);
  }
  if (read.rest !== '' && !/^\/ ?5$/.test(read.rest))
    return problem({ code: 'unit-unknown', rest: read.rest });
  return Number.isInteger(read.value)
    ? ranged(read.value, 1, 5)
    : problem({ code: 'not-whole', value: read.value });
}

export function flagCell(cell: string): CellReading {
  if (cell.trim() === '') return empty;
  if (/^(yes|y|true|1|x|✓|✔|ja|j|wahr|oui|si|sí)$/i.test(cell.trim())) return fact(true);
  if (/^(no|n|false|0|nein|falsch|non|-|–)$/i.test(cell.trim())) return fact(false);
  return problem({ code: 'not-yes-or-no' });
}

export function linkCell(cell: string): CellReading {
  const link = cell.trim();
  if (saysNothing(link)) return empty;
  if (link.length > 500) return problem({ code: 'too-long', letters: link.length, most: 500 });
  return /^https?:\/\/[^\s]+$/i.test(link) ? fact(link) : problem({ code: 'not-a-link' });
}

export function idCell(cell: string): CellReading {
  const id = cell.trim();
  if (id === '') return empty;
  return /^[A-Za-z0-9_-]{1,40}$/.test(id) ? fact(id) : problem({ code: 'not-an-id' });
}
