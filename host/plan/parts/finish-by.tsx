import { useState } from 'preact/hooks';
import { Button } from '../../../shared/ui/button.tsx';
import { TextField } from '../../../shared/ui/text-field.tsx';
import { Fold } from '../fields/fold.tsx';
import { finishWithin } from '../figures/finish-by.ts';
import { secondsUntil } from '../figures/seconds-until.ts';
import type { PlanEditor } from '../plan-editor.ts';
import { length, words } from '../words.ts';

/** A wanted end, what would be shortened for it, and the button that does so. */
export function FinishBy({ editor }: { readonly editor: PlanEditor }) {
  const plan = editor.draft.plan.value;
  const said = words.course;
  const [wanted, setWanted] = useState('');
  if (plan.startsAt === undefined) return null;
  const available = secondsUntil(wanted, Date.parse(plan.startsAt), plan.timeZone);
  const fitted = available === undefined ? undefined : finishWithin(plan, available, editor.opening.value);
  const before = plan.cueEdits;
  return (
    <Fold title={said.finishBy} small>
      <TextField label={said.finishAt} type="time" value={wanted} onInput={setWanted} />
      {fitted?.status === 'fits' && fitted.cut.length === 0 && <p>{said.fitsAlready}</p>}
      {fitted !== undefined && (fitted.status === 'too-long' || fitted.cut.length > 0) && (
        <>
          {fitted.status === 'too-long' && <p class="field-error">{said.tooLong(length(fitted.over))}</p>}
          {fitted.cut.length > 0 && (
            <>
              <p>
                {said.wouldCut(
                  fitted.cut.map(({ work, seconds }) => said.cutOf[work](length(seconds))).join(', '),
                )}
              </p>
              <div>
                <Button
                  onPress={() =>
                    editor.change(
                      said.shortened,
                      (then) => ({ ...then, cueEdits: fitted.plan.cueEdits }),
                      (then) => ({ ...then, cueEdits: before }),
                    )
                  }
                >
                  {said.shorten}
                </Button>
              </div>
            </>
          )}
        </>
      )}
    </Fold>
  );
}
