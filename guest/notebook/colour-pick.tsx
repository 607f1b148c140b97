import { notebookWords as words } from '../../shared/language/en/notebook.ts';
import type { PourId } from '../../shared/wire/views.ts';
import type { Swatch } from '../../shared/words/swatches.ts';
import type { WordSheet } from '../../shared/words/word-sheet.ts';
import { useRoom } from '../room/room.ts';

interface ColourPickProps {
  readonly pour: PourId;
  readonly sheet: WordSheet;
}

/** The drink's computed colours on white paper in every theme, each with its word. */
export function ColourPick({ pour, sheet }: ColourPickProps) {
  const ranges = [...new Set(sheet.board.swatches.map(({ range }) => range))];
  return (
    <section class="stack-tight" aria-label={words.colour.title}>
      <h2>{words.colour.title}</h2>
      <p class="soft small">{words.colour.hint}</p>
      {ranges.map((range) => (
        <div key={range} class="stack-tight">
          {range !== undefined && <h3>{words.colour.ranges[range]}</h3>}
          <div class="swatches" data-theme="linen">
            {sheet.board.swatches
              .filter((swatch) => swatch.range === range)
              .map((swatch) => (
                <SwatchButton key={swatch.word} pour={pour} swatch={swatch} sheet={sheet} />
              ))}
          </div>
        </div>
      ))}
    </section>
  );
}

function SwatchButton({ pour, swatch, sheet }: ColourPickProps & { readonly swatch: Swatch }) {
  const { notebook } = useRoom().follower;
  const chosen = notebook.read(pour, 'colour') === swatch.word;
  return (
    <button
      type="button"
      class="swatch-pick"
      aria-pressed={chosen}
      onClick={() => notebook.write(pour, 'colour', chosen ? null : swatch.word)}
    >
      <svg viewBox="0 0 60 30" preserveAspectRatio="none" aria-hidden="true" focusable="false">
        <rect width="60" height="30" fill={swatch.hex} />
      </svg>
      <span>{colourText(sheet, swatch.word)}</span>
    </button>
  );
}

const colourText = ({ text }: WordSheet, code: string): string => text.colours[code] ?? code;
