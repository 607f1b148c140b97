import type { WordCount } from '../../../shared/talk/board-pages.ts';
import type { WordSheet } from '../../../shared/words/word-sheet.ts';
import { PeopleCount } from './people-count.tsx';

interface ColourStripProps {
  readonly counts: readonly WordCount[];
  readonly sheet: WordSheet;
}

/** The colours that people chose as one strip from light to dark, each as wide as they are many, with its word. */
export function ColourStrip({ counts, sheet }: ColourStripProps) {
  const seen = sheet.board.swatches.flatMap(({ word, hex }) => {
    const count = counts.find(({ code }) => code === word);
    return count === undefined ? [] : [{ word, hex, people: count.people }];
  });
  if (seen.length === 0) return null;
  return (
    <ul class="board-strip">
      {seen.map(({ word, hex, people }) => (
        <li key={word} style={{ flexGrow: people }}>
          <span class="board-swatch" style={{ backgroundColor: hex }} aria-hidden="true" />
          <span>{sheet.text.colours[word] ?? word}</span>
          <PeopleCount count={people} />
        </li>
      ))}
    </ul>
  );
}
