import { type TextField, textFields, textOf } from '../../shared/notes/entry.ts';
import type { BoardNote, BoardPour } from '../../shared/wire/board.ts';
import type { SeatId } from '../../shared/wire/views.ts';
import { cardName, type ReachedGlass } from '../glass/glasses.ts';
import { words } from '../language.ts';
import { useRoom } from '../seat/room.ts';

interface BoardProps {
  readonly glasses: readonly ReachedGlass[];
  readonly own: SeatId;
}

/** What people chose to share, side by side, sense by sense. */
export function Board({ glasses, own }: BoardProps) {
  const { follower } = useRoom();
  const pours = follower.board.value?.pours ?? [];
  return (
    <section class="stack" aria-label={words.board.title}>
      {glasses.map(({ position, card }) => {
        const pour = pours.find((each) => each.pour === card.id);
        return (
          <section class="board-pour" key={card.id}>
            <h2>
              {words.glass.nth(position)}
              <span class="soft board-name"> {cardName(words, card)}</span>
            </h2>
            {pour === undefined || pour.notes.length === 0 ? (
              <p class="soft">{words.board.empty}</p>
            ) : (
              textFields.map((field) => <Sense key={field} field={field} pour={pour} own={own} />)
            )}
          </section>
        );
      })}
    </section>
  );
}

interface SenseProps {
  readonly field: TextField;
  readonly pour: BoardPour;
  readonly own: SeatId;
}

function Sense({ field, pour, own }: SenseProps) {
  const notes = pour.notes.flatMap((note) => {
    const sealed = textOf(note.sealed, field);
    const later = textOf(note.addedLater, field);
    return sealed === '' && later === '' ? [] : [{ note, sealed, later }];
  });
  if (notes.length === 0) return null;
  return (
    <section>
      <h3>{words.fields[field]}</h3>
      <ul class="board-notes">
        {notes.map(({ note, sealed, later }) => (
          <li key={note.seat}>
            <p class="board-who" dir="auto">
              {note.name}
              <WhoElse note={note} own={own} />
            </p>
            {sealed !== '' && (
              <p class="written" dir="auto">
                {sealed}
              </p>
            )}
            {later !== '' && (
              <p class="written later" dir="auto">
                <span class="later-mark">{words.board.later}</span> {later}
              </p>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

function WhoElse({ note, own }: { readonly note: BoardNote; readonly own: SeatId }) {
  const marks = [
    ...(note.seat === own ? [words.board.you] : []),
    ...(note.remote ? [words.board.remote] : []),
  ];
  return marks.length === 0 ? null : <span class="soft"> ({marks.join(', ')})</span>;
}
