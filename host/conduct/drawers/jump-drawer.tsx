import type { CueId } from '../../../core/ids.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Dialog } from '../../../shared/ui/dialog.tsx';
import { nameOf, whereOf } from '../../evening/cue-words.ts';
import { words } from '../../language.ts';
import type { DrawerProps } from '../drawer.ts';

interface JumpDrawerProps extends DrawerProps {
  readonly cue: CueId;
}

export function JumpDrawer({ cue, view, order, actions, onClose }: JumpDrawerProps) {
  const target = order.find(({ id }) => id === cue);
  if (target === undefined) return null;
  const name = nameOf(target, view.pours);
  return (
    <Dialog
      title={words.room.jump.title(name)}
      onClose={onClose}
      actions={
        <>
          <Button
            onPress={() => {
              onClose();
              actions.jump(target, name, view.cue);
            }}
          >
            {words.room.jump.go}
          </Button>
          <Button kind="primary" onPress={onClose}>
            {words.room.jump.stay}
          </Button>
        </>
      }
    >
      <p class="soft">{whereOf(target, view.pours)}</p>
      <p>{words.room.jump.body}</p>
    </Dialog>
  );
}
