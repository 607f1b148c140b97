import { oddPicks, type TalkNotes } from './board-counts.ts';

/** Who picked which of the three glasses, and who was right. */
export function OddPicks({ notes, words }: TalkNotes) {
  const picks = oddPicks(notes);
  if (picks.length === 0) return null;
  const right = picks.filter((each) => each.right).length;
  return (
    <section class="talk-part">
      <h3>{words.odd.title}</h3>
      <p>
        {words.odd.found(right, picks.length)} <span class="soft">{words.odd.chance}</span>
      </p>
      <ul class="stack-close odd-picks">
        {picks.map(({ note, pick, right: found }) => (
          <li key={note.seat} data-right={found ? 'true' : undefined}>
            <strong>
              <bdi>{note.name}</bdi>
            </strong>{' '}
            {found ? words.odd.right(pick.glass) : words.odd.wrong(pick.glass, note.oddGlass ?? 0)}
            {pick.guessed && <span class="soft"> ({words.odd.guessed})</span>}
          </li>
        ))}
      </ul>
    </section>
  );
}
