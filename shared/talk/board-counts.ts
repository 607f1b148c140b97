import type { BoardWords } from '../language/en/board.ts';
import type { NoteField, NoteValues, OddPick, WordField } from '../notes/entry.ts';
import { wordFields } from '../notes/entry.ts';
import type { BoardNote } from '../wire/board.ts';
import { wordKey } from '../words/word-sheet.ts';

/** What a page counts, and the words in which it tells of it. */
export interface TalkNotes {
  readonly notes: readonly BoardNote[];
  readonly words: BoardWords;
}

/** Something that several people named, with everybody who did. */
export interface Named {
  readonly code: string;
  readonly by: readonly BoardNote[];
}

/** The value of a field as it stood when the talk was opened; undefined where there is none. */
export function sealedOf<Field extends NoteField>(
  note: Pick<BoardNote, 'sealed'>,
  field: Field,
): NoteValues[Field] | undefined {
  return note.sealed.find((entry) => entry.field === field)?.value as NoteValues[Field] | undefined;
}

/**
 * The words that came up and by how many, the most shared first. Only what was put down before the talk counts: after
 * it people repeat each other [Q3]. Who has a word for several senses counts once.
 */
export function wordsThatCameUp(
  notes: readonly BoardNote[],
  fields: readonly WordField[] = wordFields,
): Named[] {
  return gathered(notes, (note) => fields.flatMap((field) => Object.keys(sealedOf(note, field) ?? {})));
}

/** The colours, in the order of the drink's swatches; what is none of them comes last. */
export function coloursSeen(
  notes: readonly BoardNote[],
  swatches: readonly { readonly word: string }[],
): Named[] {
  const place = (code: string): number => {
    const found = swatches.findIndex(({ word }) => word === code);
    return found === -1 ? swatches.length : found;
  };
  return gathered(notes, (note) => [sealedOf(note, 'colour') ?? []].flat()).sort(
    (one, other) => place(one.code) - place(other.code),
  );
}

export interface Placed {
  readonly note: BoardNote;
  readonly place: number;
}

/**
 * Who put this pour where in the ranking, the best places first. Where the talk about it was before the ranking, its place was
 * added later, and stands all the same: there was none before the talk that another could have changed.
 */
export const placesGiven = (notes: readonly BoardNote[]): Placed[] =>
  notes
    .flatMap((note) => {
      const place = sealedOf(note, 'place') ?? note.addedLater.find(({ field }) => field === 'place')?.value;
      return typeof place === 'number' ? [{ note, place }] : [];
    })
    .sort((one, other) => one.place - other.place);

export interface Picked {
  readonly note: BoardNote;
  readonly pick: OddPick;
  readonly right: boolean;
}

/** Who picked which glass of an odd-one-out, those who were right first. What was changed in the talk does not count. */
export const oddPicks = (notes: readonly BoardNote[]): Picked[] =>
  notes
    .flatMap((note) => {
      const pick = sealedOf(note, 'odd-one-out');
      return pick ? [{ note, pick, right: pick.glass === note.oddGlass }] : [];
    })
    .sort((one, other) => Number(other.right) - Number(one.right));

function gathered(notes: readonly BoardNote[], codesOf: (note: BoardNote) => readonly string[]): Named[] {
  const found = new Map<string, { readonly code: string; readonly by: readonly BoardNote[] }>();
  for (const note of notes) {
    const own = new Map(codesOf(note).map((code) => [wordKey(code), code]));
    for (const [key, code] of own) {
      const before = found.get(key);
      found.set(key, { code: before?.code ?? code, by: [...(before?.by ?? []), note] });
    }
  }
  return [...found.values()].sort((one, other) => other.by.length - one.by.length);
}
