import type { PourId, SeatId } from '../../core/ids.ts';
import type { NoteField, NoteValue } from '../notes/entry.ts';

/** What guests chose to share of the pours whose discussion is open: the single door out of the notebooks [Q1, Q2]. */
export interface BoardView {
  /** Grows with every board sent for this tasting, over restarts too. */
  readonly version: number;
  readonly pours: readonly BoardPour[];
}

export interface BoardPour {
  readonly pour: PourId;
  readonly notes: readonly BoardNote[];
}

export interface BoardNote {
  readonly seat: SeatId;
  readonly name: string;
  readonly remote: boolean;
  /** On the page of an odd-one-out: which glass was the odd one for this seat, from 1. */
  readonly oddGlass: number | null;
  /** As they stood when the discussion was opened [Q3]. */
  readonly sealed: readonly BoardEntry[];
  readonly addedLater: readonly BoardEntry[];
}

export interface BoardEntry {
  readonly field: NoteField;
  readonly value: NoteValue;
}
