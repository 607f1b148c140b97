import { unguarded } from '../../formula-guard.ts';
import { type Drink, type Pour, pourSchema } from '../../tasting.ts';
import { meaningsOfLine } from './bare-lines.ts';
import type { CellNote, CellProblem, Fact } from './cell-reading.ts';
import { currencyIn, type Heading, headingOf } from './headings.ts';
import { drinkOfList } from './list-drink.ts';
import { fold, type ListVocabulary } from './list-words.ts';
import type { Meaning } from './meanings.ts';
import { isUnknown, type ListSetting, readCell } from './read-cell.ts';
import { isTotal } from './total-line.ts';
import { drinkSaid } from './worded-cells.ts';

/** One line of a parsed list; `line` counts from 1 in the text that was given. */
export interface ListLine {
  readonly line: number;
  readonly cells: readonly string[];
}

export interface ListChoices extends ListSetting {
  /** Whether the first line holds headings; found out where absent. */
  readonly headed?: boolean | undefined;
  /** By column, what the host says it means; `skip` for nothing. */
  readonly columns?: Readonly<Record<number, Meaning | 'skip'>> | undefined;
  /** What the host says that the pours are; found out where absent. */
  readonly pours?: Drink | undefined;
}

export interface ListColumn {
  readonly index: number;
  /** Empty in a list without headings. */
  readonly heading: string;
  /** Undefined: nothing that a pour has; its cells are kept aside as words. */
  readonly meaning: Meaning | undefined;
  /** Another column before it means the same, so this one is kept aside. */
  readonly doubled: boolean;
}

export interface ListRow {
  readonly line: number;
  readonly cells: readonly string[];
  /** What could be read, by meaning. */
  readonly facts: ReadonlyMap<Meaning, Fact>;
  /** `column` -1: the list has no column for it. */
  readonly problems: readonly {
    readonly column: number;
    readonly meaning: Meaning | undefined;
    readonly problem: CellProblem;
  }[];
  readonly notes: readonly { readonly column: number; readonly note: CellNote }[];
  /** Words that no fact takes, for the host's own note. */
  readonly asides: readonly { readonly heading: string; readonly text: string }[];
}

export interface PourList {
  readonly headed: boolean;
  readonly columns: readonly ListColumn[];
  readonly rows: readonly ListRow[];
  /** Of the pours that do not tell. */
  readonly drink: Drink;
  /** Currencies of prices that are not the plan's, as the list writes them. */
  readonly currencies: readonly string[];
}

type CellMeaning = Meaning | 'bare-number' | undefined;

const isBlank = ({ cells }: ListLine): boolean => cells.every((cell) => cell.trim() === '');

/** Headings say what stands below them; values say themselves. */
function seemsHeaded(cells: readonly string[], words: ListVocabulary): boolean {
  const told = cells.filter((cell) => cell.trim() !== '');
  const known = told.filter((cell) => headingOf(cell, words) !== undefined).length;
  const values = told.filter((cell) => /^[^\p{L}]*\d/u.test(cell)).length;
  return values === 0 && known > 0 && known * 2 >= told.length;
}

function columnsOf(
  first: readonly string[],
  headings: readonly (Heading | undefined)[],
  width: number,
  headed: boolean,
  chosen: ListChoices['columns'],
): ListColumn[] {
  const taken = new Set<Meaning>(
    Object.values(chosen ?? {}).flatMap((each) => (each === 'skip' ? [] : [each])),
  );
  return Array.from({ length: width }, (_, index) => {
    const heading = headed ? (first[index] ?? '').trim() : '';
    const own = chosen?.[index];
    if (own !== undefined)
      return { index, heading, meaning: own === 'skip' ? undefined : own, doubled: false };
    const meaning = headings[index]?.meaning;
    const doubled = meaning !== undefined && taken.has(meaning);
    if (meaning !== undefined) taken.add(meaning);
    return { index, heading, meaning: doubled ? undefined : meaning, doubled };
  });
}

/**
 * Reads a parsed list of pours, with or without headings, in any order of columns. Nothing is lost: a cell that cannot
 * be read is named with its reason and keeps its text, and words that no fact takes are kept aside.
 */
export function readPourList(lines: readonly ListLine[], choices: ListChoices): PourList {
  const { words } = choices;
  const filled = lines.filter((line) => !isBlank(line));
  const [top] = filled;
  const headed = choices.headed ?? seemsHeaded(top?.cells ?? [], words);
  const headings = headed ? (top?.cells ?? []).map((cell) => headingOf(cell, words)) : [];
  const body = headed ? filled.slice(1) : filled;
  const width = Math.max(0, ...filled.map(({ cells }) => cells.length));
  const columns = columnsOf(top?.cells ?? [], headings, width, headed, choices.columns);
  const names = new Map<string, number>();
  const readAs = (line: ListLine, drink: Drink): ListRow => {
    const guessed = headed ? [] : meaningsOfLine(line.cells, words);
    const cellMeanings = columns.map(({ index, meaning }): CellMeaning => {
      if (headed || choices.columns?.[index] !== undefined) return meaning;
      const guess = guessed[index];
      return guess !== undefined && Object.values(choices.columns ?? {}).includes(guess as Meaning)
        ? undefined
        : guess;
    });
    return readRow(line, cellMeanings, columns, headings, { ...choices, drink });
  };
  const asPlanned = body.map((line) => readAs(line, choices.pours ?? choices.drink));
  const pours = asPlanned.filter(({ cells }) => !isTotal(cells, words));
  const told = drinkOfList(
    columns.map(({ heading }) => heading),
    pours,
    words,
  );
  const drink = choices.pours ?? told ?? choices.drink;
  const rows = body.map((line) => {
    const row = readAs(line, drink);
    if (isTotal(line.cells, words)) return { ...row, problems: [], asides: [], notes: [aTotal] };
    return { ...row, notes: [...row.notes, ...sameAsBefore(row, names)] };
  });
  return {
    headed,
    columns: headed ? columns : withGuesses(columns, rows.length, body, choices),
    rows,
    drink,
    currencies: currenciesOf(rows),
  };
}

const aTotal = { column: -1, note: { code: 'a-total' } } as const;

/** Whether a row counts up others, and is no pour. */
export const rowIsTotal = ({ notes }: Pick<ListRow, 'notes'>): boolean =>
  notes.some(({ note }) => note.code === 'a-total');

const currenciesOf = (rows: readonly ListRow[]): string[] => [
  ...new Set(
    rows.flatMap(({ notes }) =>
      notes.flatMap(({ note }) => (note.code === 'other-currency' ? [note.currency] : [])),
    ),
  ),
];

/** In a list without headings a column is shown as what most of its cells are. */
function withGuesses(
  columns: readonly ListColumn[],
  rows: number,
  body: readonly ListLine[],
  choices: ListChoices,
): ListColumn[] {
  const guesses = body.map(({ cells }) => meaningsOfLine(cells, choices.words));
  return columns.map((column) => {
    if (choices.columns?.[column.index] !== undefined || rows === 0) return column;
    const counts = new Map<Meaning, number>();
    for (const line of guesses) {
      const guess = line[column.index];
      if (guess !== undefined && guess !== 'bare-number') counts.set(guess, (counts.get(guess) ?? 0) + 1);
    }
    const [most] = [...counts].sort((a, b) => b[1] - a[1]);
    return most === undefined ? column : { ...column, meaning: most[0] };
  });
}

function readRow(
  { line, cells }: ListLine,
  cellMeanings: readonly CellMeaning[],
  columns: readonly ListColumn[],
  headings: readonly (Heading | undefined)[],
  setting: ListSetting,
): ListRow {
  const facts = new Map<Meaning, Fact>();
  const problems: ListRow['problems'][number][] = [];
  const notes: ListRow['notes'][number][] = [];
  const asides: ListRow['asides'][number][] = [];
  const drink = drinkSaid(cells[cellMeanings.indexOf('drink')] ?? '', setting.words) ?? setting.drink;
  const readInto = (meaning: CellMeaning, column: number): void => {
    const cell = unguarded(cells[column] ?? '');
    const heading = columns[column]?.heading ?? '';
    const aside = () => {
      if (!isUnknown(cell, setting.words)) asides.push({ heading, text: cell.trim() });
    };
    if (meaning === undefined) {
      aside();
      return;
    }
    if (meaning === 'bare-number') {
      problems.push({ column, meaning: undefined, problem: { code: 'which-number' } });
      return;
    }
    const told = headings[column];
    const about = { text: heading, unit: told?.unit, currency: told?.currency ?? currencyIn(heading) };
    const read = readCell(meaning, cell, about, setting, drink);
    switch (read.is) {
      case 'empty':
        return;
      case 'aside':
        aside();
        return;
      case 'left-out':
        notes.push({ column, note: read.note });
        return;
      case 'problem':
        problems.push({ column, meaning, problem: read.problem });
        return;
      case 'fact':
        facts.set(read.as ?? (meaning === 'ebc' ? 'srm' : meaning), read.fact);
        if (read.note !== undefined) notes.push({ column, note: read.note });
        return;
      default:
        read satisfies never;
    }
  };
  cellMeanings.forEach(readInto);
  const named = facts.has('name') || problems.some(({ meaning }) => meaning === 'name');
  if (!named) {
    const column = cellMeanings.indexOf('name');
    problems.unshift({ column, meaning: 'name', problem: { code: 'name-missing' } });
  }
  return { line, cells, facts, problems, notes, asides };
}

function sameAsBefore({ line, facts }: ListRow, names: Map<string, number>): ListRow['notes'] {
  const told = ['name', 'producer', 'age', 'vintage', 'strength'] as const;
  const key = told.map((meaning) => fold(String(facts.get(meaning) ?? ''))).join('|');
  const earlier = names.get(key);
  if (earlier === undefined) names.set(key, line);
  return earlier === undefined || !facts.has('name')
    ? []
    : [{ column: -1, note: { code: 'same-as-line', line: earlier } }];
}

/**
 * The pour that a row makes, as the schema cleans it; undefined while it has no name. `note` is added below the note
 * that the list itself has. Cells with problems are left out: put their text into `note`.
 */
export function pourFromRow(row: ListRow, id: string, drink: Drink, note = ''): Pour | undefined {
  const of = (meaning: Meaning) => row.facts.get(meaning);
  const notes = [of('note'), note].filter((each) => each !== undefined && each !== '').join('\n');
  const facts: Record<string, unknown> = {
    id,
    drink: of('drink') ?? drink,
    name: of('name'),
    producer: of('producer'),
    region: of('region'),
    country: of('country'),
    style: of('style'),
    ageYears: of('age'),
    vintage: of('vintage'),
    abv: of('strength'),
    cask: of('cask'),
    peat: of('peat'),
    colour: of('colour'),
    sparkling: of('sparkling'),
    // One choice: a column of its own says the same as the kind.
    wineKind: of('wine-kind') ?? (of('fortified') === true ? 'liqueur' : undefined),
    body: of('body'),
    tannin: of('tannin'),
    sugarGPerL: of('sugar'),
    srm: of('srm'),
    ibu: of('ibu'),
    sour: of('sour'),
    smoked: of('smoked'),
    marks: grouped({ pungency: of('pungency'), dryness: of('dryness') }),
    allergens: of('allergens')?.toString().split(','),
    bottleMl: of('bottle'),
    pourMl: of('pour'),
    priceMinor: of('price'),
    link: of('link'),
    story: of('story'),
    hostNote: notes === '' ? undefined : notes.slice(0, 1000),
    photos: grouped({ front: of('front-photo'), back: of('back-photo') }),
  };
  const parsed = pourSchema.safeParse(grouped(facts));
  return parsed.success ? parsed.data : undefined;
}

function grouped(parts: Readonly<Record<string, unknown>>): Record<string, unknown> | undefined {
  const told = Object.entries(parts).filter(([, value]) => value !== undefined);
  return told.length === 0 ? undefined : Object.fromEntries(told);
}
