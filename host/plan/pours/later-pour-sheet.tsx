import { lazyComponent, lazyPart } from '../../../shared/page/lazy-part.ts';
import { FetchingSheet } from '../fields/fetching-sheet.tsx';

/** What a tap on a pour opens. It is fetched once the pours stand, and is there before the finger. */
export const pourSheetPart = lazyPart(() => import('./pour-sheet.tsx'));

export const PourSheet = lazyComponent(pourSheetPart, (part) => part.PourSheet, FetchingSheet);
