import type { SeatId } from '../../core/ids.ts';
import type { BoardWords } from '../language/en/board.ts';
import { type TextField, textFields } from '../notes/entry.ts';
import type { Vocabulary } from '../notes/in-words.ts';
import type { BoardNote } from '../wire/board.ts';
import { senseLines } from './sense-lines.ts';

interface SideBySideProps {
  readonly notes: readonly BoardNote[];
  readonly vocabulary: Vocabulary | undefined;
  readonly words: BoardWords;
  readonly own: SeatId | null;
}

/** What people chose to share, side by side, sense by sense. */
export function SideBySide(props: SideBySideProps) {
  return textFields.map((field) => <Sense key={field} field={field} {...props} />);
}

function Sense({ field, notes, vocabulary, words, own }: SideBySideProps & { readonly field: TextField }) {
  const found = notes
    .map((note) => ({
      note,
      sealed: senseLines(note.sealed, field, vocabulary),
      later: senseLines(note.addedLater, field, vocabulary),
    }))
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
