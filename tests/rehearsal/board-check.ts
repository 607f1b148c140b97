import type { PourId } from '../../core/ids.ts';
import type { BoardNote, BoardView } from '../../shared/wire/board.ts';
import type { Ledger, WrittenNote } from './ledger.ts';

export interface BrokenRule {
  readonly rule: string;
  readonly what: string;
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
  for (const note of ledger.notes) {
    if (!open.includes(note.pour) || !note.acknowledged) continue;
    const pages = shown.find(({ pour }) => pour === note.pour)?.notes ?? [];
    const trouble = noteTrouble(note, pages, ledger.sharesNow(note.author, note.pour));
    if (trouble !== undefined) return trouble;
  }
  return undefined;
}

function noteTrouble(
  note: WrittenNote,
  pages: readonly BoardNote[],
  shared: boolean,
): BrokenRule | undefined {
  const own = pages.filter(
    (page) => textOf(page.sealed).includes(note.token) || textOf(page.addedLater).includes(note.token),
  );
  if (!shared)
    return own.length > 0
      ? { rule: 'Q2', what: `The board shows a note that ${note.author} does not share.` }
      : undefined;
  const [page] = own;
  if (page === undefined) return { rule: 'Q2', what: `The board lacks a note that ${note.author} shares.` };
  if (page.name !== note.author)
    return { rule: 'Q2', what: `The board shows a note of ${note.author} under another name.` };
  if (note.late && textOf(page.sealed).includes(note.token))
    return { rule: 'Q3', what: `A later note of ${note.author} stands among the sealed ones.` };
  if (note.sealed && !textOf(page.sealed).includes(note.token))
    return { rule: 'Q3', what: `A sealed note of ${note.author} is marked as added later.` };
  return undefined;
}

const textOf = (entries: BoardNote['sealed']): string => entries.map((entry) => entry.value).join('\n');
