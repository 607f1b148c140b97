import { fold, foldings } from './fold.ts';
import type { Findable } from './search.ts';
import type { BoardText, WordBoard, WordSense } from './word-board.ts';

/** A drink's board with its text in one language, as a notebook uses it. */
export interface WordSheet {
  readonly board: WordBoard;
  readonly text: BoardText;
}

/** The same sheet with its marks in the words that the host chose for the guests. */
export function inTerms(sheet: WordSheet, terms: 'plain' | 'trade'): WordSheet {
  if (terms === 'plain') return sheet;
  const trade = Object.entries(sheet.text.tradeMarks).flatMap(([mark, text]) => (text ? [[mark, text]] : []));
  return { ...sheet, text: { ...sheet.text, marks: { ...sheet.text.marks, ...Object.fromEntries(trade) } } };
}

const ownPrefix = 'own:';
/** In UTF-16 units, as the limit of a code is. */
const longestOwnWord = 40;

/** What tells a word from others: how somebody wrote it, in capitals or not, does not. */
export const wordKey = (code: string): string => code.toLowerCase();

/** The code of a guest's own word: the words themselves, in single spaces; German nouns keep their capitals. */
function ownCode(text: string): string | undefined {
  const tidy = text.normalize('NFC').replace(/\s+/g, ' ').trim();
  const { length } = tidy;
  return length > 0 && length <= longestOwnWord && fold(tidy) !== '' ? ownPrefix + tidy : undefined;
}

/**
 * The code for what somebody wrote: the board's where the board has that word, so that a room's words can be
 * counted together, else an own one. Undefined when there is nothing to read in it or more than 40 characters.
 */
export function codeFor(sheet: WordSheet, written: string): string | undefined {
  const asked = fold(written);
  const known = Object.entries(sheet.text.words).find(([, text]) => foldings(text).includes(asked));
  return known?.[0] ?? ownCode(written);
}

/** What to show for a code: the board's text, an own word as it was written, or the code itself if unknown. */
export function textOf(sheet: WordSheet, code: string): string {
  if (code.startsWith(ownPrefix)) return code.slice(ownPrefix.length);
  return Object.hasOwn(sheet.text.words, code) ? (sheet.text.words[code] ?? code) : code;
}

/** All that can be found for a sense: its families' words in the board's order, then the host's additions. */
export function findable(sheet: WordSheet, sense: WordSense, additions: readonly string[] = []): Findable[] {
  const own = additions.flatMap((written) => {
    const code = codeFor(sheet, written);
    return code?.startsWith(ownPrefix) ? [{ code, text: textOf(sheet, code) }] : [];
  });
  const listed = sheet.board.senses[sense].flatMap((family) =>
    (sheet.board.families[family] ?? []).map((code) => ({
      code,
      text: textOf(sheet, code),
      family: sheet.text.families[family] ?? family,
    })),
  );
  return [...listed, ...own];
}
