import { writeCsv } from '../../../shared/csv/write-csv.ts';
import { ListSheet } from './list-sheet.tsx';

/** Reading and writing tables, fetched together: not every plan comes from a list. */
export const tables = { ListSheet, writeCsv };
