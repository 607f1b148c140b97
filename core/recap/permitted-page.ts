import type { PourId, SeatId } from '../ids.ts';
import type { Consent } from '../panel/recap/permitted-answers.ts';

/** What is counted of a notebook page. Written sentences are not among it, so that none can come into a recap. */
export interface PageMarks {
  /** Code of a swatch. */
  readonly colour: string | null;
  /** Codes of words from the board or `own:…`, of all senses. */
  readonly words: readonly string[];
  /** Steps of structure marks, 1 to 5, by the mark's code. */
  readonly structure: Readonly<Record<string, number>>;
  /** 9-point liking scale. */
  readonly liking: number | null;
  /** Place among the pours that were ranked together, 1 the best. */
  readonly place: number | null;
  /** The glass picked as the odd one, from 1. */
  readonly oddGlass: number | null;
}

/**
 * What a guest permits of a page. There is no third consent: a private mark cannot be put into this shape, it is blank, so
 * it cannot be passed on by mistake.
 */
export interface PermittedPage {
  readonly seat: SeatId;
  /** A pour, or an odd-one-out by its id. */
  readonly pour: PourId;
  /** Of each mark by itself; of one that is blank it means nothing. */
  readonly consents: Readonly<Record<keyof PageMarks, Consent>>;
  /** As it stood when the talk was opened: what was found before anybody spoke. */
  readonly sealed: PageMarks;
  readonly current: PageMarks;
}
