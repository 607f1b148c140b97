import type { ReminderKind } from '../../../core/session/state.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Dialog } from '../../../shared/ui/dialog.tsx';
import { Icon } from '../../../shared/ui/icon.tsx';
import { water } from '../../../shared/ui/notice-strokes.ts';
import { clock, quiet, spit } from '../../../shared/ui/strokes.ts';
import { words } from '../../language.ts';
import { type DrawerProps, putAway } from '../drawer.ts';

const reminders: readonly (readonly [ReminderKind, string])[] = [
  ['water', water],
  ['spit', spit],
  ['quiet', quiet],
  ['nudge', clock],
];

export function RemindDrawer({ actions, onClose }: DrawerProps) {
  return (
    <Dialog
      title={words.remind.title}
      onClose={onClose}
      actions={<Button onPress={onClose}>{words.cancel}</Button>}
    >
      <p class="soft">{words.remind.lead}</p>
      <div class="row-of-three">
        {reminders.map(([kind, icon]) => (
          <Button key={kind} onPress={putAway(onClose, () => actions.remind(kind))}>
            <Icon of={icon} />
            {words.remind[kind]}
          </Button>
        ))}
      </div>
    </Dialog>
  );
}
