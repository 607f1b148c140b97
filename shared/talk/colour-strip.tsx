import type { WordSheet } from '../words/word-sheet.ts';
import { coloursSeen, type TalkNotes } from './board-counts.ts';

/** The colours that people chose as one strip on white, from light to dark, as wide as they are many; and in words. */
export function ColourStrip({ notes, sheet, words }: TalkNotes & { readonly sheet: WordSheet }) {
  const seen = coloursSeen(notes, sheet.board.swatches).flatMap(({ code, by }) => {
    const swatch = sheet.board.swatches.find(({ word }) => word === code);
    return swatch === undefined ? [] : [{ swatch, people: by.length }];
  });
  if (seen.length === 0) return null;
  const all = seen.reduce((sum, { people }) => sum + people, 0);
  let at = 0;
  const nameOf = (word: string) => sheet.text.colours[word] ?? word;
  return (
    <section class="talk-part">
      <h3>{words.colours.title}</h3>
      <svg
        class="colour-strip"
        viewBox={`0 0 ${all * 10} 12`}
        preserveAspectRatio="none"
        role="img"
        aria-label={words.colours.picture(
          seen.map(({ swatch, people }) => words.words.by(nameOf(swatch.word), people)),
        )}
      >
        {seen.map(({ swatch, people }) => {
          const x = at;
          at += people * 10;
          return <rect key={swatch.word} x={x} y="0" width={people * 10} height="12" fill={swatch.hex} />;
        })}
      </svg>
      <p class="small" aria-hidden="true">
        {seen.map(({ swatch, people }) => `${nameOf(swatch.word)} ${people}`).join(' · ')}
      </p>
    </section>
  );
}
