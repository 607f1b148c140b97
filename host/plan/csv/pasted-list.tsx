import { lazyComponent } from '../../../shared/page/lazy-part.ts';
import { FetchingSheet } from '../fields/fetching-sheet.tsx';
import { tablesPart } from './tables-part.ts';

/** Pours from a list, once what reads one has been fetched. */
export const PastedList = lazyComponent(tablesPart, ({ tables }) => tables.ListSheet, FetchingSheet);
