import type { Allergen } from '../../drinks/allergens.ts';
import { type Drink, flightsOf, type Plan, type Pour } from '../../tasting.ts';
import type { WineColour, WineKind } from '../order/axes/pour-facts.ts';
import type { Meaning } from './meanings.ts';

type Cell = string | number | boolean | undefined;

/** The words of one language for headings and cells; the reader of lists knows them all. */
export interface LineupWords {
  readonly meanings: Readonly<Record<Meaning, string>>;
  readonly cells: {
    readonly yes: string;
    readonly no: string;
    readonly drinks: Readonly<Record<Drink, string>>;
    readonly colours: Readonly<Record<WineColour, string>>;
    readonly wineKinds: Readonly<Record<WineKind, string>>;
    readonly allergens: Readonly<Record<Allergen, string>>;
  };
}

type Column = readonly [meaning: Meaning, of: (pour: Pour) => Cell, unit?: string];

/** One choice, as the form has it. */
const kindOf = ({ wineKind, fortified }: Pour): WineKind | undefined =>
  wineKind ?? (fortified === true ? 'liqueur' : undefined);

/** What each column of the list holds, and the unit that its heading names. */
const columns = (currency: string, digits: number, { cells }: LineupWords): readonly Column[] => [
  ['name', ({ name }) => name],
  ['drink', ({ drink }) => cells.drinks[drink]],
  ['producer', ({ producer }) => producer],
  ['region', ({ region }) => region],
  ['country', ({ country }) => country],
  ['style', ({ style }) => style],
  ['age', ({ ageYears }) => ageYears],
  ['vintage', ({ vintage }) => vintage],
  ['strength', ({ abv }) => abv, '% vol'],
  ['cask', ({ cask }) => cask],
  ['peat', ({ peat }) => peat],
  ['colour', ({ colour }) => colour && cells.colours[colour]],
  ['sparkling', ({ sparkling }) => sparkling],
  [
    'wine-kind',
    (pour) => {
      const kind = kindOf(pour);
      return kind && cells.wineKinds[kind];
    },
  ],
  ['body', ({ body }) => body],
  ['tannin', ({ tannin }) => tannin],
  ['sugar', ({ sugarGPerL }) => sugarGPerL, 'g/l'],
  ['srm', ({ srm }) => srm],
  ['ibu', ({ ibu }) => ibu],
  ['sour', ({ sour }) => sour],
  ['smoked', ({ smoked }) => smoked],
  ['pungency', ({ marks }) => marks?.pungency],
  ['dryness', ({ marks }) => marks?.dryness],
  ['allergens', ({ allergens: noted }) => noted?.map((each) => cells.allergens[each]).join(', ')],
  ['bottle', ({ bottleMl }) => bottleMl, 'ml'],
  ['pour', ({ pourMl }) => pourMl, 'ml'],
  ['price', ({ priceMinor }) => (priceMinor === undefined ? undefined : priceMinor / 10 ** digits), currency],
  ['link', ({ link }) => link],
  ['story', ({ story }) => story],
  ['note', ({ hostNote }) => hostNote],
  ['front-photo', ({ photos }) => photos?.front],
  ['back-photo', ({ photos }) => photos?.back],
  ['id', ({ id }) => id],
];

/**
 * Plain digits: no 1e-7, which a spreadsheet of another language would not read, and never exactly three decimals,
 * which a reader could take for thousands.
 */
function digitsOf(value: number, decimal: '.' | ','): string {
  const plain = /e/.test(String(value)) ? value.toFixed(12).replace(/\.?0+$/, '') : String(value);
  return plain.replace(/(\.\d{3})$/, '$10').replace('.', decimal);
}

/**
 * The lineup as a table with a line of headings in the language of `words`, in the order of tasting, each pour with its
 * flight; written as CSV and read back by `readPourList` it gives the same pours. `digits`: how many decimals the plan's
 * currency has; `decimal`: what stands before them in the page's region.
 */
export function lineupTable(
  plan: Pick<Plan, 'pours' | 'flightSizes' | 'currency'>,
  digits: number,
  words: LineupWords,
  decimal: '.' | ',' = '.',
): readonly (readonly string[])[] {
  const all = columns(plan.currency, digits, words);
  const written = (cell: Cell): string => {
    if (cell === undefined) return '';
    if (typeof cell === 'boolean') return cell ? words.cells.yes : words.cells.no;
    return typeof cell === 'number' ? digitsOf(cell, decimal) : cell;
  };
  const headings = all.map(([meaning, , unit]) =>
    unit === undefined ? words.meanings[meaning] : `${words.meanings[meaning]} ${unit}`,
  );
  const lines = flightsOf(plan).flatMap(({ index, pours }) =>
    pours.map((pour) => [String(index + 1), ...all.map(([, of]) => written(of(pour)))]),
  );
  return [[words.meanings.flight, ...headings], ...lines];
}
