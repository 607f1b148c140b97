import { Icon } from '../../../shared/ui/icon.tsx';
import { water } from '../../../shared/ui/notice-strokes.ts';
import type { StageView } from '../../../shared/wire/views.ts';
import { cueWordsFor } from '../../stage/cue-words.ts';
import { sheet, words } from '../language.ts';

/** The end: water, and a way home without driving. */
export function FarewellScene({ stage }: { readonly stage: StageView }) {
  const verb =
    stage.status === 'finished' ? words.goodbye.finished : cueWordsFor(sheet, stage.cue, stage.drink).verb;
  return (
    <div class="scene scene-word">
      <h1 class="scene-verb">{verb}</h1>
      <p class="scene-hint">{words.goodbye.keepsake}</p>
      <p class="scene-care">
        <Icon of={water} />
        {words.goodbye.care}
      </p>
    </div>
  );
}
