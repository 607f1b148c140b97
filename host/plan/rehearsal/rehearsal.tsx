import { useEffect, useMemo, useState } from 'preact/hooks';
import './rehearsal.css';
import { Button } from '../../../shared/ui/button.tsx';
import { Notice } from '../../../shared/ui/notice.tsx';
import { TextField } from '../../../shared/ui/text-field.tsx';
import { courseOf, lengthOf } from '../figures/course.ts';
import { secondsUntil } from '../figures/seconds-until.ts';
import type { PlanEditor } from '../plan-editor.ts';
import { words } from '../words.ts';
import { createRehearsalRoom, eveningsPlayed } from './rehearsal-room.ts';
import { Report } from './report.tsx';

/** The evening rehearsed with stand-ins, and what came of it. */
export function Rehearsal({ editor }: { readonly editor: PlanEditor }) {
  const plan = editor.draft.plan.value;
  const said = words.rehearsal;
  const room = useMemo(() => createRehearsalRoom(), []);
  useEffect(() => room.cancel, [room]);
  const [by, setBy] = useState('');
  if (plan.pours.length === 0) return null;

  const state = room.state.value;
  const starts = plan.startsAt === undefined ? undefined : Date.parse(plan.startsAt);
  const until = starts === undefined || by === '' ? undefined : secondsUntil(by, starts, plan.timeZone);
  const start = (): void => room.start(plan, until ?? lengthOf(courseOf(plan)), editor.opening.value?.habits);
  return (
    <section class="plan-group rehearsal" aria-labelledby="rehearsal">
      <h3 id="rehearsal">{said.title}</h3>
      <p class="soft">{said.lead(eveningsPlayed)}</p>
      {starts !== undefined && (
        <TextField
          label={said.wished}
          hint={said.wishedHint}
          type="time"
          value={by}
          onInput={setBy}
          error={by !== '' && until === undefined ? said.noSuchTime : undefined}
        />
      )}
      {state.is === 'playing' ? (
        <div class="rehearsal-playing">
          <label>
            <span class="figures">{said.playing(state.done, state.of)}</span>
            <progress max={state.of} value={state.done} />
          </label>
          <Button onPress={room.cancel}>{said.cancel}</Button>
        </div>
      ) : (
        <div>
          <Button onPress={start}>{state.is === 'reported' ? said.again : said.go}</Button>
        </div>
      )}
      {state.is === 'failed' && <p class="field-error">{said.failed}</p>}
      {state.is === 'reported' && (
        <>
          {state.plan !== plan && (
            <Notice kind="info">
              <p>{said.stale}</p>
            </Notice>
          )}
          <Report editor={editor} report={state.report} plan={state.plan} />
        </>
      )}
    </section>
  );
}
