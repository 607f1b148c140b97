import type { PourId } from '../../core/ids.ts';
import type { Guess } from '../../core/panel/guess/guess.ts';
import type { EpochMs } from '../../core/units.ts';
import type { ReviewAnswer, Strength } from '../words/closing.ts';

/** The parts of a notebook page that take written words, in the order of the steps. */
export const textFields = ['look', 'nose', 'palate', 'finish', 'thoughts'] as const;
export type TextField = (typeof textFields)[number];

/** The parts that take words from the board, each with how strongly it is there. */
export const wordFields = ['nose-words', 'palate-words', 'finish-words'] as const;
export type WordField = (typeof wordFields)[number];

/** Codes of words, of the board or `own:…`. */
export type WordMarks = Readonly<Record<string, Strength>>;
/** Steps of structure marks, from 1 to 5. */
type StructureMarks = Readonly<Record<string, number>>;
type ReviewMarks = Readonly<Record<string, ReviewAnswer>>;

/** Which of the three glasses of an odd-one-out, from 1; a guess says that it is one, for there is no "no difference". */
export interface OddPick {
  readonly glass: number;
  readonly guessed: boolean;
}

/**
 * What a guest puts down of one glass, field by field: each is saved, merged and sealed on its own. Null is an answer
 * taken back. An odd-one-out is a page of its own, kept under the trial's id.
 */
export interface NoteValues extends Record<TextField, string>, Record<WordField, WordMarks> {
  /** Code of a colour swatch. */
  readonly colour: string | null;
  readonly structure: StructureMarks;
  /** The 9-point liking scale, 1 dislike extremely to 9 like extremely. */
  readonly liking: number | null;
  /** Place in the ranking by liking, 1 the best; equal places are ties. */
  readonly place: number | null;
  readonly 'odd-one-out': OddPick | null;
  readonly review: ReviewMarks;
  /** What a blind glass may be; closed when its name is told. */
  readonly guess: Guess;
  readonly feelings: readonly string[];
}
export type NoteField = keyof NoteValues;
export type NoteValue = NoteValues[NoteField];

/** What a field holds: written words, marks by their codes, a list of codes, or one answer. */
type FieldShape = 'text' | 'marks' | 'list' | 'answer';

/** In the order of the steps; a page reads in this order. */
export const fieldShapes: Readonly<Record<NoteField, FieldShape>> = {
  look: 'text',
  colour: 'answer',
  nose: 'text',
  'nose-words': 'marks',
  palate: 'text',
  'palate-words': 'marks',
  structure: 'marks',
  finish: 'text',
  'finish-words': 'marks',
  liking: 'answer',
  place: 'answer',
  'odd-one-out': 'answer',
  guess: 'marks',
  review: 'marks',
  feelings: 'list',
  thoughts: 'text',
};
export const noteFields = Object.keys(fieldShapes) as readonly NoteField[];

/** The longest text of one field, in UTF-16 units: at three bytes each it still fits one frame. */
export const longestText = 4000;
/** The most words or marks of one field. */
export const mostMarks = 60;

/** A field with its value; that the two belong together is checked where a message comes in. */
export interface NoteEntry {
  readonly pour: PourId;
  readonly field: NoteField;
  readonly value: NoteValue;
  /** Counts the saves of this entry, from 1. */
  readonly revision: number;
  readonly savedAt: EpochMs;
}

/** The written words of a field, trimmed; empty where there are none. */
export function textOf(
  entries: readonly { readonly field: NoteField; readonly value: NoteValue }[],
  field: TextField,
): string {
  const value = entries.find((entry) => entry.field === field)?.value;
  return typeof value === 'string' ? value.trim() : '';
}

export const isTextField = (field: NoteField): field is TextField =>
  textFields.some((each) => each === field);
