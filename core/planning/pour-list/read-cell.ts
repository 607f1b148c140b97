import { type Drink, limits } from '../../tasting.ts';
import { type CellReading, empty, type ForeignMoney, saysNothing } from './cell-reading.ts';
import type { HeadingUnit } from './headings.ts';
import { fold, type ListVocabulary } from './list-words.ts';
import type { Meaning } from './meanings.ts';
import {
  ageCell,
  ageOrVintageCell,
  ebcCell,
  peatCell,
  plainNumber,
  priceCell,
  strengthCell,
  vintageCell,
  volumeCell,
} from './measured-cells.ts';
import {
  allergensCell,
  bodyCell,
  colourCell,
  drinkCell,
  flagCell,
  idCell,
  linkCell,
  textCell,
  wineKindCell,
} from './worded-cells.ts';

/** What the cells of a list are read for. */
export interface ListSetting {
  /** The drink of pours that do not tell. */
  readonly drink: Drink;
  /** ISO 4217 code of the plan. */
  readonly currency: string;
  /** How many decimals that currency has. */
  readonly digits: number;
  /** By currency as it is named in the list, what becomes of its prices. */
  readonly money?: Readonly<Record<string, ForeignMoney>> | undefined;
  readonly words: ListVocabulary;
  /** Which ounce a list in ounces means. */
  readonly ounce: 'us' | 'imperial';
}

export interface ColumnHeading {
  readonly text: string;
  readonly unit: HeadingUnit | undefined;
  readonly currency: string | undefined;
}

/** A text may be any word, and no peat is a fact. */
const asItStands: ReadonlySet<Meaning> = new Set([
  ...(['name', 'producer', 'region', 'country', 'style', 'cask', 'story', 'note'] as const),
  ...(['id', 'front-photo', 'back-photo', 'peat', 'flight'] as const),
  ...(['sparkling', 'fortified', 'sour', 'smoked'] as const),
]);

/** No words for nothing are longer. */
const longestWords = 40;

/** Whether a cell says, by a sign or in words, that there is nothing to say. */
export const isUnknown = (cell: string, { nothing }: ListVocabulary): boolean =>
  saysNothing(cell) || (cell.length < longestWords && nothing.has(fold(cell)));

/** One cell, read for what its column means. */
export function readCell(
  meaning: Meaning,
  cell: string,
  heading: ColumnHeading,
  setting: ListSetting,
  drink: Drink,
): CellReading {
  const { words } = setting;
  if (!asItStands.has(meaning) && isUnknown(cell, words)) return empty;
  switch (meaning) {
    case 'name':
    case 'producer':
    case 'region':
    case 'country':
    case 'style':
    case 'cask':
      return textCell(cell, limits.line, 'one');
    case 'drink':
      return drinkCell(cell, words);
    case 'age':
      return ageCell(cell);
    case 'vintage':
      return vintageCell(cell);
    case 'age-or-vintage':
      return ageOrVintageCell(cell);
    case 'strength':
      return strengthCell(cell, heading.unit);
    case 'peat':
      return peatCell(cell, heading.text, words);
    case 'colour':
      return colourCell(cell, drink, words);
    case 'sparkling':
    case 'fortified':
    case 'sour':
    case 'smoked':
      return flagCell(cell, words);
    case 'wine-kind':
      return wineKindCell(cell, words);
    case 'body':
    case 'tannin':
      return bodyCell(cell, meaning, words);
    case 'sugar':
      return plainNumber(cell, 0, 800, /^g ?(\/ ?l|per l)?$/i);
    case 'srm':
      return plainNumber(cell, 0, 200, /^(srm|°?l)$/i);
    case 'ebc':
      return ebcCell(cell);
    case 'ibu':
      return plainNumber(cell, 0, 1000, /^(ibu|ebu)$/i);
    case 'pungency':
    case 'dryness':
      return plainNumber(cell, 0, 10, /^\/ ?10$/);
    case 'allergens':
      return allergensCell(cell, words);
    case 'bottle':
    case 'pour':
      return volumeCell(cell, meaning, heading.unit, setting.ounce);
    case 'price':
      return priceCell(cell, setting, heading.currency);
    case 'link':
      return linkCell(cell);
    case 'story':
      return textCell(cell, limits.text, 'many');
    case 'note':
      return textCell(cell, 1000, 'many');
    case 'id':
    case 'front-photo':
    case 'back-photo':
      return idCell(cell);
    case 'flight':
      return cell.trim() === '' ? empty : plainNumber(cell, 1, limits.pours, /^$/, true);
    default:
      return meaning satisfies never;
  }
}
