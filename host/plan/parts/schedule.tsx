import { useState } from 'preact/hooks';
import type { Plan } from '../../../core/tasting.ts';
import { timeOfDay } from '../../language.ts';
import { Fold } from '../fields/fold.tsx';
import { type CourseStretch, courseOf, lengthOf, shownTimes } from '../figures/course.ts';
import type { PlanEditor } from '../plan-editor.ts';
import { length, words } from '../words.ts';
import { FinishBy } from './finish-by.tsx';
import { StretchSheet } from './stretch-sheet.tsx';

/** The evening's length, always in sight, and its stretches by the clock; each opens to its steps. */
export function Schedule({ editor }: { readonly editor: PlanEditor }) {
  const plan = editor.draft.plan.value;
  const [opened, setOpened] = useState<string | undefined>();
  const course = courseOf(plan);
  const seconds = lengthOf(course);
  const said = words.course;
  const starts = plan.startsAt === undefined ? undefined : Date.parse(plan.startsAt);
  const at = (from: number): string =>
    starts === undefined ? length(from) : timeOfDay(starts + from * 1000, plan.timeZone);
  const stretch = course.find(({ key }) => key === opened);
  return (
    <div class="plan-group">
      <p class="lead">
        {said.total(length(seconds))}
        {starts !== undefined && `, ${said.until(at(shownTimes({ startSeconds: 0, seconds }).length))}`}
      </p>
      <Fold title={said.schedule}>
        {starts === undefined && <p class="soft">{said.noClock}</p>}
        <ol class="schedule">
          {course.map((each) => {
            const name = nameOf(each, plan);
            const shown = shownTimes(each);
            return (
              <li key={each.key}>
                <button
                  type="button"
                  class={`bare schedule-line schedule-${each.what}`}
                  title={said.stepsOf(name)}
                  onClick={() => setOpened(each.key)}
                >
                  <span class="figures soft">{at(shown.start)}</span>
                  <span>{name}</span>
                  <span class="figures soft">{length(shown.length)}</span>
                </button>
              </li>
            );
          })}
        </ol>
      </Fold>
      <FinishBy editor={editor} />
      {stretch !== undefined && (
        <StretchSheet
          editor={editor}
          title={said.stepsOf(nameOf(stretch, plan))}
          cues={stretch.cues}
          onClose={() => setOpened(undefined)}
        />
      )}
    </div>
  );
}

function nameOf({ what, pour }: CourseStretch, plan: Plan): string {
  if (what !== 'pour') return words.course.stretches[what];
  return plan.pours.find(({ id }) => id === pour)?.name ?? '';
}
