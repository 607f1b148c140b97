import type { Plan } from '../../../core/tasting.ts';
import { Fold } from '../fields/fold.tsx';
import { type CourseStretch, courseOf, lengthOf } from '../figures/course.ts';
import { clockTime, length, words } from '../words.ts';

/** The evening's length, always in sight, and its stretches by the clock. */
export function Schedule({ plan }: { readonly plan: Plan }) {
  const course = courseOf(plan);
  const seconds = lengthOf(course);
  const said = words.course;
  const starts = plan.startsAt === undefined ? undefined : Date.parse(plan.startsAt);
  const at = (from: number): string =>
    starts === undefined ? length(from) : clockTime(starts + from * 1000, plan.timeZone);
  return (
    <div class="plan-group">
      <p class="lead">
        {said.total(length(seconds))}
        {starts !== undefined && `, ${said.until(clockTime(starts + seconds * 1000, plan.timeZone))}`}
      </p>
      <Fold title={said.schedule}>
        {starts === undefined && <p class="soft">{said.noClock}</p>}
        <ol class="schedule">
          {course.map((stretch) => (
            <li key={stretch.key} class={`schedule-${stretch.what}`}>
              <span class="figures soft">{at(stretch.startSeconds)}</span>
              <span>{nameOf(stretch, plan)}</span>
              <span class="figures soft">{length(stretch.seconds)}</span>
            </li>
          ))}
        </ol>
      </Fold>
    </div>
  );
}

function nameOf({ what, pour }: CourseStretch, plan: Plan): string {
  if (what !== 'pour') return words.course.stretches[what];
  return plan.pours.find(({ id }) => id === pour)?.name ?? '';
}
