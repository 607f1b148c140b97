import { flightsOf, type Plan, type Pour } from '../../tasting.ts';

type Cell = string | number | boolean | undefined;

/** Heading and cell of each column of the list that a plan writes; every heading is one that the reader knows. */
const columns = (currency: string, digits: number): readonly (readonly [string, (pour: Pour) => Cell])[] => [
  ['name', ({ name }) => name],
  ['drink', ({ drink }) => drink],
  ['producer', ({ producer }) => producer],
  ['region', ({ region }) => region],
  ['country', ({ country }) => country],
  ['style', ({ style }) => style],
  ['age', ({ ageYears }) => ageYears],
  ['vintage', ({ vintage }) => vintage],
  ['strength % vol', ({ abv }) => abv],
  ['cask', ({ cask }) => cask],
  ['peat', ({ peat }) => peat],
  ['colour', ({ colour }) => colour],
  ['sparkling', ({ sparkling }) => sparkling],
  ['fortified', ({ fortified }) => fortified],
  ['wine kind', ({ wineKind }) => wineKind],
  ['body', ({ body }) => body],
  ['sugar g/l', ({ sugarGPerL }) => sugarGPerL],
  ['SRM', ({ srm }) => srm],
  ['IBU', ({ ibu }) => ibu],
  ['sour', ({ sour }) => sour],
  ['smoked', ({ smoked }) => smoked],
  ['pungency', ({ marks }) => marks?.pungency],
  ['dryness', ({ marks }) => marks?.dryness],
  ['bottle ml', ({ bottleMl }) => bottleMl],
  ['pour size ml', ({ pourMl }) => pourMl],
  [
    `price ${currency}`,
    ({ priceMinor }) => (priceMinor === undefined ? undefined : priceMinor / 10 ** digits),
  ],
  ['link', ({ link }) => link],
  ['story', ({ story }) => story],
  ['note', ({ hostNote }) => hostNote],
  ['front photo', ({ photos }) => photos?.front],
  ['back photo', ({ photos }) => photos?.back],
  ['id', ({ id }) => id],
];

/**
 * A spreadsheet would run a cell that begins like this as a formula. An apostrophe before it makes it text, and the
 * reader takes that one apostrophe off again; so text that already has apostrophes there gets one more.
 */
const likeFormula = /^'*[=+\-@\t\r\n＝＋－＠]/;
export const guarded = (cell: string): string => (likeFormula.test(cell) ? `'${cell}` : cell);
export const unguarded = (cell: string): string =>
  cell.startsWith("'") && likeFormula.test(cell) ? cell.slice(1) : cell;

/**
 * Plain digits: no 1e-7, which a spreadsheet of another language would not read, and never exactly three decimals,
 * which a reader could take for thousands.
 */
function digitsOf(value: number): string {
  const plain = /e/.test(String(value)) ? value.toFixed(12).replace(/\.?0+$/, '') : String(value);
  return plain.replace(/(\.\d{3})$/, '$10');
}

function written(cell: Cell): string {
  if (cell === undefined) return '';
  if (typeof cell === 'boolean') return cell ? 'yes' : 'no';
  return typeof cell === 'number' ? digitsOf(cell) : guarded(cell);
}

/**
 * The lineup as a table with a line of headings, in the order of tasting, each pour with its flight; read back by
 * `readPourList` it gives the same pours. `digits`: how many decimals the plan's currency has.
 */
export function lineupTable(
  plan: Pick<Plan, 'pours' | 'flightSizes' | 'currency'>,
  digits: number,
): readonly (readonly string[])[] {
  const all = columns(plan.currency, digits);
  const lines = flightsOf(plan).flatMap(({ index, pours }) =>
    pours.map((pour) => [String(index + 1), ...all.map(([, of]) => written(of(pour)))]),
  );
  return [['flight', ...all.map(([heading]) => heading)], ...lines];
}
