import type { PourId } from '../../core/ids.ts';
import type { BoardNote, BoardPour, BoardView } from '../../shared/wire/board.ts';
import { type Ledger, tokensIn, type WrittenNote } from './ledger.ts';

export interface BrokenRule {
  readonly rule: string;
  readonly what: string;
}

/** Where a note stands on a board: on whose page, and in which part of it. */
interface Place {
  readonly page: BoardNote;
  readonly sealed: boolean;
}

/**
 * Whether a board says what the ledger says: every acknowledged note of a shared page and none of any other [Q2], and
 * what was written after the opening marked as added later [Q3]. Answers with the first thing that is wrong.
 */
export function boardTrouble(
  board: BoardView | null,
  ledger: Ledger,
  open: readonly PourId[],
): BrokenRule | undefined {
  const shown = board?.pours ?? [];
  const stranger = shown.find(({ pour }) => !open.includes(pour));
  if (stranger !== undefined)
    return { rule: 'Q1', what: `The board shows ${stranger.pour}, whose discussion is not open.` };
  const places = placesOn(shown);
  for (const note of ledger.notes) {
    if (!open.includes(note.pour) || !note.acknowledged) continue;
    const sharing = ledger.sharing(note.author, note.pour);
    const trouble = sharing === 'unknown' ? undefined : noteTrouble(note, places.get(note.token), sharing);
    if (trouble !== undefined) return trouble;
  }
  return undefined;
}

function placesOn(pours: readonly BoardPour[]): ReadonlyMap<string, Place> {
  const places = new Map<string, Place>();
  for (const page of pours.flatMap(({ notes }) => notes)) {
    for (const token of tokensIn(textOf(page.addedLater))) places.set(token, { page, sealed: false });
    for (const token of tokensIn(textOf(page.sealed))) places.set(token, { page, sealed: true });
  }
  return places;
}

function noteTrouble(
  note: WrittenNote,
  place: Place | undefined,
  sharing: 'shared' | 'unnamed' | 'private',
): BrokenRule | undefined {
  const { author } = note;
  if (sharing === 'private')
    return place && { rule: 'Q2', what: `The board shows a note that ${author} does not share.` };
  if (sharing === 'unnamed') return unnamedTrouble(note, place);
  if (place === undefined) return { rule: 'Q2', what: `The board lacks a note that ${author} shares.` };
  if (place.page.name !== author)
    return { rule: 'Q2', what: `The board shows a note of ${author} under another name.` };
  if (note.late && place.sealed)
    return { rule: 'Q3', what: `A later note of ${author} stands among the sealed ones.` };
  if (note.sealed && !place.sealed)
    return { rule: 'Q3', what: `A sealed note of ${author} is marked as added later.` };
  return undefined;
}

/** [Q9] Without a name stands what stood there when the talk opened, all of it and no more. */
function unnamedTrouble(
  { author, sealed, late }: WrittenNote,
  place: Place | undefined,
): BrokenRule | undefined {
  if (place === undefined)
    return sealed
      ? { rule: 'Q9', what: `The board lacks a note that ${author} gives without a name.` }
      : undefined;
  if (place.page.seat !== null || place.page.name !== '')
    return { rule: 'Q9', what: `A page that ${author} gave without a name has one.` };
  return late
    ? { rule: 'Q9', what: `The page without a name of ${author} grew during the talk.` }
    : undefined;
}

const textOf = (entries: BoardNote['sealed']): string => entries.map((entry) => entry.value).join('\n');
