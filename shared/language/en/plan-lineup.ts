import type { AxisCode, FactName } from '../../../core/planning/order/axes/axis.ts';
import type { FactClash } from '../../../core/planning/order/fact-clashes.ts';
import type { LabelClash } from '../../../core/planning/order/label-clashes.ts';
import type { CellNote, CellProblem } from '../../../core/planning/pour-list/cell-reading.ts';
import type { ThemeCheck } from '../../../core/planning/theme/theme.ts';
import type { Drink } from '../../../core/tasting.ts';
import { several } from '../counting.ts';
import { planList } from './plan-list.ts';

const conjunction = new Intl.ListFormat('en', { type: 'conjunction' });

/** What there is more or less of along each axis. */
const axes: Record<AxisCode, { readonly more: string; readonly less: string; readonly noun: string }> = {
  drink: { more: 'a stronger kind of drink', less: 'a lighter kind of drink', noun: 'kind of drink' },
  smoke: { more: 'more smoke', less: 'less smoke', noun: 'smoke' },
  strength: { more: 'stronger', less: 'lighter in strength', noun: 'strength' },
  pungency: { more: 'more powerful', less: 'quieter', noun: 'power' },
  dryness: { more: 'drier', less: 'sweeter', noun: 'dryness' },
  sweetness: { more: 'sweeter', less: 'drier', noun: 'sweetness' },
  category: { more: 'later by its kind', less: 'earlier by its kind', noun: 'kind' },
  body: { more: 'fuller', less: 'lighter in body', noun: 'body' },
  cask: { more: 'a heavier cask', less: 'a lighter cask', noun: 'cask' },
  age: { more: 'older', less: 'younger', noun: 'age' },
  bitterness: { more: 'more bitter', less: 'less bitter', noun: 'bitterness' },
  colour: { more: 'darker', less: 'paler', noun: 'colour' },
  sourness: { more: 'more sour', less: 'less sour', noun: 'sourness' },
};

const facts: Record<FactName, string> = {
  drink: 'drink',
  abv: 'strength',
  ageYears: 'age',
  vintage: 'vintage',
  peat: 'peat',
  cask: 'cask',
  colour: 'colour',
  sparkling: 'sparkling',
  fortified: 'fortified',
  wineKind: 'kind of wine',
  body: 'body',
  tannin: 'tannin',
  sugarGPerL: 'sugar',
  srm: 'colour in SRM',
  ibu: 'bitterness',
  sour: 'sour',
  smoked: 'smoked',
  marks: 'your marks from tasting ahead',
  producer: 'producer',
  region: 'region',
  country: 'country',
  style: 'style',
  priceMinor: 'price',
};

const labelClashes: Record<LabelClash, string> = {
  'vintage-in-the-future': 'This vintage is in the future. Check the year.',
  'older-than-its-vintage': 'It is older than its vintage allows. Check both.',
  'pour-larger-than-bottle': 'The pour is larger than the bottle. Check both.',
};

const drinkNames: Record<Drink, string> = { spirit: 'spirit', wine: 'wine', beer: 'beer' };

/** What to look at again in one pour's facts. */
function clashSentence(clash: FactClash, drink: Drink, number: (value: number) => string): string {
  switch (clash.code) {
    case 'not-of-this-drink':
      return `A ${drinkNames[drink]} rarely has this: ${facts[clash.fact]}. Check it, or the drink.`;
    case 'unusual-strength':
      return `${number(clash.abv)}\u00a0%\u00a0vol is unusual for a ${drinkNames[drink]}; most are ${number(clash.from)} to ${number(clash.to)}. Check the label.`;
    case 'strong-as-fortified':
      return `${number(clash.abv)}\u00a0%\u00a0vol is as strong as a fortified wine. Mark it as fortified, or check the label.`;
    case 'sugar-against-mark':
      return `${number(clash.sugarGPerL)}\u00a0g/L of sugar and your mark of ${number(clash.dryness)} for dryness do not go together. Check both.`;
    default:
      return clash satisfies never;
  }
}

const choices: Record<Extract<CellProblem, { code: 'not-one-of' }>['meaning'], string> = {
  drink: 'Enter spirit, wine or beer.',
  colour: 'Enter white, rosé, orange or red.',
  peat: 'Enter 0 (none) to 3 (heavy).',
  body: 'Enter 1 (light) to 5 (full).',
  tannin: 'Enter 1 (hardly any) to 5 (gripping).',
  allergens:
    'Enter the allergens as the pour’s page names them, with commas between them, or clear the cell.',
  'wine-kind': 'Enter film yeast, naturally sweet, ice, liqueur or mistelle, or clear the cell.',
};

/** Why a cell cannot be kept, and what to write instead. `cell` is its text, `number` writes as the page does. */
function problemSentence(problem: CellProblem, cell: string, number: (value: number) => string): string {
  switch (problem.code) {
    case 'name-missing':
      return 'The name is missing. Add one, or skip this line.';
    case 'too-long':
      return `This is ${problem.letters} letters long; shorten it to ${problem.most}.`;
    case 'not-a-number':
      return `“${cell}” is not a number. Enter one, or clear the cell.`;
    case 'unit-unknown':
      return `We do not understand “${problem.rest}” after the number. Use the usual unit.`;
    case 'unit-missing':
      return `“${cell}” of what? Enter ${cell.trim()}\u00a0cl or ${cell.trim()}\u00a0ml.`;
    case 'out-of-range':
      return `${number(problem.value)} is not between ${number(problem.least)} and ${number(problem.most)}. Check it.`;
    case 'above-any-drink':
      return problem.asProof === undefined
        ? `${number(problem.value)} is more than any drink holds. Check the label.`
        : `${number(problem.value)} is more than any drink holds; as US proof it would be ${number(problem.asProof)}\u00a0%\u00a0vol.`;
    case 'not-whole':
      return `${number(problem.value)} is not a whole number. Enter one without decimals.`;
    case 'not-yes-or-no':
      return `“${cell}” is neither yes nor no. Enter one of the two.`;
    case 'not-one-of':
      return `We do not know “${cell}”. ${choices[problem.meaning]}`;
    case 'no-year':
      return `“${cell}” is not one year. Use four digits.`;
    case 'not-a-link':
      return 'A link starts with http:// or https://.';
    case 'not-an-id':
      return 'This cannot be an id. Clear the cell to get a new one.';
    case 'which-number':
      return `“${cell}” could be a strength or an age. Enter ${cell.trim()}\u00a0% or ${cell.trim()} years.`;
    default:
      return problem satisfies never;
  }
}

function otherCurrency(
  { currency, price, how }: Extract<CellNote, { code: 'other-currency' }>,
  number: (value: number) => string,
): string {
  const written = `${number(price)} ${currency}`;
  switch (how) {
    case 'open':
      return `The price is ${written}. Say above what to do with it.`;
    case 'convert':
      return `The price was ${written}, converted at your rate.`;
    case 'take':
      return `The price was ${written}; its number is taken as it is.`;
    case 'leave':
      return `The price was ${written} and is left out.`;
    default:
      return how satisfies never;
  }
}

function noteSentence(note: CellNote, number: (value: number) => string): string {
  switch (note.code) {
    case 'us-proof-halved':
      return `${number(note.proof)} US proof is ${number(note.abv)}\u00a0%\u00a0vol.`;
    case 'ebc-as-srm':
      return `${number(note.ebc)}\u00a0EBC is ${number(note.srm)}\u00a0SRM.`;
    case 'ppm-as-peat':
      return `${number(note.ppm)}\u00a0ppm counts as peat ${note.peat} of 3.`;
    case 'litres-taken':
      return `Taken as litres: ${number(note.ml)}\u00a0mL.`;
    case 'other-currency':
      return otherCurrency(note, number);
    case 'a-total':
      return 'This line adds up the others and is no pour.';
    case 'same-as-line':
      return `The same pour is on line ${note.line}.`;
    default:
      return note satisfies never;
  }
}

/** What goes against the theme; `name` tells a pour by its id. */
function themeSentence(check: ThemeCheck, name: (id: string) => string): string {
  const listed = (ids: readonly string[]) => conjunction.format(ids.map(name));
  switch (check.code) {
    case 'another-producer':
      return `A vertical needs one producer: ${name(check.pour)} is from ${check.producer}, the others are from ${check.expected}.`;
    case 'same-step':
      return `A vertical steps through the years: ${listed(check.pours)} share the same one, ${check.step}.`;
    case 'does-not-share':
      return `${name(check.pour)} has a different ${facts[check.fact]} from the others: ${check.value}, not ${check.expected}.`;
    case 'not-apart':
      return `These do not differ in ${facts[check.fact]}: ${listed(check.pours)} (${check.value}).`;
    case 'fact-missing':
      return `The theme depends on the ${facts[check.fact]}; add it for ${name(check.pour)}.`;
    case 'one-side-only':
      return 'A comparison needs two sides. Add pours of the other side, or choose another theme.';
    case 'uneven-sides':
      return `The sides are uneven: ${check.sizes.join(' and ')}. The larger one gets more attention.`;
    case 'sides-mixed':
      return `One side should be alone in a flight: ${listed(check.pours)} are of different sides.`;
    case 'side-missing':
      return 'One of the sides is missing.';
    case 'too-few-pours':
      return 'A theme needs at least two pours.';
    default:
      return check satisfies never;
  }
}

export const planLineup = {
  axes,
  factNames: facts,
  clashSentence,
  labelClashes,
  themeSentence,
  reason: {
    opens: 'opens the evening',
    rises: (axis: AxisCode) => axes[axis].more,
    assumed: (axis: AxisCode) => `perhaps ${axes[axis].more}: a fact is missing`,
    again: (axis: AxisCode) => `${axes[axis].less} again after the break`,
    gives: (axis: AxisCode) => `${axes[axis].less}, but still best here overall`,
    givesByHand: (axis: AxisCode) => `${axes[axis].less} than the one before`,
    equal: 'nothing we know tells the two apart',
  },
  cost: {
    none: 'An order needs two pours.',
    best: 'This order has the least carry-over.',
    bestCost: (cost: string) => `Carry-over: ${cost}.`,
    more: (cost: string, best: string) => `Carry-over: ${cost}. The best order has ${best}.`,
    putInOrder: 'Put in order',
    inOrder: 'The pours are now in the order with the least carry-over.',
    already: 'The pours are already in the best order.',
    explain: 'What carry-over means',
    explained:
      'For each pair of pours we count how much smoke, strength, power, sweetness and so on the earlier one leaves behind for the later one. Neighbours count in full, a little over half with a break between them, and earlier pours a fifth. Then we find the order with the smallest sum. The weights are our own judgement, not measurements, and you may disagree.',
  },
  risks: {
    title: 'Pours that may mask the next',
    risk: (axis: AxisCode, earlier: string, later: string) =>
      `${axes[axis].noun} of ${earlier} before ${later}`,
    assumed: 'a fact is missing',
    remedies: {
      'longer-water': 'more time for water',
      'longer-water-or-move': 'more time for water, or move one of the two',
    },
  },
  missing: {
    title: 'Facts that would make this order surer',
    or: ' or ',
  },
  list: {
    title: 'Pours from a list',
    lead: 'Paste lines from a table, a shop’s list or a message, or choose a file. Nothing is saved until you say so.',
    paste: 'The list',
    pasteHint: 'One pour per line, such as: Orchard Wall, 46%. Columns may be in any order.',
    file: 'Choose a file',
    workbook: 'This is a spreadsheet file. Save it as CSV, or copy the cells and paste them here.',
    notText: 'This file has no text in it. Choose a CSV file, or paste the lines.',
    tooLarge: 'This file is larger than 2\u00a0MB. Copy the lines you need and paste them here.',
    cut: (most: number) => `We read at most ${several(most, 'line', 'lines')}.`,
    nothing: 'There is nothing to read yet.',
    headed: 'The first line has headings',
    columns: 'What the columns mean',
    column: (index: number) => `Column ${index}`,
    skip: 'Keep as a note',
    doubled: 'An earlier column already means this.',
    noName: 'No column is the name. Choose the one that is.',
    ...planList,
    line: (line: number) => `Line ${line}`,
    found: (pours: number, bad: number) =>
      bad === 0
        ? `${several(pours, 'pour', 'pours')} found, all clear.`
        : `${several(pours, 'pour', 'pours')} found; ${several(bad, 'line needs', 'lines need')} a look.`,
    take: (name: string) => `Take ${name}`,
    nameless: 'no name',
    room: (taken: number, room: number) =>
      taken > room
        ? `An evening can have 16 pours. You chose ${taken} and there is room for ${room}: skip ${taken - room}.`
        : `${taken} chosen; there is room for ${room}.`,
    asides: 'Anything we cannot place goes into your private note for the pour, so nothing is lost.',
    are: 'What these are',
    money: {
      asked: (from: string, to: string) => `Some prices are in ${from}, and the evening is in ${to}`,
      ways: { convert: 'Convert at my rate', take: 'Take the number', leave: 'Leave them out' },
      rate: (from: string, to: string) => `What 1 ${from} is in ${to}`,
      rateWrong: 'A rate is a number above 0.',
    },
    replace: 'Replace the pours already there',
    keep: (pours: number) => `Add ${several(pours, 'pour', 'pours')}`,
    kept: (pours: number) => `${several(pours, 'pour is', 'pours are')} in the plan.`,
    read: 'Read the list',
    again: 'Another list',
    problemSentence,
    noteSentence,
    asideLine: (heading: string, text: string) => (heading === '' ? text : `${heading}: ${text}`),
  },
};

export type PlanLineupWords = typeof planLineup;
