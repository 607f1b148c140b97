import Papa from 'papaparse';
import type { ListLine } from '../../../core/planning/pour-list/pour-list.ts';
import { delimiterOf } from './delimiter.ts';

/** More than any lineup, so that a wrong file does not stop the page. */
export const mostLines = 2000;

/**
 * The cells of one line. A line without the list's own delimiter may have one of its own: lists grow by being pasted
 * together. With a comma for all, a line that has a stronger mark is parted by that.
 */
function asWritten(cells: readonly string[], written: string, delimiter: string): readonly string[] {
  const own = delimiterOf(written);
  const comma = (mark: string): boolean => mark.startsWith(',');
  if (own === delimiter || (cells.length > 1 && !(comma(delimiter) && !comma(own)))) return cells;
  const [parted] = Papa.parse<string[]>(written.trimEnd(), { delimiter: own }).data;
  return parted !== undefined && parted.length > 1 ? parted : cells;
}

/** Lines of a list with any usual delimiter, each with the line of the text on which it begins. */
export function parseList(text: string): { readonly lines: readonly ListLine[]; readonly cut: boolean } {
  const bare = text.replace(/^\uFEFF/, '');
  const named = /^sep=(.)\r?\n/i.exec(bare);
  const skipped = named === null ? 0 : 1;
  const body = named === null ? bare : bare.slice(named[0].length);
  const delimiter = named?.[1] ?? delimiterOf(body);
  const lines: ListLine[] = [];
  let line = 1 + skipped;
  let read = 0;
  Papa.parse<string[]>(body, {
    delimiter,
    skipEmptyLines: false,
    step: ({ data, meta }) => {
      lines.push({ line, cells: asWritten(data, body.slice(read, meta.cursor), delimiter) });
      line += (body.slice(read, meta.cursor).match(/\r\n|\r|\n/g) ?? []).length;
      read = meta.cursor;
    },
    preview: mostLines + 1,
  });
  return { lines: lines.slice(0, mostLines), cut: lines.length > mostLines };
}
