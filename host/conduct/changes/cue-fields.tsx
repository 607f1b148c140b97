import { useState } from 'preact/hooks';
import type { Cue } from '../../../core/running-order/cue.ts';
import { traitsOf } from '../../../core/running-order/cue-traits.ts';
import { type Seconds, seconds } from '../../../core/units.ts';
import { changesWords } from '../../../shared/language/en/changes.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { TextArea } from '../../../shared/ui/text-area.tsx';
import { NumberField } from '../../plan/fields/number-field.tsx';

const said = changesWords.cue;

interface CueFieldsProps {
  readonly cue: Cue;
  /** What is said aloud as it is now. */
  readonly script: string;
  readonly onKeep: (changes: { readonly seconds?: Seconds; readonly say?: string }) => void;
}

/** How long a coming cue lasts, and what is said aloud in it. */
export function CueFields({ cue, script, onKeep }: CueFieldsProps) {
  const [minutes, setMinutes] = useState<number>(cue.ideal / 60);
  const [say, setSay] = useState(script);
  const wanted = seconds(Math.round(minutes * 60));
  const changes = {
    ...(wanted === cue.ideal ? {} : { seconds: wanted }),
    ...(say.trim() === script.trim() ? {} : { say: say.trim() }),
  };
  return (
    <div class="stack">
      <NumberField
        label={said.minutes}
        hint={traitsOf(cue).keepsFloor ? said.guarded(cue.floor) : undefined}
        value={Math.round(minutes * 100) / 100}
        least={5 / 60}
        most={120}
        wrong={said.minutesWrong}
        onNumber={(value) => value !== undefined && setMinutes(value)}
      />
      <TextArea label={said.say} value={say} maxLength={1000} onInput={setSay} />
      <Button disabled={Object.keys(changes).length === 0} onPress={() => onKeep(changes)}>
        {said.go}
      </Button>
    </div>
  );
}
