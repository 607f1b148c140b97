import { type CsvCell, csvFormOf, writeCsv } from '../../../shared/csv/write-csv.ts';
import { locale } from '../../locale.ts';
import { ListSheet } from './list-sheet.tsx';

/** How spreadsheets of this page's region read a table. */
const form = csvFormOf(locale);

const writeTable = (rows: readonly (readonly CsvCell[])[]): string => writeCsv(rows, form);

/** Reading and writing tables, fetched together: not every plan comes from a list. */
export const tables = { ListSheet, writeTable, decimal: form.decimal };
