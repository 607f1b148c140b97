import type { SeatId } from '../../core/ids.ts';
import type { BoardWords } from '../language/en/board.ts';
import { isTextField, type NoteField, type TextField, textFields } from '../notes/entry.ts';
import { inWords, type Vocabulary } from '../notes/in-words.ts';
import type { BoardEntry, BoardNote } from '../wire/board.ts';

interface SideBySideProps {
  readonly notes: readonly BoardNote[];
  readonly vocabulary: Vocabulary | undefined;
  readonly words: BoardWords;
  readonly own: SeatId | null;
}

/** What stands under the heading of a sense, in this order; places and odd picks have pictures of their own. */
const under: Readonly<Record<TextField, readonly NoteField[]>> = {
  look: ['colour', 'look'],
  nose: ['nose-words', 'nose'],
  palate: ['palate-words', 'structure', 'palate'],
  finish: ['finish-words', 'finish', 'liking'],
  thoughts: ['review', 'feelings', 'thoughts'],
};

/** What people chose to share, side by side, sense by sense. */
export function SideBySide(props: SideBySideProps) {
  return textFields.map((field) => <Sense key={field} field={field} {...props} />);
}

function Sense({ field, notes, vocabulary, words, own }: SideBySideProps & { readonly field: TextField }) {
  const linesOf = (entries: readonly BoardEntry[]): string[] =>
    under[field].flatMap((each) => {
      const value = entries.find((entry) => entry.field === each)?.value;
      if (value === undefined || value === null) return [];
      if (isTextField(each)) return [String(value).trim()].filter((text) => text !== '');
      return vocabulary === undefined ? [] : [inWords(each, value, vocabulary)].filter((text) => text !== '');
    });
  const found = notes
    .map((note) => ({ note, sealed: linesOf(note.sealed), later: linesOf(note.addedLater) }))
    .filter(({ sealed, later }) => sealed.length + later.length > 0);
  if (found.length === 0) return null;
  return (
    <section class="talk-part">
      <h3>{words.fields[field]}</h3>
      <ul class="board-notes">
        {found.map(({ note, sealed, later }, index) => (
          <li key={note.seat ?? index}>
            <p class="board-who">
              {note.seat === null ? <span class="soft">{words.unnamed}</span> : <bdi>{note.name}</bdi>}
              <WhoElse note={note} words={words} own={own} />
            </p>
            {sealed.map((line) => (
              <p class="written" dir="auto" key={line}>
                {line}
              </p>
            ))}
            {later.map((line) => (
              <p class="written later" dir="auto" key={`later ${line}`}>
                <span class="later-mark">{words.later}</span> {line}
              </p>
            ))}
          </li>
        ))}
      </ul>
    </section>
  );
}

type WhoElseProps = Pick<SideBySideProps, 'words' | 'own'> & { readonly note: BoardNote };

function WhoElse({ note, words, own }: WhoElseProps) {
  const marks = [
    ...(note.seat !== null && note.seat === own ? [words.you] : []),
    ...(note.remote ? [words.atHome] : []),
  ];
  return marks.length === 0 ? null : <span class="soft"> ({marks.join(', ')})</span>;
}
