import { Icon } from '../../../shared/ui/icon.tsx';
import type { StageUnderWay } from '../../../shared/wire/views.ts';
import { cueIcon } from '../../stage/cue-icon.ts';
import { cueWordsFor, drinkOf } from '../../stage/cue-words.ts';
import { sheet } from '../language.ts';

/** The verb of the moment with its picture, and one line that says what to do. */
export function CueVerb({ stage }: { readonly stage: StageUnderWay }) {
  return (
    <h1 class="scene-verb">
      <Icon of={cueIcon(stage.cue)} />
      {cueWordsFor(sheet, stage.cue, drinkOf(stage)).verb}
    </h1>
  );
}

export function CueHint({ stage }: { readonly stage: StageUnderWay }) {
  return <p class="scene-hint">{cueWordsFor(sheet, stage.cue, drinkOf(stage)).hint}</p>;
}
