import { textOf, type WordSheet } from '../words/word-sheet.ts';
import { type TalkNotes, wordsThatCameUp } from './board-counts.ts';

/** Words of single people are listed up to here; the rest is a number. */
const mostSingle = 12;

/** Words by how many people put them down, each as a row of glasses' worth: a bar, a word and a figure. */
export function WordCounts({ notes, sheet, words }: TalkNotes & { readonly sheet: WordSheet }) {
  const found = wordsThatCameUp(notes);
  if (found.length === 0) return null;
  const several = found.filter(({ by }) => by.length > 1);
  const single = found.filter(({ by }) => by.length === 1);
  const shown = [...several, ...single.slice(0, mostSingle)];
  return (
    <section class="talk-part">
      <h3>{words.words.title}</h3>
      <ul class="word-counts">
        {shown.map(({ code, by }) => (
          <li key={code} class={by.length > 1 ? 'word-count-several' : undefined}>
            <span class="visually-hidden">{words.words.by(textOf(sheet, code), by.length)}</span>
            <bdi aria-hidden="true">{textOf(sheet, code)}</bdi>
            {by.length > 1 && (
              <span class="figures word-count" aria-hidden="true">
                {by.length}
              </span>
            )}
          </li>
        ))}
      </ul>
      <p class="soft small">
        {single.length > mostSingle && `${words.words.more(single.length - mostSingle)}. `}
        {words.words.hint}
      </p>
    </section>
  );
}
