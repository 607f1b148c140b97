import { unguarded } from '../../core/formula-guard.ts';
import type { CsvCell } from './write-csv.ts';

/** Cells as `writeCsv` writes them: texts in quotes, numbers bare, nothing where there is none. */
export function cellsOf(csv: string): CsvCell[][] {
  const rows: CsvCell[][] = [[]];
  for (const [, text, bare = '', end] of csv
    .replace(/^\uFEFF/, '')
    .matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/g)) {
    const quoted = text === undefined ? undefined : unguarded(text.replaceAll('""', '"'));
    rows.at(-1)?.push(quoted ?? (bare === '' ? null : Number(bare)));
    if (end === '\r\n') rows.push([]);
  }
  return rows.filter((row) => row.length > 0);
}
