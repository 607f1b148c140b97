import type { AxisCode, FactName } from '../../../core/planning/order/axes/axis.ts';
import type { FactClash } from '../../../core/planning/order/fact-clashes.ts';
import type { LabelClash } from '../../../core/planning/order/label-clashes.ts';
import type { CellNote, CellProblem } from '../../../core/planning/pour-list/cell-reading.ts';
import type { ThemeCheck } from '../../../core/planning/theme/theme.ts';
import type { Drink } from '../../../core/tasting.ts';
import { planList } from './plan-list.ts';

const several = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** What there is more or less of along each axis. */
const axes: Record<AxisCode, { readonly more: string; readonly less: string; readonly noun: string }> = {
  drink: { more: 'a stronger kind of drink', less: 'a lighter kind of drink', noun: 'kind of drink' },
  smoke: { more: 'more smoke', less: 'less smoke', noun: 'smoke' },
  strength: { more: 'stronger', less: 'lighter in strength', noun: 'strength' },
  pungency: { more: 'more pungent', less: 'more delicate', noun: 'pungency' },
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
  'vintage-in-the-future': 'This vintage is still to come. Check the year.',
  'older-than-its-vintage': 'It is older than its vintage allows. Check both.',
  'pour-larger-than-bottle': 'The pour is larger than the bottle. Check both.',
};

const drinkNames: Record<Drink, string> = { spirit: 'spirit', wine: 'wine', beer: 'beer' };

/** What to look at again in one pour's facts. */
function clashSentence(clash: FactClash, drink: Drink, number: (value: number) => string): string {
  switch (clash.code) {
    case 'not-of-this-drink':
      return `A ${drinkNames[drink]} seldom has this fact: ${facts[clash.fact]}. Check it, or the drink.`;
    case 'unusual-strength':
      return `${number(clash.abv)} % vol is unusual for a ${drinkNames[drink]}; mostly it is ${number(clash.from)} to ${number(clash.to)}. Check the label.`;
    case 'strong-as-fortified':
      return `${number(clash.abv)} % vol is as strong as a fortified wine. Mark it as one, or check the label.`;
    case 'sugar-against-mark':
      return `${number(clash.sugarGPerL)} g/L of sugar and your mark of ${number(clash.dryness)} for dryness do not go together. Check both.`;
    default:
      return clash satisfies never;
  }
}

const choices: Record<Extract<CellProblem, { code: 'not-one-of' }>['meaning'], string> = {
  drink: 'Write spirit, wine or beer.',
  colour: 'Write white, rosé, orange or red.',
  peat: 'Write 0 for none to 3 for heavy.',
  body: 'Write 1 for light to 5 for full.',
  'wine-kind': 'Write film yeast, naturally sweet, ice, liqueur or mistelle, or empty the cell.',
};

/** Why a cell cannot be kept, and what to write instead. `cell` is its text, `number` writes as the page does. */
function problemSentence(problem: CellProblem, cell: string, number: (value: number) => string): string {
  switch (problem.code) {
    case 'name-missing':
      return 'There is no name. Give one, or leave this line out.';
    case 'too-long':
      return `This has ${problem.letters} letters; shorten it to ${problem.most}.`;
    case 'not-a-number':
      return `“${cell}” is not a number. Write one, or empty the cell.`;
    case 'unit-unknown':
      return `“${problem.rest}” after the number is not understood. Write the number with its usual unit.`;
    case 'unit-missing':
      return `“${cell}” of what? Write ${cell.trim()} cl or ${cell.trim()} ml.`;
    case 'out-of-range':
      return `${number(problem.value)} is not between ${number(problem.least)} and ${number(problem.most)}. Check it.`;
    case 'above-any-drink':
      return problem.asProof === undefined
        ? `${number(problem.value)} is more than any drink holds. Check the label.`
        : `${number(problem.value)} is more than any drink holds; as US proof it would be ${number(problem.asProof)} % vol.`;
    case 'not-whole':
      return `${number(problem.value)} is not a whole number. Write one without decimals.`;
    case 'not-yes-or-no':
      return `“${cell}” is neither yes nor no. Write one of the two.`;
    case 'not-one-of':
      return `“${cell}” is not known here. ${choices[problem.meaning]}`;
    case 'no-year':
      return `“${cell}” does not tell one year. Write it with four figures.`;
    case 'not-a-link':
      return 'A link starts with http:// or https://.';
    case 'not-an-id':
      return 'This cannot be an id. Empty the cell, and a new one is made.';
    case 'which-number':
      return `“${cell}” could be a strength or an age. Write ${cell.trim()} % or ${cell.trim()} years.`;
    default:
      return problem satisfies never;
  }
}

function noteSentence(note: CellNote, number: (value: number) => string): string {
  switch (note.code) {
    case 'us-proof-halved':
      return `${number(note.proof)} US proof are ${number(note.abv)} % vol.`;
    case 'ebc-as-srm':
      return `${number(note.ebc)} EBC are ${number(note.srm)} SRM.`;
    case 'ppm-as-peat':
      return `${number(note.ppm)} ppm are taken as peat ${note.peat} of 3.`;
    case 'litres-taken':
      return `Taken as litres: ${number(note.ml)} mL.`;
    case 'other-currency':
      return `The price is in ${note.currency}, which is not the evening’s currency; its number is taken as it is.`;
    case 'same-as-line':
      return `The same pour stands in line ${note.line}.`;
    default:
      return note satisfies never;
  }
}

/** What goes against the theme; `name` tells a pour by its id. */
function themeSentence(check: ThemeCheck, name: (id: string) => string): string {
  const listed = (ids: readonly string[]) => ids.map(name).join(', ');
  switch (check.code) {
    case 'another-producer':
      return `A vertical needs one producer: ${name(check.pour)} is from ${check.producer}, the others are from ${check.expected}.`;
    case 'same-step':
      return `A vertical steps through the years: ${listed(check.pours)} stand on the same step, ${check.step}.`;
    case 'does-not-share':
      return `${name(check.pour)} has another ${facts[check.fact]} than the others: ${check.value} and not ${check.expected}.`;
    case 'not-apart':
      return `These do not differ in ${facts[check.fact]}: ${listed(check.pours)} (${check.value}).`;
    case 'fact-missing':
      return `The theme turns on the ${facts[check.fact]}; ${name(check.pour)} does not tell it yet.`;
    case 'one-side-only':
      return 'A comparison needs two sides. Add pours of the other side, or choose another theme.';
    case 'uneven-sides':
      return `The sides are of different sizes: ${check.sizes.join(' and ')}. The larger shows more of itself.`;
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
    again: (axis: AxisCode) => `after the break again ${axes[axis].less}`,
    gives: (axis: AxisCode) => `${axes[axis].less}, and still best here on the whole`,
    givesByHand: (axis: AxisCode) => `${axes[axis].less} than the one before`,
    equal: 'nothing known tells the two apart',
  },
  cost: {
    none: 'An order needs two pours.',
    best: 'This is the order that carries over least.',
    bestCost: (cost: string) => `What one glass lays over the next adds up to ${cost}.`,
    more: (cost: string, best: string) =>
      `What one glass lays over the next adds up to ${cost}; in the best order it would be ${best}.`,
    putInOrder: 'Put in order',
    inOrder: 'The pours stand in the order that carries over least.',
    already: 'The pours already stand in the best order.',
    explain: 'What these points are',
    explained:
      'For each pair of pours it is counted how much smoke, strength, pungency, sweetness and so on the earlier one leaves for the later one. Neighbours count in full, with a break between them a little over half, and earlier pours a fifth. Of all orders the one with the smallest sum is found exactly. Nothing measured stands behind the weights: they are stated, and yours to argue with.',
  },
  risks: {
    title: 'What remains for the palate to bear',
    risk: (axis: AxisCode, earlier: string, later: string) =>
      `${axes[axis].noun} of ${earlier} before ${later}`,
    assumed: 'by a fact that is missing',
    remedies: {
      'longer-water': 'longer water',
      'longer-water-or-move': 'longer water, or move one of the two',
    },
  },
  missing: {
    title: 'Facts that would make the order surer',
    line: (name: string, facts: string) => `${name}: ${facts}`,
    or: ' or ',
  },
  ties: (names: string) => `Could as well stand here: ${names}`,
  list: {
    title: 'Pours from a list',
    lead: 'Paste lines from a table, a shop’s list or a message, or choose a file. Nothing is kept before you say so.',
    paste: 'The list',
    pasteHint: 'One pour to a line, such as: Orchard Wall, 46%. Headings may be in any order.',
    file: 'Choose a file',
    workbook:
      'This is a spreadsheet’s own file. Save it as CSV there, or copy the cells and paste them here.',
    notText: 'This file holds no text. Choose a CSV file, or paste the lines.',
    tooLarge: 'This file is larger than 2 MB. Copy the lines that you need and paste them here.',
    cut: (most: number) => `Only the first ${most} lines are read.`,
    nothing: 'There is nothing to read yet.',
    headed: 'The first line holds headings',
    columns: 'What the columns mean',
    column: (index: number) => `Column ${index}`,
    skip: 'Keep as a note',
    doubled: 'Another column before it means the same.',
    noName: 'No column is taken as the name. Choose the one that holds it.',
    ...planList,
    line: (line: number) => `Line ${line}`,
    found: (pours: number, bad: number) =>
      bad === 0
        ? `${several(pours, 'pour', 'pours')} found, all of them clear.`
        : `${several(pours, 'pour', 'pours')} found; ${several(bad, 'line needs', 'lines need')} a look.`,
    take: (name: string) => `Take ${name}`,
    nameless: 'no name',
    room: (taken: number, room: number) =>
      taken > room
        ? `An evening holds 16 pours. ${taken} are chosen and there is room for ${room}: leave ${taken - room} out.`
        : `${taken} chosen; there is room for ${room}.`,
    asides:
      'What fits no fact and what cannot be read goes into your own note of the pour, so nothing is lost.',
    replace: 'Instead of the pours that are there',
    keep: (pours: number) => `Keep ${several(pours, 'pour', 'pours')}`,
    kept: (pours: number) => `${several(pours, 'pour is', 'pours are')} in the plan.`,
    read: 'Read the list',
    again: 'Another list',
    problemSentence,
    noteSentence,
    asideLine: (heading: string, text: string) => (heading === '' ? text : `${heading}: ${text}`),
  },
};

export type PlanLineupWords = typeof planLineup;
