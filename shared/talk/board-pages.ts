import { type TextField, textOf } from '../notes/entry.ts';
import type { BoardNote, BoardPour, BoardView } from '../wire/board.ts';
import type { Drink, PourId } from '../wire/views.ts';
import { coloursSeen, type Named, oddPicks, placesGiven, sealedOf, wordsThatCameUp } from './board-counts.ts';

/** One page of the board: one glass and one sense, or the places of several glasses, as much as can be read across a room. */
export interface BoardPage {
  readonly id: string;
  /** Null for what is about several glasses. */
  readonly pour: PourId | null;
  /** Whose word board the codes belong to; null where there are none. */
  readonly drink: Drink | null;
  readonly shows: Shows;
}

export type Shows =
  | {
      readonly part: TextField;
      readonly counts: readonly WordCount[];
      readonly notes: readonly WrittenNote[];
    }
  | { readonly part: 'structure'; readonly marks: readonly MarkSpread[] }
  /** An odd-one-out: how many picked the glass that was the odd one in front of them. */
  | { readonly part: 'odd-one-out'; readonly right: number; readonly of: number; readonly guesses: number }
  | { readonly part: 'places'; readonly glasses: readonly PlacedGlass[] };

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

/** A structure mark by its code, and how many people put it at each of its five steps. */
export interface MarkSpread {
  readonly code: string;
  readonly people: readonly number[];
}

/** How many people gave this glass which place, the best place first. */
interface PlacedGlass {
  readonly pour: PourId;
  readonly counts: readonly { readonly place: number; readonly people: number }[];
}

/** What fits on one page at a size that is read from five metres. */
export const notesOnPage = 6;
export const wordsOnPage = 12;
export const glassesOnPage = 6;
/** Up to so many of both stand on one page together. */
const fewWords = 5;
const fewNotes = 3;
const steps = [1, 2, 3, 4, 5];

const parts: readonly TextField[] = ['look', 'nose', 'palate', 'finish', 'thoughts'];

/**
 * All pages of all open glasses, in the order of the board, and then how they were ranked; nothing of a glass of which
 * nobody has shared anything. What is counted is what was put down before the talk, for after it people repeat each
 * other; what somebody wrote later stands beside their words, marked [Q3].
 */
export const boardPages = ({ pours }: Pick<BoardView, 'pours'>): BoardPage[] => [
  ...pours.flatMap((pour) => [
    ...oddOneOut(pour),
    ...parts.flatMap((part) => [...pagesOf(pour, part), ...(part === 'palate' ? structure(pour) : [])]),
  ]),
  ...places(pours),
];

function pagesOf({ pour, drink, notes }: BoardPour, part: TextField): BoardPage[] {
  const written = notes.flatMap((note): WrittenNote[] => {
    const [sealed, later] = [textOf(note.sealed, part), textOf(note.addedLater, part)];
    return sealed === '' && later === '' ? [] : [{ name: note.name, remote: note.remote, sealed, later }];
  });
  const counts = countsOf(notes, part);
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

/** Everybody counts once for a word, however strong it is to them; the most common first, then as they came. */
function countsOf(notes: readonly BoardNote[], part: TextField): WordCount[] {
  return seenIn(notes, part)
    .map(({ code, by }) => ({ code, people: by.length }))
    .slice(0, wordsOnPage);
}

function seenIn(notes: readonly BoardNote[], part: TextField): Named[] {
  switch (part) {
    case 'look':
      return coloursSeen(notes, []);
    case 'nose':
    case 'palate':
    case 'finish':
      return wordsThatCameUp(notes, [`${part}-words`]);
    case 'thoughts':
      return [];
    default:
      return part satisfies never;
  }
}

function structure({ pour, drink, notes }: BoardPour): BoardPage[] {
  const all = notes.map((note) => sealedOf(note, 'structure') ?? {});
  const marks = [...new Set(all.flatMap((each) => Object.keys(each)))].map((code) => ({
    code,
    people: steps.map((step) => all.filter((each) => each[code] === step).length),
  }));
  if (marks.length === 0) return [];
  return [{ id: `${pour}/structure`, pour, drink, shows: { part: 'structure', marks } }];
}

function oddOneOut({ pour, notes }: BoardPour): BoardPage[] {
  const picks = oddPicks(notes);
  if (picks.length === 0) return [];
  const right = picks.filter((pick) => pick.right).length;
  const guesses = picks.filter(({ pick }) => pick.guessed).length;
  const shows = { part: 'odd-one-out', right, of: picks.length, guesses } as const;
  return [{ id: `${pour}/odd`, pour, drink: null, shows }];
}

/** Places only mean something among glasses that were ranked together: those whose talk was opened together. */
function places(pours: readonly BoardPour[]): BoardPage[] {
  const talks = [...new Set(pours.map(({ sealedAt }) => sealedAt))];
  return talks.flatMap((talk) => {
    const glasses = pours
      .filter(({ sealedAt }) => sealedAt === talk)
      .map(({ pour, notes }) => ({ pour, places: placesGiven(notes).map(({ place }) => place) }))
      .filter((glass) => glass.places.length > 0)
      .sort((one, other) => mean(one.places) - mean(other.places))
      .map((glass) => ({ pour: glass.pour, counts: counted(glass.places) }));
    return Array.from({ length: Math.ceil(glasses.length / glassesOnPage) }, (_, turn): BoardPage => {
      const some = glasses.slice(turn * glassesOnPage, (turn + 1) * glassesOnPage);
      const shows = { part: 'places', glasses: some } as const;
      return { id: `places/${talk}/${turn}`, pour: null, drink: null, shows };
    });
  });
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** @param sorted the best place first */
const counted = (sorted: readonly number[]) =>
  [...new Set(sorted)].map((place) => ({ place, people: sorted.filter((each) => each === place).length }));
