import { isTextField, type NoteField, type TextField } from '../notes/entry.ts';
import { inWords, type Vocabulary } from '../notes/in-words.ts';
import type { BoardEntry, BoardNote } from '../wire/board.ts';

/** What stands under the heading of a sense, in this order; places and odd picks have pictures of their own. */
const under: Readonly<Record<TextField, readonly NoteField[]>> = {
  look: ['colour', 'look'],
  nose: ['nose-words', 'nose'],
  palate: ['palate-words', 'structure', 'palate'],
  finish: ['finish-words', 'finish', 'liking'],
  thoughts: ['review', 'feelings', 'thoughts'],
};

/** What somebody put down for one sense, line by line; without a vocabulary only what they wrote. */
export const senseLines = (
  entries: readonly BoardEntry[],
  sense: TextField,
  vocabulary: Vocabulary | undefined,
): string[] =>
  under[sense].flatMap((each) => {
    const value = entries.find((entry) => entry.field === each)?.value;
    if (value === undefined || value === null) return [];
    if (isTextField(each)) return [String(value).trim()].filter((text) => text !== '');
    return vocabulary === undefined ? [] : [inWords(each, value, vocabulary)].filter((text) => text !== '');
  });

/** Whether there is anything to read under a sense: a place alone is no page. */
export const hasSenses = ({ sealed, addedLater }: Pick<BoardNote, 'sealed' | 'addedLater'>): boolean =>
  [...sealed, ...addedLater].some(({ field }) =>
    Object.values(under).some((fields) => fields.includes(field)),
  );
