import type { SeatId } from '../../core/ids.ts';
import type { BoardWords } from '../language/en/board.ts';
import type { Vocabulary } from '../notes/in-words.ts';
import type { BoardPour } from '../wire/board.ts';
import { ColourStrip } from './colour-strip.tsx';
import { SideBySide } from './note-columns.tsx';
import { OddPicks } from './odd-picks.tsx';
import { PlacesGiven } from './ranking-places.tsx';
import { WordCounts } from './word-counts.tsx';

export interface PourBoardProps {
  readonly pour: BoardPour;
  /** Undefined until it has been fetched: then only what was written shows. */
  readonly vocabulary: Vocabulary | undefined;
  readonly words: BoardWords;
  /** Whose screen it is; null where it is nobody's. */
  readonly own: SeatId | null;
}

/** What was shared of one pour, or of one odd-one-out: what the room found, then everybody's words side by side. */
export function PourBoard({ pour, vocabulary, words, own }: PourBoardProps) {
  const { notes } = pour;
  if (notes.length === 0) return <p class="soft">{words.empty}</p>;
  return (
    <>
      {vocabulary && (
        <>
          <WordCounts notes={notes} sheet={vocabulary.sheet} words={words} />
          <ColourStrip notes={notes} sheet={vocabulary.sheet} words={words} />
        </>
      )}
      <PlacesGiven notes={notes} words={words} />
      <OddPicks notes={notes} words={words} />
      <SideBySide notes={notes} vocabulary={vocabulary} words={words} own={own} />
    </>
  );
}
