import { type PaperSize, paperSizes } from './paper-size.ts';

export interface LabelSize {
  readonly widthMm: number;
  readonly heightMm: number;
}

export interface LabelGrid {
  /** Side by side where the sheet stands, and where it lies. */
  readonly columns: number;
  readonly columnsLying: number;
  readonly rows: number;
  /** As many as a standing sheet takes. */
  readonly perSheet: number;
  /** As wide as asked for, or narrower by what the margins take where so many side by side almost fit. */
  readonly widthMm: number;
  /** From the margin to the first label, so that the grid stands in the middle of the standing sheet. */
  readonly aboveMm: number;
}

/** What browsers and home printers leave white at each edge (common practice, no source). */
const marginMm = 10;
/** Labels are bought in sheets whose edges are narrower than a printer's: so much of a row may be taken from its labels. */
const squeezeMm = 0.5;
/** A sheet is filled to a hair less, so that rounding pushes nothing to the next. */
const spareMm = 0.4;
const hair = 1e-6;

/** As many labels as a sheet takes within its margins, without a gap; undefined where not one does. Sizes in mm. */
export function labelGrid(paper: PaperSize, { widthMm, heightMm }: LabelSize): LabelGrid | undefined {
  const inRange = widthMm >= 20 && widthMm <= 150 && heightMm >= 12 && heightMm <= 150;
  if (!inRange) return undefined;
  const short = paperSizes[paper].widthMm - 2 * marginMm;
  const long = paperSizes[paper].heightMm - 2 * marginMm;
  const columns = Math.floor((short + squeezeMm + hair) / widthMm);
  const columnsLying = Math.floor((long + squeezeMm + hair) / widthMm);
  const rows = Math.floor((long - spareMm + hair) / heightMm);
  return {
    columns,
    columnsLying,
    rows,
    perSheet: columns * rows,
    widthMm: Math.min(widthMm, short / columns, long / columnsLying),
    aboveMm: (long - spareMm - rows * heightMm) / 2,
  };
}
