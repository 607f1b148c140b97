import { Icon } from '../../../shared/ui/icon.tsx';
import { water } from '../../../shared/ui/notice-strokes.ts';
import { quiet, spit } from '../../../shared/ui/strokes.ts';
import { useTick } from '../../../shared/ui/use-tick.ts';
import type { StageUnderWay } from '../../../shared/wire/views.ts';
import { waterIsDue } from '../../stage/water-reminder.ts';
import { words } from '../language.ts';

const icons = { water, spit, quiet } as const;

/**
 * What the host reminds the room of, or that it has been long since the last water. A nudge is for single people and
 * never stands where all can see it.
 */
export function ReminderLine({ stage, now }: { readonly stage: StageUnderWay; readonly now: () => number }) {
  const time = useTick(now, { running: true, anchor: 0, period: 10_000 });
  const { reminder } = stage;
  if (reminder !== null && reminder.kind !== 'nudge') {
    return (
      <p class="scene-reminder">
        <Icon of={icons[reminder.kind]} />
        {words.reminders[reminder.kind]}
      </p>
    );
  }
  if (!waterIsDue(stage, time)) return null;
  return (
    <p class="scene-reminder">
      <Icon of={water} />
      {words.waterDue}
    </p>
  );
}
