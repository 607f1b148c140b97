import type { Cue } from '../../../core/running-order/cue.ts';
import { guardedLength } from '../../../core/running-order/cue-traits.ts';
import { seconds } from '../../../core/units.ts';
import { Dialog } from '../../../shared/ui/dialog.tsx';
import { TextField } from '../../../shared/ui/text-field.tsx';
import { verbOf } from '../../evening/cue-words.ts';
import { words as host } from '../../language.ts';
import { NumberField } from '../fields/number-field.tsx';
import type { PlanEditor } from '../plan-editor.ts';
import { words } from '../words.ts';

interface StretchSheetProps {
  readonly editor: PlanEditor;
  readonly title: string;
  readonly cues: readonly Cue[];
  readonly onClose: () => void;
}

/** Every step of a stretch with its seconds and the host's own words to say. */
export function StretchSheet({ editor, title, cues, onClose }: StretchSheetProps) {
  const said = words.course;
  const { cueEdits } = editor.draft.plan.value;
  const set = (cue: Cue, changed: { seconds?: number | undefined; say?: string | undefined }): void =>
    editor.edit((now) => {
      const { seconds, say } = { ...now.cueEdits[cue.id], ...changed };
      const { [cue.id]: _, ...others } = now.cueEdits;
      const edit = { ...(seconds === undefined ? {} : { seconds }), ...(say ? { say } : {}) };
      return { ...now, cueEdits: Object.keys(edit).length === 0 ? others : { ...others, [cue.id]: edit } };
    });
  return (
    <Dialog title={title} onClose={onClose} close={words.done}>
      <p class="soft">{said.stepsLead}</p>
      <ul class="stretch-steps pour-sheet">
        {cues.map((cue) => (
          <li key={cue.id} class="stretch-step">
            <NumberField
              label={said.stepSeconds(stepName(cue))}
              value={cueEdits[cue.id]?.seconds ?? cue.ideal}
              least={leastOf(cue)}
              most={7200}
              whole
              optional
              wrong={said.secondsWrong(leastOf(cue))}
              onNumber={(seconds) => set(cue, { seconds })}
            />
            <TextField
              label={said.ownWords(stepName(cue))}
              value={cueEdits[cue.id]?.say ?? ''}
              maxLength={1000}
              onInput={(say) => set(cue, { say })}
            />
          </li>
        ))}
      </ul>
    </Dialog>
  );
}

/** What cares for people keeps its floor [C2]; anything else may be as short as five seconds. */
const leastOf = (cue: Cue): number => guardedLength(cue, seconds(5));

function stepName(cue: Cue): string {
  switch (cue.kind) {
    case 'step':
    case 'water':
      return verbOf(cue);
    case 'practice':
      return host.cue.steps[cue.step];
    default:
      return words.course.stretches[cue.kind];
  }
}
