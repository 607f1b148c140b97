import { allergens } from '../../drinks/allergens.ts';
import { type Drink, drinks } from '../../drinks/drink-kinds.ts';
import { cleanLine, cleanText } from '../../text.ts';
import { type CellReading, empty, fact, problem, saysNothing } from './cell-reading.ts';
import { fold, type ListVocabulary } from './list-words.ts';
import { ranged } from './measured-cells.ts';
import { numberAtStart } from './numbers.ts';

export function textCell(cell: string, most: number, lines: 'one' | 'many'): CellReading {
  const text = lines === 'one' ? cleanLine(cell) : cleanText(cell);
  if (text.trim() === '') return empty;
  return text.length > most ? problem({ code: 'too-long', letters: text.length, most }) : fact(text);
}

/** The drink that a text names: a stout is a beer. */
export function drinkSaid(text: string, { drinks: known }: ListVocabulary): Drink | undefined {
  const said = fold(text)
    .split(' ')
    .map((word) => known.get(word));
  return drinks.find((each) => said.includes(each));
}

export function drinkCell(cell: string, words: ListVocabulary): CellReading {
  if (saysNothing(cell)) return empty;
  const drink = drinkSaid(cell, words);
  return drink === undefined ? problem({ code: 'not-one-of', meaning: 'drink' }) : fact(drink);
}

/** A wine's colour; what colours a spirit or a beer has no list, and stays aside as words. */
export function colourCell(cell: string, drink: Drink, { colours }: ListVocabulary): CellReading {
  if (saysNothing(cell)) return empty;
  const colour = colours.get(fold(cell));
  if (colour !== undefined) return fact(colour);
  return drink === 'wine' ? problem({ code: 'not-one-of', meaning: 'colour' }) : { is: 'aside' };
}

/** Their codes with commas, in the order of the law. A word that nobody knows is asked about, never dropped. */
export function allergensCell(cell: string, { allergens: words, and }: ListVocabulary): CellReading {
  if (saysNothing(cell)) return empty;
  const known = cell
    .split(/[,;/+&]/)
    .flatMap((part) => fold(part).split(and))
    .filter((word) => word !== '')
    .map((word) => words.get(word));
  if (known.includes(undefined)) return problem({ code: 'not-one-of', meaning: 'allergens' });
  return fact(allergens.filter((each) => known.includes(each)).join(','));
}

export function wineKindCell(cell: string, { wineKinds }: ListVocabulary): CellReading {
  if (saysNothing(cell)) return empty;
  const kind = wineKinds.get(fold(cell));
  return kind === undefined ? problem({ code: 'not-one-of', meaning: 'wine-kind' }) : fact(kind);
}

/** From 1 to 5, in figures or in the words that are used of body. */
export function bodyCell(cell: string, meaning: 'body' | 'tannin', { levels }: ListVocabulary): CellReading {
  if (saysNothing(cell)) return empty;
  const read = numberAtStart(cell);
  if (read === undefined) {
    const level = levels.get(fold(cell).replace(/ bodied$/, ''));
    return level === undefined ? problem({ code: 'not-one-of', meaning }) : fact(level);
  }
  if (read.rest !== '' && !/^\/ ?5$/.test(read.rest))
    return problem({ code: 'unit-unknown', rest: read.rest });
  return Number.isInteger(read.value)
    ? ranged(read.value, 1, 5)
    : problem({ code: 'not-whole', value: read.value });
}

export function flagCell(cell: string, { flags }: ListVocabulary): CellReading {
  const sign = cell.trim();
  if (sign === '') return empty;
  const flag = /^[1x✓✔]$/i.test(sign) || (/^[0–-]$/.test(sign) ? false : flags.get(fold(sign)));
  return flag === undefined ? problem({ code: 'not-yes-or-no' }) : fact(flag);
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
