import { isTextField, type NoteField, type NoteValue, type TextField } from '../../../shared/notes/entry.ts';
import type { BoardEntry, BoardNote, BoardPour, BoardView } from '../../../shared/wire/board.ts';
import type { Drink, PourId } from '../../../shared/wire/views.ts';

/** One page of the board: one glass and one sense, as much as can be read across a room. */
export interface BoardPage {
  readonly id: string;
  readonly pour: PourId;
  /** Whose word board the codes belong to; null for an odd-one-out. */
  readonly drink: Drink | null;
  readonly shows:
    | {
        readonly part: TextField;
        readonly counts: readonly WordCount[];
        readonly notes: readonly WrittenNote[];
      }
    /** An odd-one-out: how many picked the glass that was the odd one in front of them. */
    | { readonly part: 'odd-one-out'; readonly right: number; readonly of: number; readonly guesses: number };
}

/** A word or a colour by its code, and how many people have it. */
export interface WordCount {
  readonly code: string;
  readonly people: number;
}

export interface WrittenNote {
  readonly name: string;
  readonly remote: boolean;
  readonly sealed: string;
  readonly later: string;
}

/** What fits on one page at a size that is read from five metres. */
export const notesOnPage = 6;
export const wordsOnPage = 12;
/** Up to so many of both stand on one page together. */
const fewWords = 5;
const fewNotes = 3;

const parts: readonly TextField[] = ['look', 'nose', 'palate', 'finish', 'thoughts'];
const countedField: Readonly<Record<TextField, NoteField | null>> = {
  look: 'colour',
  nose: 'nose-words',
  palate: 'palate-words',
  finish: 'finish-words',
  thoughts: null,
};

/** All pages of all open glasses, in the order of the board; nothing of a glass of which nobody has shared anything. */
export const boardPages = ({ pours }: Pick<BoardView, 'pours'>): BoardPage[] =>
  pours.flatMap((pour) => [...oddOneOut(pour), ...parts.flatMap((part) => pagesOf(pour, part))]);

function pagesOf({ pour, drink, notes }: BoardPour, part: TextField): BoardPage[] {
  const written = notes.flatMap((note): WrittenNote[] => {
    const [sealed, later] = [textIn(note.sealed, part), textIn(note.addedLater, part)];
    return sealed === '' && later === '' ? [] : [{ name: note.name, remote: note.remote, sealed, later }];
  });
  const counts = countsOf(notes, countedField[part]);
  if (written.length === 0 && counts.length === 0) return [];
  const page = (name: string, some: readonly WordCount[], few: readonly WrittenNote[]): BoardPage => ({
    id: `${pour}/${part}/${name}`,
    pour,
    drink,
    shows: { part, counts: some, notes: few },
  });
  if (counts.length <= fewWords && written.length <= fewNotes) return [page('all', counts, written)];
  const turns = Array.from({ length: Math.ceil(written.length / notesOnPage) }, (_, turn) =>
    page(String(turn), [], written.slice(turn * notesOnPage, (turn + 1) * notesOnPage)),
  );
  return counts.length === 0 ? turns : [page('words', counts, []), ...turns];
}

function oddOneOut({ pour, notes }: BoardPour): BoardPage[] {
  const picks = notes.flatMap(({ oddGlass, sealed }) => {
    const value = sealed.find(({ field }) => field === 'odd-one-out')?.value;
    return oddGlass !== null && isPick(value) ? [{ ...value, right: value.glass === oddGlass }] : [];
  });
  if (picks.length === 0) return [];
  const right = picks.filter((pick) => pick.right).length;
  const guesses = picks.filter((pick) => pick.guessed).length;
  return [
    {
      id: `${pour}/odd`,
      pour,
      drink: null,
      shows: { part: 'odd-one-out', right, of: picks.length, guesses },
    },
  ];
}

/** Everybody counts once for a word, however strong it is to them; the most common first, then as they came. */
function countsOf(notes: readonly BoardNote[], field: NoteField | null): WordCount[] {
  if (field === null) return [];
  const people = new Map<string, number>();
  for (const { sealed, addedLater } of notes) {
    const codes = new Set([...codesIn(sealed, field), ...codesIn(addedLater, field)]);
    for (const code of codes) people.set(code, (people.get(code) ?? 0) + 1);
  }
  return [...people]
    .map(([code, count]) => ({ code, people: count }))
    .sort((one, other) => other.people - one.people)
    .slice(0, wordsOnPage);
}

function codesIn(entries: readonly BoardEntry[], field: NoteField): string[] {
  const value = entries.find((entry) => entry.field === field)?.value;
  if (typeof value === 'string') return isTextField(field) || value === '' ? [] : [value];
  return value !== null && typeof value === 'object' && !Array.isArray(value) ? Object.keys(value) : [];
}

function textIn(entries: readonly BoardEntry[], field: TextField): string {
  const value = entries.find((entry) => entry.field === field)?.value;
  return typeof value === 'string' ? value.trim() : '';
}

const isPick = (
  value: NoteValue | undefined,
): value is { readonly glass: number; readonly guessed: boolean } =>
  value !== null && typeof value === 'object' && 'guessed' in value && 'glass' in value;
