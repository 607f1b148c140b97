import type { CueWordSheet, CueWords } from '../../shared/language/en/cues.ts';
import type { CueView, Drink, StageView } from '../../shared/wire/views.ts';

type Move = keyof CueWordSheet['practice'];

/** As much of a cue as its words depend on. */
export type WordedCue = Pick<CueView, 'kind' | 'step' | 'sense'> & Partial<Pick<CueView, 'pass' | 'named'>>;

/** The verb and the line for a cue. */
export function cueWordsFor(sheet: CueWordSheet, cue: WordedCue, drink: Drink): CueWords {
  switch (cue.kind) {
    case 'step':
      return stepWords(sheet, cue, drink);
    case 'practice':
      return sheet.practice[(cue.step ?? 'swirl') as Move];
    case 'ranking':
      return cue.named === true ? sheet.rankingNamed : sheet.ranking;
    default:
      return sheet[cue.kind];
  }
}

function stepWords(sheet: CueWordSheet, { step, sense, pass }: WordedCue, drink: Drink): CueWords {
  // The one swirl of a writing pass is for the drops of water.
  if (step === 'swirl' && pass === 'writing') return sheet.step.drops;
  switch (step) {
    case 'write':
      return sheet.write[sense ?? 'nose'];
    case 'review':
    case 'reflect':
      return sheet.step[step];
    default:
      return sheet.step[step ?? 'swirl'][drink];
  }
}

/** The drink in the hand, where it is known; otherwise the evening's. */
export function drinkOf(stage: StageView): Drink {
  const pour = stage.status === 'under-way' ? stage.cue.pours[0] : undefined;
  return stage.glasses.find((glass) => glass.pour?.id === pour)?.pour?.drink ?? stage.drink;
}
