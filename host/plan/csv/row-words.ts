import type { ListColumn, ListRow } from '../../../core/planning/pour-list/pour-list.ts';
import { words } from '../words.ts';

export const rowIsNamed = (row: ListRow): boolean => row.facts.has('name');

/** What a column is called: by its heading, its meaning, or its number. */
export function columnName(column: ListColumn | undefined, index: number): string {
  if (column === undefined) return words.list.column(index + 1);
  if (column.heading !== '') return column.heading;
  return column.meaning === undefined ? words.list.column(index + 1) : words.list.meanings[column.meaning];
}

/** Everything of a row that no fact takes: asides, and cells that could not be read, each with its heading. */
export function leftOverNote(row: ListRow, columns: readonly ListColumn[]): string {
  const asides = row.asides.map(({ heading, text }) => words.list.asideLine(heading, text));
  const unread = row.problems.flatMap(({ column }) => {
    const text = (row.cells[column] ?? '').trim();
    return text === '' ? [] : [words.list.asideLine(columnName(columns[column], column), text)];
  });
  return [...asides, ...unread].join('\n');
}
