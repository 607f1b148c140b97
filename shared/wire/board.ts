import type { PourId, SeatId } from '../../core/ids.ts';
import type { Drink } from '../../core/tasting.ts';
import type { EpochMs } from '../../core/units.ts';
import type { NoteField, NoteValue } from '../notes/entry.ts';
import type { Parts, PartsChange } from './parts.ts';

/** What guests chose to share of the pours whose discussion is open: the single door out of the notebooks [Q1, Q2]. */
export interface BoardView {
  /** Grows with every board sent for this tasting, over restarts too. */
  readonly version: number;
  /** Who sits at the table while a board is open, in the order in which they sat down; for the speaking order. */
  readonly table: readonly BoardSpeaker[];
  readonly pours: readonly BoardPour[];
}

/** One place at the table, one pour, or one guest's page of a pour. */
export type BoardPart =
  | { readonly speaker: BoardSpeaker }
  | { readonly pour: Omit<BoardPour, 'notes'> }
  | { readonly of: PourId; readonly note: BoardNote };

/** A board is sent once, in slices when it is large, and from then on what changed. */
export interface BoardChange extends PartsChange<BoardPart> {
  /** Of the board that it leads to; slices on the way carry the same. */
  readonly version: number;
  /** Begins anew: whatever was shown before is gone. */
  readonly anew: boolean;
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

export interface BoardNote extends Omit<BoardSpeaker, 'seat'> {
  /** Null on a page without a name [Q9]; then the name is empty, and nobody is said to be at home. */
  readonly seat: SeatId | null;
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

/** @param lotOf what the key of a page without a name ends with */
export function partsOfBoard(
  { table, pours }: Omit<BoardView, 'version'>,
  lotOf: (note: BoardNote) => string | undefined = () => undefined,
): Map<string, BoardPart> {
  const parts = new Map<string, BoardPart>();
  for (const speaker of table) parts.set(`s ${speaker.seat}`, { speaker });
  for (const { notes, ...pour } of pours) {
    parts.set(`p ${pour.pour}`, { pour });
    for (const note of notes) {
      parts.set(`n ${pour.pour} ${note.seat ?? lotOf(note)}`, { of: pour.pour, note });
    }
  }
  return parts;
}

export function boardOfParts(parts: Parts<BoardPart>, version: number): BoardView {
  const table: BoardSpeaker[] = [];
  const pours = new Map<PourId, BoardPour & { readonly notes: BoardNote[] }>();
  for (const part of parts.values()) {
    if ('speaker' in part) table.push(part.speaker);
    // The pages of a pour stand behind it.
    else if ('note' in part) pours.get(part.of)?.notes.push(part.note);
    else pours.set(part.pour.pour, { ...part.pour, notes: [] });
  }
  return { version, table, pours: [...pours.values()] };
}
