import { ListSheet } from './list-sheet.tsx';
import { writeList } from './parse-list.ts';

/** Reading and writing tables, fetched together: not every plan comes from a list. */
export const tables = { ListSheet, writeList };
