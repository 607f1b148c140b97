import { placesGiven, type TalkNotes } from './board-counts.ts';

/** Who put this pour where in their order. */
export function PlacesGiven({ notes, words }: TalkNotes) {
  const placed = placesGiven(notes);
  if (placed.length === 0) return null;
  return (
    <section class="talk-part">
      <h3>{words.places.title}</h3>
      <ul class="word-counts">
        {placed.map(({ note, place }) => (
          <li key={note.seat}>
            <span class="visually-hidden">{words.places.of(note.name, place)}</span>
            <bdi aria-hidden="true">{note.name}</bdi>
            <span class="figures word-count" aria-hidden="true">
              {place}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
