import type { HostPour, HostTrial } from '../../core/session/views/host.ts';
import { isTextField, type TextField } from '../../shared/notes/entry.ts';
import type { BoardEntry, BoardNote, BoardPour, BoardView } from '../../shared/wire/board.ts';
import { words } from '../language.ts';
import { placesOf } from './cue-words.ts';

interface BoardPanelProps {
  readonly board: BoardView | null;
  readonly pours: readonly HostPour[];
  readonly trials: readonly HostTrial[];
}

/** What guests chose to share, glass by glass. */
export function BoardPanel({ board, pours, trials }: BoardPanelProps) {
  const places = placesOf(pours);
  const shared = (board?.pours ?? []).filter(({ notes }) => notes.length > 0);
  if (shared.length === 0) return <p class="board-empty soft">{words.board.empty}</p>;
  return (
    <section class="board" aria-label={words.board.title}>
      {shared.map((each) => (
        <Shared
          key={each.pour}
          shared={each}
          name={
            trials.some(({ id }) => id === each.pour)
              ? words.cue.rounds['odd-one-out']
              : nameFor(each, pours, places.get(each.pour))
          }
        />
      ))}
    </section>
  );
}

function nameFor({ pour }: BoardPour, pours: readonly HostPour[], place: number | undefined): string {
  const found = pours.find(({ id }) => id === pour);
  return [...(place === undefined ? [] : [words.cue.glass(place)]), ...(found ? [found.name] : [])].join(
    ' · ',
  );
}

interface WrittenEntry extends BoardEntry {
  readonly field: TextField;
  readonly value: string;
}

const isWritten = (entry: BoardEntry): entry is WrittenEntry =>
  isTextField(entry.field) && typeof entry.value === 'string';

function Shared({ shared, name }: { readonly shared: BoardPour; readonly name: string }) {
  return (
    <section class="board-glass">
      <h3>
        <bdi>{name}</bdi>
      </h3>
      <ul class="plain-list">
        {shared.notes.map((note) => (
          <Note key={note.seat} note={note} />
        ))}
      </ul>
    </section>
  );
}

function Note({ note }: { readonly note: BoardNote }) {
  return (
    <li class="board-note">
      <p class="board-who">
        <bdi>{note.name}</bdi>
        {note.remote && <span class="soft"> · {words.board.remote}</span>}
      </p>
      <dl class="board-words">
        {note.sealed.filter(isWritten).map((entry) => (
          <Entry key={entry.field} entry={entry} />
        ))}
        {note.addedLater.filter(isWritten).map((entry) => (
          <Entry key={`later-${entry.field}`} entry={entry} later />
        ))}
      </dl>
    </li>
  );
}

function Entry({ entry, later }: { readonly entry: WrittenEntry; readonly later?: boolean }) {
  return (
    <div>
      <dt>
        {words.board.fields[entry.field]}
        {later && <span class="board-later"> · {words.board.later}</span>}
      </dt>
      <dd dir="auto">{entry.value}</dd>
    </div>
  );
}
