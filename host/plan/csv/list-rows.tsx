import type { Meaning } from '../../../core/planning/pour-list/meanings.ts';
import type { ListLine, ListRow, PourList } from '../../../core/planning/pour-list/pour-list.ts';
import { TextField } from '../../../shared/ui/text-field.tsx';
import { money, number } from '../../numbers.ts';
import { words } from '../words.ts';
import { columnName, rowIsNamed } from './row-words.ts';

interface ListRowsProps {
  readonly list: PourList;
  readonly currency: string;
  /** Lines that the host leaves out. */
  readonly left: ReadonlySet<number>;
  readonly onLeave: (line: number, leave: boolean) => void;
  readonly onCorrect: (line: number, column: number, cell: string) => void;
  /** As they came in, so that a corrected cell keeps its field until the end. */
  readonly original: readonly ListLine[];
}

/** The rows as they would be kept, each bad cell with its reason and a field to set it right. */
export function ListRows(props: ListRowsProps) {
  return (
    <ol class="list-rows">
      {props.list.rows.map((row) => (
        <Row key={row.line} row={row} {...props} />
      ))}
    </ol>
  );
}

function Row({
  row,
  list,
  currency,
  left,
  onLeave,
  onCorrect,
  original,
}: ListRowsProps & { readonly row: ListRow }) {
  const said = words.list;
  const named = rowIsNamed(row);
  const name = named ? String(row.facts.get('name')) : said.nameless;
  const before = original.find(({ line }) => line === row.line)?.cells ?? [];
  const changed = row.cells.flatMap((cell, column) => (cell === (before[column] ?? '') ? [] : [column]));
  const bad = row.problems.map(({ column }) => (column < 0 ? nameColumn(list, row) : column));
  const fields = [...new Set([...bad, ...changed])].sort((a, b) => a - b);
  return (
    <li class={row.problems.length > 0 ? 'list-row list-row-bad' : 'list-row'}>
      <label class="list-take">
        <input
          type="checkbox"
          checked={named && !left.has(row.line)}
          disabled={!named}
          aria-label={said.take(name)}
          onChange={(event) => onLeave(row.line, !event.currentTarget.checked)}
        />
        <span class="choice-words">
          <span class={named ? 'pour-name' : 'pour-name soft'}>{name}</span>
          <span class="choice-hint">
            {said.line(row.line)}
            {factsOf(row, currency).map((fact) => ` · ${fact}`)}
          </span>
        </span>
      </label>
      {fields.map((column) => {
        const problem = row.problems.find(
          (each) => (each.column < 0 ? nameColumn(list, row) : each.column) === column,
        );
        const cell = row.cells[column] ?? '';
        const heading =
          problem?.problem.code === 'name-missing'
            ? said.meanings.name
            : columnName(list.columns[column], column);
        return (
          <TextField
            key={column}
            label={heading}
            value={cell}
            autocomplete="off"
            error={problem && said.problemSentence(problem.problem, cell.trim(), number)}
            onInput={(typed) => onCorrect(row.line, column, typed)}
          />
        );
      })}
      {row.notes.map(({ note }) => (
        <p key={note.code} class="small soft">
          {said.noteSentence(note, number)}
        </p>
      ))}
    </li>
  );
}

/** Where a missing name is written: the column of names, else a new one behind all others. */
function nameColumn(list: PourList, row: ListRow): number {
  if (!list.headed) return row.cells.length;
  return list.columns.find(({ meaning }) => meaning === 'name')?.index ?? list.columns.length;
}

function factsOf({ facts }: ListRow, currency: string): string[] {
  const of = (meaning: Meaning) => facts.get(meaning);
  const [producer, age, vintage, abv] = [of('producer'), of('age'), of('vintage'), of('strength')];
  const price = of('price');
  return [
    ...(producer === undefined ? [] : [String(producer)]),
    ...(typeof age === 'number' ? [words.pours.ageYears(number(age, 1))] : []),
    ...(vintage === undefined ? [] : [String(vintage)]),
    ...(typeof abv === 'number' ? [words.pours.strength(number(abv, 1))] : []),
    ...(typeof price === 'number' ? [money(price, currency)] : []),
  ];
}
