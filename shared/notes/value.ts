import { fieldShapes, type NoteField, type NoteValue, type NoteValues } from './entry.ts';

const blanks = { text: '', marks: {}, list: [], answer: null } as const;

/** The value of a field that nobody has written in. */
export const blankOf = <Field extends NoteField>(field: Field): NoteValues[Field] =>
  blanks[fieldShapes[field]] as NoteValue as NoteValues[Field];

export function isBlank(value: NoteValue): boolean {
  if (value === null) return true;
  if (typeof value === 'string') return value.trim() === '';
  return typeof value === 'object' && Object.keys(value).length === 0;
}

/** Whether two values say the same, in whatever order their marks stand. */
export function sameValue(one: NoteValue, other: NoteValue): boolean {
  return JSON.stringify(inOrder(one)) === JSON.stringify(inOrder(other));
}

const inOrder = (value: NoteValue): unknown =>
  value !== null && typeof value === 'object' && !Array.isArray(value)
    ? Object.entries(value).toSorted(([a], [b]) => (a < b ? -1 : 1))
    : value;

/**
 * What was written after the seal [Q3]: of a text what was added where the old words still stand, otherwise all of it;
 * of words and marks those that are new or changed; of a single answer the new one. Blank where nothing was.
 */
export function addedSince(field: NoteField, sealed: NoteValue, now: NoteValue): NoteValue {
  if (sameValue(sealed, now)) return blankOf(field);
  if (typeof sealed === 'string' && typeof now === 'string') {
    if (sealed.includes(now)) return blankOf(field);
    return now.startsWith(sealed) ? now.slice(sealed.length).trim() : now;
  }
  if (Array.isArray(sealed) && Array.isArray(now)) return now.filter((each) => !sealed.includes(each));
  if (isMarks(sealed) && isMarks(now)) {
    return Object.fromEntries(
      Object.entries(now).filter(([code, mark]) => sealed[code] !== mark),
    ) as NoteValue;
  }
  return now;
}

/** Marks by code; an odd pick is one answer, not marks. */
const isMarks = (value: NoteValue): value is Readonly<Record<string, never>> =>
  value !== null && typeof value === 'object' && !Array.isArray(value) && !('guessed' in value);
