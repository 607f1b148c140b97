import { Button } from '../../../shared/ui/button.tsx';
import { Dialog } from '../../../shared/ui/dialog.tsx';
import { words } from '../../language.ts';
import { type DrawerProps, putAway } from '../drawer.ts';

/** Between flights people get five to ten minutes (common practice, no source); a called break is no longer. */
const lengths = [3, 5, 10] as const;

export function PauseDrawer({ view, actions, onClose }: DrawerProps) {
  return (
    <Dialog
      title={words.pause.title}
      onClose={onClose}
      actions={<Button onPress={onClose}>{words.cancel}</Button>}
    >
      <p class="soft">{words.pause.lead}</p>
      <div class="row-of-three">
        {lengths.map((minutes) => (
          <Button key={minutes} onPress={putAway(onClose, () => actions.callBreak(minutes, view.cue))}>
            {words.pause.minutes(minutes)}
          </Button>
        ))}
      </div>
    </Dialog>
  );
}
