export type CsvCell = string | number | null;

/**
 * What a spreadsheet would take for a formula: a sign that begins one, also behind white space or as a full-width
 * letter.
 */
const formula = /^[\s\p{Cf}]*[=+\-@＝＋－＠]|^[\t\r\n]/u;

/** A table as RFC 4180 has it, every text in quotes, with a byte order mark so that spreadsheets read it as UTF-8. */
export const writeCsv = (rows: readonly (readonly CsvCell[])[]): string =>
  `\uFEFF${rows.map((row) => row.map(cellOf).join(',')).join('\r\n')}\r\n`;

/** A text that would be a formula gets an apostrophe before it, which spreadsheets read as "this is text". */
function cellOf(cell: CsvCell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return Number.isFinite(cell) ? String(cell) : '';
  const harmless = formula.test(cell) ? `'${cell}` : cell;
  return `"${harmless.replaceAll('"', '""')}"`;
}
