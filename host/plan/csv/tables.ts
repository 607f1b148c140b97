import { type CsvCell, csvFormOf, writeCsv } from '../../../shared/csv/write-csv.ts';
import { locale } from '../../locale.ts';
import { ListSheet } from './list-sheet.tsx';

/** A table as spreadsheets of this page's region open it. */
const writeTable = (rows: readonly (readonly CsvCell[])[]): string => writeCsv(rows, csvFormOf(locale));

/** Reading and writing tables, fetched together: not every plan comes from a list. */
export const tables = { ListSheet, writeTable };
