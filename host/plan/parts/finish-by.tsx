import { useState } from 'preact/hooks';
import { Button } from '../../../shared/ui/button.tsx';
import { TextField } from '../../../shared/ui/text-field.tsx';
import type { Desk } from '../desk.ts';
import { Fold } from '../fields/fold.tsx';
import { courseOf, lengthOf } from '../figures/course.ts';
import { finishWithin } from '../figures/finish-by.ts';
import { wallAt } from '../when.ts';
import { length, words } from '../words.ts';

const dayMinutes = 24 * 60;
const minutesOf = (time: string): number => {
  const [hours = 0, minutes = 0] = time.split(':').map(Number);
  return hours * 60 + minutes;
};

/** A wanted end, what would be shortened for it, and the button that does so. */
export function FinishBy({ desk }: { readonly desk: Desk }) {
  const plan = desk.draft.plan.value;
  const said = words.course;
  const [wanted, setWanted] = useState('');
  if (plan.startsAt === undefined) return null;
  const starts = wallAt(Date.parse(plan.startsAt), plan.timeZone).time;
  // An end before the beginning is one after midnight.
  const minutes = (minutesOf(wanted) - minutesOf(starts) + dayMinutes) % dayMinutes;
  const now = lengthOf(courseOf(plan));
  const fitted = wanted === '' ? undefined : finishWithin(plan, minutes * 60);
  const before = plan.cueEdits;
  return (
    <Fold title={said.finishBy} small>
      <TextField label={said.finishAt} type="time" value={wanted} onInput={setWanted} />
      {fitted !== undefined && minutes * 60 >= now && <p>{said.fitsAlready}</p>}
      {fitted !== undefined && minutes * 60 < now && (
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
                    desk.change(
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
