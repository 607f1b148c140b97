import { notebookWords as words } from '../../shared/language/en/notebook.ts';
import { type LazyPart, useLazyPart } from '../../shared/page/lazy-part.ts';
import type { PourId, Sense, StageView } from '../../shared/wire/views.ts';
import { inTerms, type WordSheet } from '../../shared/words/word-sheet.ts';
import { glassOf } from '../stage/reached-glasses.ts';
import { wordSheets } from '../stage/word-sheets.ts';
import { ColourPick } from './colour-pick.tsx';
import { LikingScale } from './liking-scale.tsx';
import { PalatePages } from './palate-pages.tsx';
import { StructureMarks } from './structure-marks.tsx';
import { WordPick } from './word-pick.tsx';

export interface OfPour {
  readonly stage: StageView;
  readonly pour: PourId;
}

/** Where the word board of what is in the glass comes from. */
export const sheetPartOf = ({ stage, pour }: OfPour): LazyPart<WordSheet> =>
  wordSheets[glassOf(stage, pour)?.card.drink ?? stage.drink];

/** The word board of what is in the glass; undefined until it has been fetched. */
export function useSheet({ stage, pour }: OfPour): WordSheet | undefined {
  const sheet = useLazyPart(sheetPartOf({ stage, pour }));
  return sheet && inTerms(sheet, stage.terms);
}

/** Whether bubbles are asked about: not of a wine that is known to be still, nor where no wine of the evening has any. */
function fizzes(stage: StageView, pour: PourId): boolean {
  const card = glassOf(stage, pour)?.card;
  if ((card?.drink ?? stage.drink) !== 'wine') return true;
  return card?.kind === 'named' ? card.sparkling : stage.sparkles;
}

/** What a guest can tap for one sense, below the lines that they write. */
export function SenseMarks({ stage, pour, sense }: OfPour & { readonly sense: Sense }) {
  const sheet = useSheet({ stage, pour });
  if (sheet === undefined) return <p class="soft small">{words.fetching}</p>;
  const board = { pour, sheet, extraWords: stage.extraWords };
  switch (sense) {
    case 'look':
      return <ColourPick pour={pour} sheet={sheet} />;
    case 'nose':
      return <WordPick {...board} field="nose-words" />;
    case 'palate':
      return (
        <PalatePages
          scales={<StructureMarks pour={pour} sheet={sheet} fizzes={fizzes(stage, pour)} />}
          places={<WordPick {...board} field="palate-words" />}
        />
      );
    case 'finish':
      return (
        <>
          <WordPick {...board} field="finish-words" />
          {stage.liking && <LikingScale pour={pour} />}
        </>
      );
    default:
      return sense satisfies never;
  }
}
