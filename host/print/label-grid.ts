import { type PaperSize, paperSizes } from './paper-size.ts';

export interface LabelSize {
  readonly widthMm: number;
  readonly heightMm: number;
}

export interface LabelGrid {
  readonly columns: number;
  readonly rows: number;
  readonly perSheet: number;
  /** Far left corner of the first label, so that the grid stands in the middle of the sheet. */
  readonly leftMm: number;
  readonly topMm: number;
}

/** What home printers leave white at each edge (common practice, no source). */
const marginMm = 8;
const hair = 1e-6;

/** As many labels as a sheet takes, side by side without a gap; undefined where not one does. Sizes in mm. */
export function labelGrid(paper: PaperSize, { widthMm, heightMm }: LabelSize): LabelGrid | undefined {
  const inRange = widthMm >= 20 && widthMm <= 150 && heightMm >= 12 && heightMm <= 150;
  if (!inRange) return undefined;
  const sheet = paperSizes[paper];
  const columns = Math.floor((sheet.widthMm - 2 * marginMm) / widthMm + hair);
  const rows = Math.floor((sheet.heightMm - 2 * marginMm) / heightMm + hair);
  if (columns < 1 || rows < 1) return undefined;
  return {
    columns,
    rows,
    perSheet: columns * rows,
    leftMm: (sheet.widthMm - columns * widthMm) / 2,
    topMm: (sheet.heightMm - rows * heightMm) / 2,
  };
}

/** Where each of `count` labels stands: its sheet from 0, and its far left corner on it in mm. */
export function labelPlaces(grid: LabelGrid, { widthMm, heightMm }: LabelSize, count: number) {
  return Array.from({ length: count }, (_, index) => {
    const on = index % grid.perSheet;
    return {
      sheet: Math.floor(index / grid.perSheet),
      xMm: grid.leftMm + (on % grid.columns) * widthMm,
      yMm: grid.topMm + Math.floor(on / grid.columns) * heightMm,
    };
  });
}
