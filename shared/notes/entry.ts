import type { PourId } from '../../core/ids.ts';
import type { EpochMs } from '../../core/units.ts';

/** The parts of a notebook page that take words, in the order of the steps. */
export const textFields = ['look', 'nose', 'palate', 'finish', 'thoughts'] as const;
export type TextField = (typeof textFields)[number];

/** What a guest puts down of one glass, field by field; each field is saved, merged and sealed on its own. */
export type NoteField = TextField;
export type NoteValue = string;

/** The longest text of one field, in UTF-16 units: at three bytes each it still fits one frame. */
export const longestText = 4000;

export interface NoteEntry {
  readonly pour: PourId;
  readonly field: NoteField;
  readonly value: NoteValue;
  /** Counts the saves of this entry, from 1. */
  readonly revision: number;
  readonly savedAt: EpochMs;
}
