import { startOf } from '../../core/planning/invitation/invitation.ts';
import { pouringWords as words } from '../../shared/language/en/pouring.ts';
import { useTick } from '../../shared/ui/use-tick.ts';
import type { EveningContext } from '../evening/evening-context.ts';
import { timeOfDay } from '../language.ts';

/** How long there is until the doors open, by the server's clock. */
export function DoorsTime({ evening }: { readonly evening: EveningContext }) {
  const { follower, stored } = evening;
  const start = startOf(stored.plan);
  const now = useTick(follower.clock.now, {
    running: start !== undefined && follower.view.value === null,
    anchor: start ?? 0,
    period: 60_000,
  });
  if (follower.view.value !== null) return <p class="pouring-doors">{words.doors.open}</p>;
  if (start === undefined) return <p class="pouring-doors soft">{words.doors.noDate}</p>;
  const minutes = Math.floor(Math.abs(start - now) / 60_000);
  const late = now > start;
  return (
    <p class={late ? 'pouring-doors pouring-late' : 'pouring-doors'}>
      <strong class="figures">{inHours(minutes)}</strong> {late ? words.doors.since : words.doors.in}
      <span class="soft"> · {words.doors.at(timeOfDay(start, stored.plan.timeZone))}</span>
    </p>
  );
}

const inHours = (minutes: number): string => {
  const days = Math.floor(minutes / 1440);
  const clock = `${Math.floor((minutes % 1440) / 60)}:${String(minutes % 60).padStart(2, '0')}`;
  return days === 0 ? clock : words.doors.days(days, clock);
};
