import type { StageView } from '../../shared/wire/views.ts';
import { cueWordsFor, drinkOf } from '../stage/cue-words.ts';
import { lastGlass } from '../stage/reached-glasses.ts';
import { guestWords, sheet, words } from './language.ts';

/** A cue for the ear: which glass, what to do, and how. */
export function spokenCue(stage: StageView): string {
  if (stage.status === 'finished') return guestWords.spoken.cue([words.goodbye.finished, words.goodbye.care]);
  const { verb, hint } = cueWordsFor(sheet, stage.cue, drinkOf(stage));
  const { position } = stage.cue;
  const place = position === null ? [] : [words.place.glassOf(position, lastGlass(stage))];
  return guestWords.spoken.cue([...place, verb, hint]);
}
