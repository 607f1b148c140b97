import type { PourId, SeatId } from '../../core/ids.ts';
import type { Drink } from '../../core/tasting.ts';
import type { EpochMs } from '../../core/units.ts';
import type { NoteField, NoteValue } from '../notes/entry.ts';

/** What guests chose to share of the pours whose discussion is open: the single door out of the notebooks [Q1, Q2]. */
export interface BoardView {
  /** Grows with every board sent for this tasting, over restarts too. */
  readonly version: number;
  /** Who sits at the table while a board is open, in the order in which they sat down; for the speaking order. */
  readonly table: readonly BoardSpeaker[];
  readonly pours: readonly BoardPour[];
}

export interface BoardSpeaker {
  readonly seat: SeatId;
  readonly name: string;
  readonly remote: boolean;
}

export interface BoardPour {
  readonly pour: PourId;
  /** Which word board its codes belong to; null for an odd-one-out. */
  readonly drink: Drink | null;
  /** When its discussion was first opened [Q3]. */
  readonly sealedAt: EpochMs;
  readonly notes: readonly BoardNote[];
}

export interface BoardNote extends BoardSpeaker {
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
