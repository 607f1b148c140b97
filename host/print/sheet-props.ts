import type { EveningContext } from '../evening/evening-context.ts';
import type { PaperSize } from './paper-size.ts';

/** What every kind of paper is made from. */
export interface SheetProps {
  readonly evening: EveningContext;
  readonly paper: PaperSize;
  /** The evening's, or the usual one. */
  readonly title: string;
}
