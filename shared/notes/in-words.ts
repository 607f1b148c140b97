import type { ClosingText, Feeling, ReviewAnswer, Strength } from '../words/closing.ts';
import { textOf, type WordSheet } from '../words/word-sheet.ts';
import { type NoteField, type NoteValue, type NoteValues, noteFields } from './entry.ts';
import { isBlank } from './value.ts';

/** What turns codes into words of one language. */
export interface Vocabulary {
  readonly sheet: WordSheet;
  readonly closing: ClosingText;
  /** The nine words of the liking scale, best first. */
  readonly liking: readonly string[];
}

export interface FieldInWords {
  readonly field: NoteField;
  readonly text: string;
}

/** A page in the order of the steps, without what is blank; an odd-one-out is no page of a pour. */
export function pageInWords(
  entries: readonly { readonly field: NoteField; readonly value: NoteValue }[],
  vocabulary: Vocabulary,
): FieldInWords[] {
  return noteFields.flatMap((field) => {
    const entry = entries.find((each) => each.field === field);
    const text = entry === undefined || isBlank(entry.value) ? '' : inWords(field, entry.value, vocabulary);
    return text === '' ? [] : [{ field, text }];
  });
}

/** One value as a person reads it. A code that this version does not know stands as it is. */
export function inWords(field: NoteField, value: NoteValue, { sheet, closing, liking }: Vocabulary): string {
  const of = <Field extends NoteField>(_: Field) => value as NoteValues[Field];
  switch (field) {
    case 'look':
    case 'nose':
    case 'palate':
    case 'finish':
    case 'thoughts':
      return of(field).trim();
    case 'colour':
      return ownText(sheet.text.colours, of('colour') ?? '');
    case 'nose-words':
    case 'palate-words':
    case 'finish-words':
      return Object.entries(of(field))
        .map(
          ([code, strength]) =>
            `${textOf(sheet, code)} (${closing.strengths[strength as Strength] ?? strength})`,
        )
        .join(', ');
    case 'structure':
      return Object.entries(of('structure'))
        .map(([mark, step]) => markInWords(sheet, mark, step))
        .join(', ');
    case 'liking':
      return liking[liking.length - (of('liking') ?? 0)] ?? '';
    case 'place':
      return String(of('place') ?? '');
    case 'review':
      return Object.entries(of('review'))
        .map(
          ([code, answer]) => `${textOf(sheet, code)}: ${closing.review[answer as ReviewAnswer] ?? answer}`,
        )
        .join(', ');
    case 'feelings':
      return of('feelings')
        .map((feeling) => closing.feelings[feeling as Feeling] ?? feeling)
        .join(', ');
    case 'odd-one-out':
    // A guess is told beside the truth, with words of its own.
    case 'guess':
      return '';
    default:
      return field satisfies never;
  }
}

function markInWords(sheet: WordSheet, mark: string, step: number): string {
  const text = Object.hasOwn(sheet.text.marks, mark) ? sheet.text.marks[mark] : undefined;
  return text === undefined ? `${mark}: ${step}` : (text.steps[step - 1] ?? `${text.name}: ${step}`);
}

/** Codes come from other devices: a name that every object has is no word. */
const ownText = (texts: Readonly<Record<string, string>>, code: string): string =>
  Object.hasOwn(texts, code) ? (texts[code] ?? code) : code;
